/** A flat rectangle with sides along u and v; mm. */
export interface Rectangle {
  readonly min: readonly [number, number];
  readonly max: readonly [number, number];
}

type Range = readonly [number, number];

/**
 * What is left of `outer` when rectangular holes are taken out, as few non-overlapping rectangles (walls and
 * trays with openings). Holes may overlap each other and stick out of `outer`. Every coordinate of the result is
 * one of the input's, so pieces meet without seams and areas add up. Cut in strips along u and along v; the
 * smaller count is returned.
 */
export function subtractRectangles(outer: Rectangle, holes: readonly Rectangle[]): readonly Rectangle[] {
  const inU = strips(outer, holes);
  const inV = strips(swap(outer), holes.map(swap)).map(swap);
  return inV.length < inU.length ? inV : inU;
}

/** Area in square mm. */
export function areaOfRectangle(rectangle: Rectangle): number {
  return (rectangle.max[0] - rectangle.min[0]) * (rectangle.max[1] - rectangle.min[1]);
}

function swap(rectangle: Rectangle): Rectangle {
  return { min: [rectangle.min[1], rectangle.min[0]], max: [rectangle.max[1], rectangle.max[0]] };
}

/** Strips between neighbouring hole edges in u, each split in v, and joined again where nothing changes. */
function strips(outer: Rectangle, holes: readonly Rectangle[]): Rectangle[] {
  const cuts = new Set([outer.min[0], outer.max[0]]);
  for (const hole of holes) {
    for (const u of [hole.min[0], hole.max[0]]) if (u > outer.min[0] && u < outer.max[0]) cuts.add(u);
  }
  const sorted = [...cuts].sort((a, b) => a - b);
  const finished: Rectangle[] = [];
  let open: Rectangle[] = [];
  sorted.slice(1).forEach((to, index) => {
    const from = sorted[index] ?? to;
    const next: Rectangle[] = [];
    for (const [low, high] of freeRanges(outer, holes, from, to)) {
      const before = open.findIndex((piece) => piece.min[1] === low && piece.max[1] === high);
      const [joined] = before < 0 ? [] : open.splice(before, 1);
      next.push({ min: [joined?.min[0] ?? from, low], max: [to, high] });
    }
    finished.push(...open);
    open = next;
  });
  return [...finished, ...open];
}

/** The ranges of v that no hole takes between two neighbouring cuts. */
function freeRanges(outer: Rectangle, holes: readonly Rectangle[], from: number, to: number): Range[] {
  const taken = holes
    .filter((hole) => hole.min[0] <= from && hole.max[0] >= to && hole.min[1] < hole.max[1])
    .map((hole): Range => [hole.min[1], hole.max[1]])
    .sort((a, b) => a[0] - b[0]);
  const free: Range[] = [];
  let low = outer.min[1];
  for (const [start, end] of taken) {
    if (start > low) free.push([low, Math.min(start, outer.max[1])]);
    low = Math.max(low, end);
    if (low >= outer.max[1]) return free;
  }
  free.push([low, outer.max[1]]);
  return free;
}
