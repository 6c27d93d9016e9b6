import { boxFromCorners, type OrientedBox } from '../../../geometry/space/oriented-box';
import type { Vector3 } from '../../../geometry/space/vector';
import {
  below,
  between,
  type RandomSource,
  randomPoint,
  randomRotation,
  seededRandom,
} from '../../space/random-boxes';

/** One in so many boxes is turned out of the axes. */
const TURNED = 10;

/**
 * 60 parts of 430 boxes in a space of 420 x 400 x 220 mm: parts of 20 to 80 mm a side, overlapping at places. The
 * boxes fill 10 % to `fill` of their part on each axis, which sets how many near pairs a part has.
 */
export function crowdedEnclosure(seed: number, fill: number): OrientedBox[][] {
  const random = seededRandom(seed);
  const parts: OrientedBox[][] = [];
  let left = 430;
  for (let part = 0; part < 60; part++) {
    const boxes = part === 59 ? left : Math.max(1, Math.min(13, Math.round(between(random, 3, 11.3))));
    left -= boxes;
    const size: Vector3 = [between(random, 20, 80), between(random, 20, 80), between(random, 10, 60)];
    const corner: Vector3 = [
      between(random, 0, 420 - size[0]),
      between(random, 0, 400 - size[1]),
      between(random, 0, 220 - size[2]),
    ];
    parts.push(Array.from({ length: boxes }, () => boxWithin(random, corner, size, fill)));
  }
  return parts;
}

function boxWithin(random: RandomSource, corner: Vector3, size: Vector3, fill: number): OrientedBox {
  const low: [number, number, number] = [0, 0, 0];
  const high: [number, number, number] = [0, 0, 0];
  for (const axis of [0, 1, 2] as const) {
    const extent = size[axis] * between(random, 0.1, fill);
    low[axis] = corner[axis] + between(random, 0, size[axis] - extent);
    high[axis] = low[axis] + extent;
  }
  return turnedNowAndThen(random, boxFromCorners(low, high));
}

function turnedNowAndThen(random: RandomSource, box: OrientedBox): OrientedBox {
  return below(random, TURNED) === 0 ? { ...box, rotation: randomRotation(random) } : box;
}

/**
 * 60 parts of 7 boxes each in a 5 x 4 x 3 grid of cells: no two parts overlap, about half stand flush against a
 * neighbour, a tenth of the boxes are turned.
 */
export function mountedEnclosure(seed: number): OrientedBox[][] {
  const random = seededRandom(seed);
  const cell: Vector3 = [84, 100, 72];
  const parts: OrientedBox[][] = [];
  for (let n = 0; n < 60; n++) {
    const index: Vector3 = [n % 5, Math.floor(n / 5) % 4, Math.floor(n / 20)];
    const low: [number, number, number] = [0, 0, 0];
    const high: [number, number, number] = [0, 0, 0];
    for (const axis of [0, 1, 2] as const) {
      const margin = () => (below(random, 2) === 0 ? 0 : Math.round(between(random, 1, 20) * 2) / 2);
      low[axis] = index[axis] * cell[axis] + margin();
      high[axis] = (index[axis] + 1) * cell[axis] - margin();
    }
    parts.push(partFilling(random, low, high));
  }
  return parts;
}

/** A base plate that spans the range, and six boxes inside it. */
function partFilling(random: RandomSource, low: Vector3, high: Vector3): OrientedBox[] {
  const boxes = [boxFromCorners(low, [high[0], high[1], low[2] + 3])];
  while (boxes.length < 7) {
    const half: Vector3 = [between(random, 3, 12), between(random, 3, 12), between(random, 3, 12)];
    const turned = below(random, TURNED) === 0;
    const reach = turned ? Math.hypot(...half) : 0;
    const centre = [0, 1, 2].map((axis) => {
      const room = turned ? reach : (half[axis] ?? 0);
      const flush = !turned && below(random, 3) === 0;
      const top = (high[axis] ?? 0) - room;
      return flush ? top : between(random, (low[axis] ?? 0) + room, top);
    });
    const at: Vector3 = [centre[0] ?? 0, centre[1] ?? 0, centre[2] ?? 0];
    const box = boxFromCorners(
      [at[0] - half[0], at[1] - half[1], at[2] - half[2]],
      [at[0] + half[0], at[1] + half[1], at[2] + half[2]],
    );
    boxes.push(turned ? { ...box, rotation: randomRotation(random) } : box);
  }
  return boxes;
}

/** Boxes of 4 to 40 mm a side spread evenly at a constant density: one box in a cube of 34 mm on average. */
export function scatteredBoxes(seed: number, count: number): OrientedBox[] {
  const random = seededRandom(seed);
  const reach = (34 * Math.cbrt(count)) / 2;
  return Array.from({ length: count }, () => {
    const half: Vector3 = [between(random, 2, 20), between(random, 2, 20), between(random, 2, 20)];
    const [x, y, z] = randomPoint(random, reach);
    const box: OrientedBox = { ...boxFromCorners([x, y, z], [x, y, z]), half };
    return turnedNowAndThen(random, box);
  });
}

/** Random moves by 1 mm along an axis: which body, and the shift. */
export function randomMoves(seed: number, bodies: number, count: number): { body: number; shift: Vector3 }[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => {
    const shift: [number, number, number] = [0, 0, 0];
    shift[below(random, 3)] = below(random, 2) === 0 ? 1 : -1;
    return { body: below(random, bodies), shift };
  });
}
