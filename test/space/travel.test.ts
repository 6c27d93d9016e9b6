import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boxFromCorners,
  type OrientedBox,
  transformBox,
  translateBox,
} from '../../geometry/space/oriented-box';
import { rotateVector, rotationAbout, rotationFromDegrees } from '../../geometry/space/rotation';
import { separateBoxes } from '../../geometry/space/separation';
import {
  createTravelInterval,
  freeTravel,
  signedGapAlong,
  travelInterval,
} from '../../geometry/space/travel';
import { length, normalise, scale, type Vector3 } from '../../geometry/space/vector';
import { anyBox, anyMotion, anyPoint, propertyRun } from './arbitrary-boxes';
import { randomPair, seededRandom } from './random-boxes';

const unit = boxFromCorners([0, 0, 0], [1, 1, 1]);
const alongX: Vector3 = [1, 0, 0];
const backX: Vector3 = [-1, 0, 0];
/** Further than any two of the random boxes reach to each other. */
const START_MM = 300;

describe('free travel, closed forms', () => {
  it('ends at the first face in the way, and names both faces', () => {
    const far = boxFromCorners([9, 0.5, 0], [10, 2, 1]);
    const near = boxFromCorners([4, 0.5, 0], [5, 2, 1]);
    expect(freeTravel([unit], [far, near], alongX, 100)).toEqual({
      distance: 3,
      contact: { mover: 0, obstacle: 1, moverFace: '+x', obstacleFace: '-x' },
    });
    expect(freeTravel([unit], [far, near], backX, 100)).toEqual({ distance: 100 });
    expect(freeTravel([unit], [far], alongX, 5)).toEqual({ distance: 5 });
  });

  it('of a cube turned 45 degrees ends with its edge at the wall', () => {
    const turned: OrientedBox = { centre: [0, 0, 0], half: [1, 1, 1], rotation: rotationAbout('z', 45) };
    const wall = boxFromCorners([10, -5, -5], [11, 5, 5]);
    expect(freeTravel([turned], [wall], alongX, 100).distance).toBeCloseTo(10 - Math.SQRT2, 13);
  });

  it('of two cubes edge on to each other ends with crossing edges', () => {
    const first: OrientedBox = { centre: [0, 0, 0], half: [1, 1, 1], rotation: rotationAbout('x', 45) };
    const second: OrientedBox = { centre: [0.2, 0.3, 5], half: [1, 1, 1], rotation: rotationAbout('y', 45) };
    expect(freeTravel([first], [second], [0, 0, 1], 100).distance).toBeCloseTo(5 - 2 * Math.SQRT2, 13);
  });

  it('along a slant counts along the direction', () => {
    const wall = boxFromCorners([4, -50, -50], [5, 50, 50]);
    const direction = normalise([1, 1, 0]);
    expect(freeTravel([unit], [wall], direction, 100).distance).toBeCloseTo(3 * Math.SQRT2, 12);
  });
});

describe('free travel from a touching start, also turned out of the axes', () => {
  const neighbour = boxFromCorners([1, 0.2, 0.1], [2, 1.2, 0.9]);
  const motions = [
    { rotation: rotationAbout('x', 0), translation: [0, 0, 0] as const },
    { rotation: rotationFromDegrees([17, -48, 131]), translation: [30, -20, 55] as const },
  ];
  it.each(motions)('is 0 into the contact, free away from it and along it (%#)', (motion) => {
    const travel = (direction: Vector3) =>
      freeTravel(
        [transformBox(motion, unit)],
        [transformBox(motion, neighbour)],
        rotateVector(motion.rotation, direction),
        50,
      ).distance;
    expect(travel([1, 0, 0])).toBeCloseTo(0, 12);
    expect(travel(normalise([1, 0, 0.2]))).toBeCloseTo(0, 12);
    for (const direction of [backX, [0, 1, 0], [0, -1, 0], [0, 0, 1]] as const)
      expect(travel(direction)).toBe(50);
    expect(travel(normalise([-1, 0, 0.2]))).toBe(50);
  });

  it('is free past a box that is only grazed along a face, an edge or a corner', () => {
    const flush = boxFromCorners([5, 1, 0], [6, 2, 1]);
    const edge = boxFromCorners([5, 1, 1], [6, 2, 2]);
    for (const obstacle of [flush, edge])
      expect(freeTravel([unit], [obstacle], alongX, 50).distance).toBe(50);
  });

  it('is 0 in every direction for boxes that already overlap', () => {
    const stuck = boxFromCorners([0.5, 0.5, 0.5], [2, 2, 2]);
    for (const direction of [alongX, backX])
      expect(freeTravel([unit], [stuck], direction, 50).distance).toBe(0);
  });
});

