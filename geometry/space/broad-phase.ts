import { BOUNDS_STRIDE, type PackedBoxes } from './packed-boxes';
import { interiorsOverlap } from './separation';

/** Told the numbers of two boxes, the lower first. */
export type PairVisitor = (i: number, j: number) => void;

/** All pairs of boxes of a set whose interiors overlap, each once. Sized for 100,000 boxes and more. */
export function findOverlappingPairs(packed: PackedBoxes, visit: PairVisitor): void {
  const { bounds, count } = packed;
  const order = Uint32Array.from({ length: count }, (_, index) => index).sort(
    (i, j) => bounds[i * BOUNDS_STRIDE]! - bounds[j * BOUNDS_STRIDE]!,
  );
  for (let p = 0; p < count; p++) {
    const i = order[p]!;
    const end = bounds[i * BOUNDS_STRIDE + 3]!;
    for (let q = p + 1; q < count; q++) {
      const j = order[q]!;
      if (bounds[j * BOUNDS_STRIDE]! > end) break;
      if (interiorsOverlap(packed, i, j)) visit(Math.min(i, j), Math.max(i, j));
    }
  }
}
