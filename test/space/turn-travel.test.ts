import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { poseOfMotion, type Turn } from '../../geometry/space/motion';
import {
  boundsOfBox,
  boxFromCorners,
  type OrientedBox,
  transformBox,
} from '../../geometry/space/oriented-box';
import { PackedBoxes } from '../../geometry/space/packed-boxes';
import { rotationFromDegrees } from '../../geometry/space/rotation';
import { interiorsOverlap } from '../../geometry/space/separation';
import { boundsOfTurn, createTurnTravel, turnTravelPacked } from '../../geometry/space/turn-travel';
import { normalise, type Vector3 } from '../../geometry/space/vector';

const DEGREES = 180 / Math.PI;

function turnTo(mover: OrientedBox, other: OrientedBox, point: Vector3, axis: Vector3, degrees: number) {
  const out = createTurnTravel();
  turnTravelPacked(PackedBoxes.from([mover, other]), 0, 1, point, axis, degrees / DEGREES, out);
  return { free: out.free * DEGREES, meets: out.meets };
}

const zAxis: Vector3 = [0, 0, 1];
const ceiling = (y: number) => boxFromCorners([-1000, y, -100], [1000, y + 10, 100]);

describe('closed forms of a turn about an edge', () => {
  it('a 320 x 147 card under a ceiling at 340 meets it at asin(340 / r) - atan(147 / 320)', () => {
    const r = Math.hypot(320, 147);
    const turned = turnTo(boxFromCorners([0, 0, 0], [320, 147, 10]), ceiling(340), [0, 0, 0], zAxis, 90);
    expect(turned.meets).toBe(true);
    expect(turned.free).toBeCloseTo((Math.asin(340 / r) - Math.atan(147 / 320)) * DEGREES, 5);
    expect(turned.free).toBeCloseTo(50.2332, 4);
  });

  it('stands up under a ceiling of sqrt(h^2 + d^2) and a hair, not under one a hair lower', () => {
    for (const [h, d] of [
      [4, 3],
      [6, 2.5],
      [320, 147],
    ] as const) {
      const height = Math.hypot(h, d);
      const lying = boxFromCorners([0, 0, 0], [h, d, 10]);
      expect(turnTo(lying, ceiling(height + 0.001), [0, 0, 0], zAxis, 90).meets).toBe(false);
      expect(turnTo(lying, ceiling(height - 0.001), [0, 0, 0], zAxis, 90).meets).toBe(true);
    }
  });

  it('a 100 x 20 box meets a ceiling at 60 and a point at (50, 40) where the formulas say', () => {
    const box = boxFromCorners([0, 0, 0], [100, 20, 10]);
    expect(turnTo(box, ceiling(60), [0, 0, 0], zAxis, 90).free).toBeCloseTo(24.729961, 5);
    const point = boxFromCorners([50, 40, -1], [50, 40, 20]);
    expect(turnTo(box, point, [0, 0, 0], zAxis, 90).free).toBeCloseTo(20.459048, 5);
  });

  it('a hinged panel 300 x 20 clears a wall 300.665928 from the hinge and not one 0.001 nearer', () => {
    const panel = boxFromCorners([0, 0, 0], [300, 20, 10]);
    const wall = (x: number) => boxFromCorners([x, -500, -100], [x + 5, 500, 100]);
    const reach = Math.hypot(300, 20);
    expect(reach).toBeCloseTo(300.665928, 6);
    expect(turnTo(panel, wall(reach + 0.001), [0, 0, 0], zAxis, -90).meets).toBe(false);
    expect(turnTo(panel, wall(reach - 0.001), [0, 0, 0], zAxis, -90).meets).toBe(true);
  });

  it('moving away from a face it touches is free at once, moving into it is not', () => {
    const floor = boxFromCorners([-500, -10, -100], [500, 0, 100]);
    const card = boxFromCorners([0, 0, 0], [320, 147, 10]);
    expect(turnTo(card, floor, [0, 0, 0], zAxis, 60).meets).toBe(false);
    expect(turnTo(card, floor, [0, 0, 0], zAxis, -60)).toMatchObject({ meets: true });
    expect(turnTo(card, floor, [0, 0, 0], zAxis, -60).free).toBeLessThan(1e-3);
  });
});

