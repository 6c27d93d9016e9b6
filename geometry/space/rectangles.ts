/** A flat rectangle with sides along u and v; mm. */
export interface Rectangle {
  readonly min: readonly [number, number];
  readonly max: readonly [number, number];
}

/**
 * What is left of `outer` when rectangular holes are taken out, as few non-overlapping rectangles (walls and
 * trays with openings). Holes may overlap each other and stick out of `outer`. Every coordinate of the result is
 * one of the input's, so pieces meet without seams and areas add up. Cut in strips along u and along v; the
 * smaller count is returned.
 */
export function subtractRectangles(outer: Rectangle, holes: readonly Rectangle[]): readonly Rectangle[] {
  if (outer.max[0] <= outer.min[0] || outer.max[1] <= outer.min[1]) return [];
  const inside = holes.filter((hole) => takesFrom(outer, hole));
  if (inside.length === 0) return [outer];
  const inU = strips(outer, inside, 0, 1);
  const inV = strips(outer, inside, 1, 0);
  return inV.length < inU.length ? inV : inU;
}

function takesFrom(outer: Rectangle, hole: Rectangle): boolean {
  return ([0, 1] as const).every(
    (axis) =>
      hole.min[axis] < outer.max[axis] && hole.max[axis] > outer.min[axis] && hole.min[axis] < hole.max[axis],
  );
}

/** Area in square mm. */
export function areaOfRectangle(rectangle: Rectangle): number {
  return (rectangle.max[0] - rectangle.min[0]) * (rectangle.max[1] - rectangle.min[1]);
}

type Side = 0 | 1;

/** Strips between neighbouring hole edges in u, each split in v, and joined again where nothing changes. */
function strips(outer: Rectangle, holes: readonly Rectangle[], u: Side, v: Side): Rectangle[] {
  const cuts = new Set([outer.min[u], outer.max[u]]);
  for (const hole of holes) {
    for (const at of [hole.min[u], hole.max[u]]) if (at > outer.min[u] && at < outer.max[u]) cuts.add(at);
  }
  const sorted = [...cuts].sort((a, b) => a - b);
  const upwards = [...holes].sort((a, b) => a.min[v] - b.min[v]);
  const finished: Rectangle[] = [];
  let open: Rectangle[] = [];
  for (let index = 1; index < sorted.length; index++) {
    const [from, to] = [sorted[index - 1] ?? 0, sorted[index] ?? 0];
    const next: Rectangle[] = [];
    let low = outer.min[v];
    for (const { min, max } of upwards) {
      if (low >= outer.max[v]) break;
      if (min[u] > from || max[u] < to) continue;
      if (min[v] > low) next.push(piece(open, u, v, [from, to], [low, Math.min(min[v], outer.max[v])]));
      low = Math.max(low, max[v]);
    }
    if (low < outer.max[v]) next.push(piece(open, u, v, [from, to], [low, outer.max[v]]));
    finished.push(...open);
    open = next;
  }
  return [...finished, ...open];
}

/** Free sheet between two cuts in u; it goes on with the open piece that has the same ends in v, if there is one. */
function piece(
  open: Rectangle[],
  u: Side,
  v: Side,
  [from, to]: readonly [number, number],
  [low, high]: readonly [number, number],
): Rectangle {
  const before = open.findIndex(({ min, max }) => min[v] === low && max[v] === high);
  const [joined] = before < 0 ? [] : open.splice(before, 1);
  const start = joined ? joined.min[u] : from;
  return u === 0 ? { min: [start, low], max: [to, high] } : { min: [low, start], max: [high, to] };
}
