/** Scenes whose answers are known by hand or from print; boxes as [x0, y0, z0, x1, y1, z1]. */
import { boxFromCorners, type OrientedBox } from '../../../geometry/space/oriented-box';
import { multiplyRotations, rotationAbout } from '../../../geometry/space/rotation';

export type Corners = readonly [number, number, number, number, number, number];

export function boxOf(c: Corners): OrientedBox {
  return boxFromCorners([c[0], c[1], c[2]], [c[3], c[4], c[5]]);
}

export function boxesOf(corners: readonly Corners[]): OrientedBox[] {
  return corners.map(boxOf);
}

/** A bar in a T-slot: only along the slot, both ways. */
export const tSlot = {
  channel: boxesOf([
    [0, 0, 0, 100, 40, 5],
    [0, 0, 5, 100, 5, 20],
    [0, 35, 5, 100, 40, 20],
    [0, 0, 20, 100, 15, 25],
    [0, 25, 20, 100, 40, 25],
  ]),
  bar: boxesOf([
    [0, 5, 5, 100, 35, 20],
    [0, 15, 20, 100, 25, 40],
  ]),
};

/** A peg in an L-shaped channel closed above and below: two straight moves, the first of 78 to 80 mm. */
export const lChannel = {
  walls: boxesOf([
    [-5, -5, 0, 105, 0, 20],
    [-5, 0, 0, 0, 100, 20],
    [100, 0, 0, 105, 25, 20],
    [22, 20, 0, 100, 25, 20],
    [22, 25, 0, 27, 100, 20],
    [-5, -5, -5, 105, 100, 0],
    [-5, -5, 20, 105, 100, 25],
  ]),
  peg: boxesOf([[80, 0, 0, 100, 20, 20]]),
};

/** Three rotated bars woven in a ring. */
export function wovenBars(): OrientedBox[][] {
  return [0, 120, 240].map((degrees) => {
    const f = (degrees * Math.PI) / 180;
    // Long axis tangential (90 degrees on from the radius) and raised at its leading end.
    const rotation = multiplyRotations(rotationAbout('z', degrees + 90), rotationAbout('y', -8.213211));
    return [{ centre: [20 * Math.cos(f), 20 * Math.sin(f), 0], half: [45, 3, 3], rotation }];
  });
}

/** Six-piece burr of level 6.4.1.1.1 (published for Dubois, solved again from this text). */
export const burrA: readonly (readonly Corners[])[] = [
  [
    [0, 2, 1, 6, 4, 2],
    [4, 2, 2, 6, 4, 3],
    [0, 2, 2, 1, 4, 3],
  ],
  [
    [0, 2, 4, 6, 4, 5],
    [0, 2, 3, 1, 4, 4],
    [2, 2, 3, 4, 3, 4],
    [5, 2, 3, 6, 4, 4],
  ],
  [
    [1, 0, 2, 2, 6, 4],
    [2, 0, 2, 3, 1, 4],
    [2, 5, 2, 3, 6, 4],
  ],
  [
    [4, 0, 3, 5, 6, 4],
    [3, 0, 2, 4, 1, 4],
    [4, 0, 2, 5, 2, 3],
    [4, 4, 2, 5, 6, 3],
    [3, 5, 2, 4, 6, 4],
    [3, 1, 3, 4, 2, 4],
    [3, 4, 3, 4, 5, 4],
  ],
  [
    [2, 1, 0, 3, 2, 6],
    [3, 1, 0, 4, 2, 3],
    [2, 2, 0, 4, 3, 1],
    [3, 1, 4, 4, 2, 6],
    [2, 2, 5, 4, 3, 6],
  ],
  [
    [2, 4, 0, 3, 5, 6],
    [2, 3, 0, 4, 4, 1],
    [3, 4, 0, 4, 5, 2],
    [3, 4, 4, 4, 5, 6],
    [2, 3, 5, 4, 4, 6],
    [2, 3, 3, 3, 4, 4],
  ],
];

/** Six-piece burr of level 9.3.1.1.1 (published for Piston). */
export const burrB: readonly (readonly Corners[])[] = [
  [
    [0, 2, 1, 6, 4, 2],
    [4, 2, 2, 6, 4, 3],
    [0, 2, 2, 1, 4, 3],
    [2, 3, 2, 3, 4, 3],
  ],
  [
    [0, 3, 4, 6, 4, 5],
    [2, 2, 3, 4, 4, 4],
    [0, 2, 3, 1, 3, 5],
    [5, 2, 3, 6, 3, 5],
    [0, 3, 3, 1, 4, 4],
    [5, 3, 3, 6, 4, 4],
    [1, 2, 4, 2, 3, 5],
    [4, 2, 4, 5, 3, 5],
  ],
  [
    [1, 3, 2, 2, 6, 4],
    [1, 0, 2, 2, 2, 4],
    [2, 0, 2, 3, 1, 4],
    [2, 5, 2, 3, 6, 4],
    [1, 2, 3, 2, 3, 4],
  ],
  [
    [4, 0, 3, 5, 6, 4],
    [3, 0, 2, 4, 1, 4],
    [4, 0, 2, 5, 2, 3],
    [4, 4, 2, 5, 6, 3],
    [3, 5, 2, 4, 6, 4],
    [3, 4, 3, 4, 5, 4],
  ],
  [
    [2, 1, 0, 3, 2, 6],
    [3, 1, 0, 4, 2, 2],
    [2, 2, 0, 4, 3, 1],
    [3, 1, 4, 4, 2, 6],
    [2, 2, 4, 3, 3, 6],
    [3, 2, 5, 4, 3, 6],
  ],
  [
    [2, 4, 0, 3, 5, 6],
    [3, 4, 0, 4, 5, 3],
    [2, 3, 0, 4, 4, 1],
    [3, 4, 4, 4, 5, 6],
    [2, 3, 5, 4, 4, 6],
  ],
];

/** Unit cells of a part, as sorted 'x y z' words. */
export function cellsOf(part: readonly Corners[]): string[] {
  const cells = new Set<string>();
  for (const [x0, y0, z0, x1, y1, z1] of part) {
    for (let x = x0; x < x1; x++)
      for (let y = y0; y < y1; y++) for (let z = z0; z < z1; z++) cells.add(`${x} ${y} ${z}`);
  }
  return [...cells].sort();
}

/** The same burr of sticks two units longer: each stick grows by one unit at both ends with its own full section. */
export function lengthened(burr: readonly (readonly Corners[])[]): Corners[][] {
  return burr.map((part) => {
    const low = [0, 1, 2].map((axis) => Math.min(...part.map((c) => c[axis] ?? 0)));
    const high = [0, 1, 2].map((axis) => Math.max(...part.map((c) => c[axis + 3] ?? 0)));
    const along = [0, 1, 2].findIndex((axis) => (high[axis] ?? 0) - (low[axis] ?? 0) === 6);
    const shifted = part.map((c) => c.map((value) => value + 1) as unknown as Corners);
    const end = (from: number): Corners => {
      const corners = [...low, ...high].map((value) => value + 1);
      corners[along] = from;
      corners[along + 3] = from + 1;
      return corners as unknown as Corners;
    };
    return [...shifted, end(0), end(7)];
  });
}
