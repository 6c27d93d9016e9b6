/** Disjoint axis-aligned boxes from a seed: the same scene every time. */
import { boxFromCorners, type OrientedBox } from '../../../../geometry/space/oriented-box';
import { separateBoxes } from '../../../../geometry/space/separation';

/** Mulberry32: a small generator with a full period of 2^32. */
export function seeded(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export function randomBoxes(seed: number, count: number, space = 200, largest = 80): OrientedBox[] {
  const random = seeded(seed);
  const boxes: OrientedBox[] = [];
  for (let tries = 0; boxes.length < count && tries < 4000; tries++) {
    const at = [0, 1, 2].map(() => Math.round(random() * space));
    const size = [0, 1, 2].map(() => 5 + Math.round(random() * largest));
    const [x = 0, y = 0, z = 0] = at;
    const [a = 0, b = 0, c = 0] = size;
    const box = boxFromCorners([x, y, z], [x + a, y + b, z + c]);
    if (boxes.every((other) => separateBoxes(box, other).distance >= 0)) boxes.push(box);
  }
  return boxes;
}
