/** Cutting axis-aligned room out of axis-aligned material. */
import type { Extent } from './body-box';
import { extentsOverlap, hasVolume } from './extent-overlap';

export type CutSide = '-x' | '+x' | '-y' | '+y' | '-z' | '+z';

/** What is left of a piece on one side of a cut. */
export interface CutPiece {
  readonly side: CutSide;
  readonly extent: Extent;
}

const cutOrder = ['y', 'x', 'z'] as const;

/**
 * The pieces of `material` that remain when `room` is cut out: disjoint, together exactly the difference. Slabs
 * are split off across y first (they keep their full length and height), then x, then z. `undefined` when the cut
 * misses the material.
 */
export function subtractExtent(material: Extent, room: Extent): readonly CutPiece[] | undefined {
  if (!extentsOverlap(material, room)) return undefined;
  const pieces: CutPiece[] = [];
  let rest = material;
  for (const axis of cutOrder) {
    const [from, to] = rest[axis];
    const cutFrom = Math.max(from, room[axis][0]);
    const cutTo = Math.min(to, room[axis][1]);
    pieces.push({ side: `-${axis}`, extent: { ...rest, [axis]: [from, cutFrom] } });
    pieces.push({ side: `+${axis}`, extent: { ...rest, [axis]: [cutTo, to] } });
    rest = { ...rest, [axis]: [cutFrom, cutTo] };
  }
  return pieces.filter((piece) => hasVolume(piece.extent));
}
