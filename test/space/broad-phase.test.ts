import { describe, expect, it } from 'vitest';
import { findOverlappingPairs } from '../../geometry/space/broad-phase';
import { boxFromCorners, type OrientedBox } from '../../geometry/space/oriented-box';
import { PackedBoxes } from '../../geometry/space/packed-boxes';
import { interiorsOverlap } from '../../geometry/space/separation';
import {
  between,
  type RandomSource,
  randomHalf,
  randomPoint,
  randomRotation,
  seededRandom,
} from './random-boxes';

function keysFound(packed: PackedBoxes): string[] {
  const keys: string[] = [];
  findOverlappingPairs(packed, (i, j) => keys.push(`${i},${j}`));
  return keys.sort();
}

function keysByEveryPair(packed: PackedBoxes): string[] {
  const keys: string[] = [];
  for (let i = 0; i < packed.count; i++) {
    for (let j = i + 1; j < packed.count; j++) if (interiorsOverlap(packed, i, j)) keys.push(`${i},${j}`);
  }
  return keys.sort();
}

function scatter(random: RandomSource, count: number, reach: number): OrientedBox[] {
  return Array.from({ length: count }, () => {
    const box = {
      ...boxFromCorners([0, 0, 0], [0, 0, 0]),
      centre: randomPoint(random, reach),
      half: randomHalf(random),
    };
    return random() < 0.2 ? { ...box, rotation: randomRotation(random) } : box;
  });
}

describe('all overlapping pairs', () => {
  const scenes: Readonly<Record<string, (random: RandomSource) => OrientedBox[]>> = {
    'an even crowd': (random) => scatter(random, 1500, 400),
    'a dense crowd': (random) => scatter(random, 400, 60),
    'a crowd, giants and strays': (random) => [
      ...scatter(random, 1000, 300),
      boxFromCorners([-400, -400, -1], [400, 400, 1]),
      { centre: [0, 0, 0], half: [500, 1, 500], rotation: randomRotation(random) },
      boxFromCorners([1e6, 1e6, 1e6], [1e6 + 50, 1e6 + 50, 1e6 + 50]),
      boxFromCorners([1e6 + 10, 1e6, 1e6], [1e6 + 20, 1e6 + 20, 1e6 + 20]),
    ],
    'a flat layer': (random) =>
      scatter(random, 800, 300).map((box) => ({
        ...box,
        centre: [box.centre[0], 0, box.centre[2]] as const,
      })),
    'all in one place': () => Array.from({ length: 40 }, () => boxFromCorners([1, 1, 1], [2, 2, 2])),
    'boxes without size': (random) =>
      Array.from({ length: 300 }, () => {
        const p = randomPoint(random, 5);
        return boxFromCorners(p, random() < 0.5 ? p : [p[0] + between(random, 0, 2), p[1] + 1, p[2] + 1]);
      }),
    'a grid of touching cubes': () =>
      Array.from({ length: 1000 }, (_, n) => {
        const [x, y, z] = [n % 10, Math.floor(n / 10) % 10, Math.floor(n / 100)];
        return boxFromCorners([x, y, z], [x + 1, y + 1, z + 1]);
      }),
    none: () => [],
    'one box': () => [boxFromCorners([0, 0, 0], [1, 1, 1])],
  };

  it.each(Object.entries(scenes))('of %s are those of the test of every pair, each once', (_name, scene) => {
    const packed = PackedBoxes.from(scene(seededRandom(20264)));
    expect(keysFound(packed)).toEqual(keysByEveryPair(packed));
  });

  it('are none among touching cubes and all among boxes in one place', () => {
    const touching = PackedBoxes.from(scenes['a grid of touching cubes']?.(seededRandom(1)) ?? []);
    expect(keysFound(touching)).toEqual([]);
    const stacked = PackedBoxes.from(scenes['all in one place']?.(seededRandom(1)) ?? []);
    expect(keysFound(stacked)).toHaveLength((40 * 39) / 2);
  });
});