describe('signed gap along a direction', () => {
  it('is the gap ahead, negative for an overlap, absent when nothing is ahead', () => {
    const gapTo = (b: OrientedBox) => signedGapAlong([unit], [b], alongX);
    expect(gapTo(translateBox(unit, [4, 0.5, 0]))).toEqual({ gap: 3, a: 0, b: 0, faceA: '+x', faceB: '-x' });
    expect(gapTo(translateBox(unit, [0.75, 0.5, 0]))?.gap).toBe(-0.25);
    expect(gapTo(translateBox(unit, [4, 1, 0]))).toBeUndefined();
    expect(gapTo(translateBox(unit, [-4, 0, 0]))).toBeUndefined();
  });
});

describe('free travel, certified directly', { timeout: 120_000 }, () => {
  it('50,000 random pairs, seed 20263: nothing penetrates on the way and 0.01 mm further does', () => {
    const random = seededRandom(20263);
    const out = createTravelInterval();
    let met = 0;
    for (let n = 0; n < 50_000; n++) {
      const { a, b } = randomPair(random, n);
      const direction = normalise([random() - 0.5, random() - 0.5, random() - 0.5]);
      const start = translateBox(a, scale(direction, -START_MM));
      const { distance, contact } = freeTravel([start], [b], direction, 3 * START_MM);
      if (contact === undefined) continue;
      met++;
      for (const part of [0.5, 0.9, 1]) {
        const there = separateBoxes(translateBox(start, scale(direction, part * distance)), b).distance;
        if (there < 0) expect.fail(`pair ${n} penetrates by ${-there} mm on the way`);
      }
      // At a grazing contact 0.01 mm of travel goes less deep; by the middle of the overlap it must show.
      travelInterval(start, b, direction, out);
      const further = Math.min(distance + 0.01, (out.enter + out.leave) / 2);
      const beyond = separateBoxes(translateBox(start, scale(direction, further)), b).distance;
      if (beyond >= 0 && out.leave - out.enter > 0.02) expect.fail(`pair ${n} could go 0.01 mm further`);
    }
    expect(met).toBeGreaterThan(5000);
  });

  it('is free where sampling finds nothing in the way', () => {
    fc.assert(
      fc.property(anyBox, anyBox, anyPoint, (a, b, towards) => {
        fc.pre(length(towards) > 1);
        const direction = normalise(towards);
        if (separateBoxes(a, b).distance < 0) return;
        const { distance } = freeTravel([a], [b], direction, 100);
        for (let step = 0; step <= 20; step++) {
          const moved = translateBox(a, scale(direction, (distance * step) / 20));
          expect(separateBoxes(moved, b).distance).toBeGreaterThanOrEqual(0);
        }
      }),
      { ...propertyRun, numRuns: 1000 },
    );
  });

  it('does not change when the whole scene moves', () => {
    fc.assert(
      fc.property(anyBox, anyBox, anyPoint, anyMotion, (a, b, towards, motion) => {
        fc.pre(length(towards) > 1);
        const direction = normalise(towards);
        const out = createTravelInterval();
        if (!travelInterval(a, b, direction, out) || out.leave - out.enter < 0.1) return;
        const { enter, leave } = out;
        const turned = rotateVector(motion.rotation, direction);
        expect(travelInterval(transformBox(motion, a), transformBox(motion, b), turned, out)).toBe(true);
        expect(Math.abs(out.enter - enter)).toBeLessThan(1e-9);
        expect(Math.abs(out.leave - leave)).toBeLessThan(1e-9);
      }),
      propertyRun,
    );
  });
});
