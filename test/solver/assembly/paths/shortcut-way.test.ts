import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodiesOf } from '../../../../geometry/solver/assembly/assembly-bodies';
import { asOneMotion, shortcutWay } from '../../../../geometry/solver/assembly/paths/shortcut-way';
import { searchFor } from '../../../../geometry/solver/assembly/paths/straight-moves';
import { testWay } from '../../../../geometry/solver/assembly/paths/test-way';
import { type Motion, poseAfter } from '../../../../geometry/space/motion';
import { boxFromCorners } from '../../../../geometry/space/oriented-box';

const axis = [0, 1, 0] as const;
const motion = fc.oneof(
  fc
    .tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 }))
    .map(([x, z]): Motion => ({ kind: 'slide', by: [x, 0, z] })),
  fc
    .tuple(
      fc.integer({ min: -80, max: 80 }),
      fc.integer({ min: -80, max: 80 }),
      fc.integer({ min: -25, max: 25 }),
    )
    .map(([x, z, degrees]): Motion => ({ kind: 'turn', point: [x, 0, z], axis, degrees })),
);

const expectSamePose = (a: readonly Motion[], b: readonly Motion[]): void => {
  const [p, q] = [poseAfter(a), poseAfter(b)];
  for (const k of [0, 1, 2] as const) expect(p.translation[k]).toBeCloseTo(q.translation[k], 6);
  for (const [k, value] of p.rotation.entries()) expect(value).toBeCloseTo(q.rotation[k] ?? Number.NaN, 9);
};

describe('one motion for many in a plane (Chasles: every displacement in a plane is one turn or one slide)', () => {
  it('ends where they end', () => {
    fc.assert(
      fc.property(fc.array(motion, { minLength: 1, maxLength: 6 }), (motions) => {
        const one = asOneMotion(motions, axis);
        // Turns that sum to nearly nothing about points far apart have their pole beyond any number.
        fc.pre(one !== undefined && (one.kind === 'slide' || Math.abs(one.degrees) > 0.5));
        if (one) expectSamePose([one], motions);
      }),
      { numRuns: 300, seed: 5 },
    );
  });

  it('a quarter turn about one corner and a quarter back about another is a slide', () => {
    const there: Motion = { kind: 'turn', point: [0, 0, 0], axis, degrees: 90 };
    const back: Motion = { kind: 'turn', point: [10, 0, 0], axis, degrees: -90 };
    const one = asOneMotion([there, back], axis);
    expect(one?.kind).toBe('slide');
    // By the corner: (10, 0, 0) - R(-90)(10, 0, 0).
    if (one?.kind === 'slide') expect(Math.hypot(...one.by)).toBeCloseTo(10 * Math.SQRT2, 9);
  });

  it('keeps out of what the whole way keeps out of, and ends where it ended', () => {
    const bodies = bodiesOf(
      [[boxFromCorners([0, 0, 0], [20, 10, 10])]],
      [boxFromCorners([24, -5, 12], [40, 15, 60])],
    );
    const steps: Motion[] = [
      ...Array.from({ length: 6 }, (): Motion => ({ kind: 'slide', by: [-5, 0, 0] })),
      ...Array.from({ length: 6 }, (): Motion => ({ kind: 'slide', by: [0, 0, 10] })),
      ...Array.from({ length: 6 }, (): Motion => ({ kind: 'slide', by: [10, 0, 6] })),
    ];
    expect(testWay(bodies, 0, steps).contacts).toEqual([]);
    const short = shortcutWay(searchFor(bodies, [0], [1]), steps);
    expect(short.length).toBeLessThan(4);
    expect(testWay(bodies, 0, short).contacts).toEqual([]);
    expectSamePose(short, steps);
  });
});
