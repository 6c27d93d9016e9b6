import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placePlan } from '../../../geometry/plan/place-plan';
import { readPlan } from '../../../geometry/plan/read-plan';
import { bodiesOf } from '../../../geometry/solver/assembly/assembly-bodies';
import { insertionPath, poseOnPath } from '../../../geometry/solver/assembly/insertion-path';
import { assemblyOrder } from '../../../geometry/solver/assembly/order/assembly-order';
import { smallestGap } from '../../../geometry/solver/assembly/paths/smallest-gap';
import { testWay } from '../../../geometry/solver/assembly/paths/test-way';
import { type Motion, poseAlong, reversedMotions } from '../../../geometry/space/motion';
import { boxFromCorners, transformBox } from '../../../geometry/space/oriented-box';
import { PackedBoxes } from '../../../geometry/space/packed-boxes';
import { interiorsOverlap, separateBoxes } from '../../../geometry/space/separation';
import { identityTransform } from '../../../geometry/space/transform';
import { randomBoxes, seeded } from './order/random-scenes';

function example(name: string) {
  const read = readPlan(readFileSync(new URL(`../../../public/plans/${name}.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return placePlan(read.plan);
}

describe('smallest gap on a way', () => {
  it('a card turned up under a ceiling passes it by the closed form', () => {
    // The far upper corner of a 320 x 147 card rises to 352.149116 (sqrt h^2 + d^2) at 65.3271 degrees.
    const bodies = bodiesOf(
      [[boxFromCorners([0, 0, 0], [320, 147, 10])]],
      [boxFromCorners([-500, 360, -50], [500, 370, 50])],
    );
    const turn: Motion = { kind: 'turn', point: [0, 0, 0], axis: [0, 0, 1], degrees: 90 };
    const gap = smallestGap(bodies, [0], [1], [turn]);
    expect(gap?.gap).toBeCloseTo(360 - Math.hypot(320, 147), 2);
    expect((gap?.share ?? 0) * 90).toBeCloseTo(65.3271, 0);
  });

  const random = (seed: number) => {
    const next = seeded(seed);
    const boxes = randomBoxes(seed, 8, 160, 50);
    const [mover, ...others] = boxes;
    if (!mover) throw new Error('a scene has boxes');
    const pick = () => next() * 2 - 1;
    const motions: Motion[] = [
      { kind: 'slide', by: [60 * pick(), 60 * pick(), 60 * pick()] },
      {
        kind: 'turn',
        point: [100 * next(), 100 * next(), 100 * next()],
        axis: [0, 0, 1],
        degrees: 50 * pick(),
      },
    ];
    return { mover, others, motions, bodies: bodiesOf([[mover]], others) };
  };

  it('is the least over samples of a certified way, and no sample of one overlaps', () => {
    fc.assert(
      fc.property(fc.nat({ max: 1_000_000 }), (seed) => {
        const { mover, others, motions, bodies } = random(seed);
        const free = testWay(bodies, 0, motions).contacts.length === 0;
        fc.pre(free);
        let least = Number.POSITIVE_INFINITY;
        for (let k = 0; k <= 400; k++) {
          const at = transformBox(poseAlong(motions, k / 400, 80), mover);
          for (const other of others) {
            expect(interiorsOverlap(PackedBoxes.from([at, other]), 0, 1)).toBe(false);
            if (separateBoxes(mover, other).distance > 0.05)
              least = Math.min(least, separateBoxes(at, other).distance);
          }
        }
        const gap = smallestGap(
          bodies,
          [0],
          others.map((_, k) => k + 1),
          motions,
          1000,
        );
        expect(gap?.gap).toBeLessThanOrEqual(least + 0.011);
        expect(gap?.gap).toBeGreaterThan(least - 1.5);
      }),
      { numRuns: 25, seed: 3 },
    );
  });

  it('is the same for the way run backwards, and scales with the scene', () => {
    fc.assert(
      fc.property(fc.nat({ max: 1_000_000 }), fc.double({ min: 0.5, max: 4, noNaN: true }), (seed, k) => {
        const { mover, others, motions, bodies } = random(seed);
        fc.pre(testWay(bodies, 0, motions).contacts.length === 0);
        const numbers = others.map((_, at) => at + 1);
        const there = smallestGap(bodies, [0], numbers, motions, 1000)?.gap ?? -1;
        const end = transformBox(poseAlong(motions, 1, 80), mover);
        const back =
          smallestGap(bodiesOf([[end]], others), [0], numbers, reversedMotions(motions), 1000)?.gap ?? -1;
        expect(Math.abs(there - back)).toBeLessThan(0.03);
        const scaled = (box: typeof mover) => ({
          ...box,
          centre: box.centre.map((v) => v * k) as unknown as typeof box.centre,
          half: box.half.map((v) => v * k) as unknown as typeof box.half,
        });
        const big = motions.map(
          (m): Motion =>
            m.kind === 'slide'
              ? { kind: 'slide', by: [m.by[0] * k, m.by[1] * k, m.by[2] * k] }
              : { ...m, point: [m.point[0] * k, m.point[1] * k, m.point[2] * k] },
        );
        const bigger =
          smallestGap(bodiesOf([[scaled(mover)]], others.map(scaled)), [0], numbers, big, 4000)?.gap ?? -1;
        expect(Math.abs(bigger - k * there)).toBeLessThan(0.03 * Math.max(1, k));
      }),
      { numRuns: 15, seed: 9 },
    );
  });
});

describe('ways into the demo machine', () => {
  const scene = example('demo');

  it('every part has a certified way past all that is there before it, sampled free of overlaps', () => {
    const order = assemblyOrder(scene);
    const there = new Set<string>();
    for (const step of order.steps) {
      if (step.action === 'take off' || step.action === 'close') continue;
      if (step.bench === undefined && step.action === 'put in' && step.with.length === 0) {
        const path = insertionPath(scene, step.unit, there);
        expect(path.proof, path.sentence).toBe('certified free');
      }
      there.add(step.unit);
    }
  });

  it('ends at the seat, starts outside, and says where it is tight', () => {
    const path = insertionPath(scene, 'card');
    expect(path).toMatchObject({ proof: 'certified free', method: 'way of its mount' });
    const seated = poseOnPath(path, 1);
    for (const k of [0, 1, 2] as const) expect(seated.translation[k]).toBeCloseTo(0, 9);
    for (const k of [0, 4, 8] as const)
      expect(seated.rotation[k]).toBeCloseTo(identityTransform.rotation[k], 9);
    expect(poseOnPath(path, 0).translation[2]).toBeGreaterThan(150);
    expect(path.gap?.millimetres).toBeGreaterThan(0);
    expect(path.gap?.name).not.toBe('');
    expect(path.swept.length).toBeGreaterThan(0);
  });

  it('with the side panel on, the card finds no way, in words that claim no proof', () => {
    const there = new Set(['enclosure/side panel', 'enclosure/back panel', 'enclosure/slot cover', 'board']);
    const path = insertionPath(scene, 'card', there, {
      limits: { stops: 2, tilt: 10, tiltStep: 5, cell: 20, angle: 5, poses: 10 },
    });
    expect(path.proof).toBe('no way in found within these bounds');
    expect(path.meets.length).toBeGreaterThan(0);
    expect(path.sentence).toContain('within these bounds');
  });

  it('a name nobody has is refused', () => {
    expect(() => insertionPath(scene, 'nonsense')).toThrow(RangeError);
  });
});

describe('the memory under the cooler in faults', () => {
  it('is blocked by closed form: it overlaps at its seat', () => {
    const path = insertionPath(example('faults'), 'memory');
    expect(path.proof).toBe('blocked by closed form');
  });
});