const coordinate = fc.double({ min: -120, max: 120, noNaN: true });
const half = fc.double({ min: 2, max: 60, noNaN: true });
const angle = fc.double({ min: -180, max: 180, noNaN: true });
const boxes = fc.record({
  centre: fc.tuple(coordinate, coordinate, coordinate),
  half: fc.tuple(half, half, half),
  rotation: fc.tuple(angle, angle, angle).map(([x, y, z]) => rotationFromDegrees([x, y, z])),
});
const lines = fc
  .tuple(coordinate, coordinate, coordinate, angle, angle)
  .map(([x, y, z, a, b]): Pick<Turn, 'point' | 'axis'> => {
    const cosine = Math.cos(b / DEGREES);
    const axis = normalise([
      cosine * Math.cos(a / DEGREES),
      cosine * Math.sin(a / DEGREES),
      Math.sin(b / DEGREES),
    ]);
    return { point: [x, y, z], axis };
  });

describe('a turn against sampling at 0.01 degree', () => {
  it('certified free means no sample overlaps, and the contact lies within one sample', () => {
    fc.assert(
      fc.property(
        boxes,
        boxes,
        lines,
        fc.double({ min: -90, max: 90, noNaN: true }),
        (a, b, line, degrees) => {
          const packed = PackedBoxes.from([a, b]);
          fc.pre(!interiorsOverlap(packed, 0, 1));
          const out = createTurnTravel();
          turnTravelPacked(packed, 0, 1, line.point, line.axis, degrees / DEGREES, out);
          const steps = Math.ceil(Math.abs(degrees) / 0.01);
          let first = Number.POSITIVE_INFINITY;
          for (let k = 0; k <= steps && first === Number.POSITIVE_INFINITY; k++) {
            const motion: Turn = { kind: 'turn', ...line, degrees };
            packed.setBox(0, transformBox(poseOfMotion(motion, steps === 0 ? 0 : k / steps), a));
            if (interiorsOverlap(packed, 0, 1)) first = (k / steps) * Math.abs(degrees);
          }
          const free = out.free * DEGREES;
          expect(first).toBeGreaterThanOrEqual(free - 1e-6);
          // A graze shorter than one sample may be missed by sampling, never by the kernel.
          if (first < Number.POSITIVE_INFINITY) expect(out.meets).toBe(true);
          if (out.meets) {
            packed.setBox(
              0,
              transformBox(
                poseOfMotion({ kind: 'turn', ...line, degrees: Math.sign(degrees) * (free + 1e-4) }, 1),
                a,
              ),
            );
            const grown = PackedBoxes.from([{ ...packed.boxAt(0), half: grow(packed.boxAt(0).half) }, b]);
            expect(interiorsOverlap(grown, 0, 1)).toBe(true);
          }
        },
      ),
      { numRuns: 250, seed: 20261 },
    );
  });

  it('the range of a turn holds every sampled pose and touches the outermost', () => {
    fc.assert(
      fc.property(boxes, lines, fc.double({ min: -170, max: 170, noNaN: true }), (a, line, degrees) => {
        const out = new Float64Array(6);
        boundsOfTurn(PackedBoxes.from([a]), 0, line.point, line.axis, degrees / DEGREES, out);
        const seen = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
        for (let k = 0; k <= 500; k++) {
          const at = boundsOfBox(transformBox(poseOfMotion({ kind: 'turn', ...line, degrees }, k / 500), a));
          for (const axis of [0, 1, 2] as const) {
            seen[axis] = Math.min(seen[axis] ?? 0, at.min[axis]);
            seen[axis + 3] = Math.max(seen[axis + 3] ?? 0, at.max[axis]);
          }
        }
        for (const axis of [0, 1, 2]) {
          expect(out[axis]).toBeLessThanOrEqual((seen[axis] ?? 0) + 1e-6);
          expect(out[axis + 3]).toBeGreaterThanOrEqual((seen[axis + 3] ?? 0) - 1e-6);
          expect(Math.abs((out[axis] ?? 0) - (seen[axis] ?? 0))).toBeLessThan(0.02);
        }
      }),
      { numRuns: 100, seed: 7 },
    );
  });
});

/** Contact is within 0.01 mm: the boxes overlap when one is grown by that. */
function grow(size: Vector3): Vector3 {
  return [size[0] + 0.01, size[1] + 0.01, size[2] + 0.01];
}
