import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { movePart } from '../../geometry/plan/edit-plan';
import { placePlan } from '../../geometry/plan/place-plan';
import { isSeated } from '../../geometry/plan/plan-schema';
import type { Clearance, Solution } from '../../geometry/solver/finding';
import { isNearestOnly } from '../../geometry/solver/select-clearances';
import { createSolver, solve } from '../../geometry/solver/solve';
import { rotateVector } from '../../geometry/space/rotation';
import { compose, type RigidTransform } from '../../geometry/space/transform';
import { demoLikeBuild } from './demo-like-build';
import { applyEdit, grown, someEdits, someParts, someRotation } from './random-scenes';
import { type DrawnPart, sceneOf } from './scene-of-boxes';

describe('what is remembered', () => {
  it('never changes an answer: incremental equals from scratch on any scene and edits', () => {
    fc.assert(
      fc.property(someParts, someEdits, (parts, edits) => {
        const solver = createSolver();
        let now = parts;
        let gaps = {};
        expect(solver.solve(sceneOf(now, gaps))).toEqual(solve(sceneOf(now, gaps)));
        for (const edit of edits) {
          now = applyEdit(now, edit);
          if (edit.kind === 'want') gaps = { 'cooler to side panel': edit.gap, 'card tip': edit.gap };
          expect(solver.solve(sceneOf(now, gaps))).toEqual(solve(sceneOf(now, gaps)));
        }
      }),
      { numRuns: 120 },
    );
  });

  it('never changes an answer on a whole plan whose parts move one after another', () => {
    const solver = createSolver();
    let plan = demoLikeBuild();
    for (const id of ['card', 'cooler', 'board', 'fan-2', 'supply', 'memory-2', 'enclosure']) {
      const placement = plan.parts[id]?.placement;
      if (!placement) throw new Error(`no part ${id}`);
      plan = movePart(
        plan,
        id,
        isSeated(placement) ? { ...placement, shift: [3, -2, 1] } : { ...placement, at: [1, 2, 3] },
      );
      const scene = placePlan(plan);
      expect(solver.solve(scene)).toEqual(solve(scene));
    }
  });
});

/** All that does not name a direction of the world: what is said, and its numbers in the same order. */
function summary({ findings, clearances, verdict }: Solution) {
  const byId = (a: { id: string }, b: { id: string }) => (a.id < b.id ? -1 : 1);
  const said = [...findings].sort(byId);
  const measured = [...clearances].sort(byId);
  return {
    facts: {
      fits: verdict.fits,
      findings: said.map(({ id, weight }) => `${weight} ${id}`),
      clearances: measured.map(({ id, fit }) => `${fit} ${id}`),
    },
    numbers: [
      ...said.flatMap((one) => [one.millimetres ?? 0, one.volume ?? 0, one.escape?.distance ?? 0]),
      ...measured.map((one) => one.millimetres),
    ],
  };
}

/** Roundoff of a scene some hundred millimetres wide, turned: relative to the number, absolute for small ones. */
const ROUNDOFF_SHARE = 1e-7;

function expectSame(now: Solution, before: Solution): void {
  const [a, b] = [summary(now), summary(before)];
  expect(a.facts).toEqual(b.facts);
  a.numbers.forEach((number, index) => {
    const expected = b.numbers[index] ?? Number.NaN;
    expect(Math.abs(number - expected)).toBeLessThanOrEqual(ROUNDOFF_SHARE * Math.max(1, Math.abs(expected)));
  });
}

/** Parts whose boxes meet by neither a hair nor exactly, so that roundoff cannot decide anything. */
function isDecided(parts: readonly DrawnPart[]): boolean {
  const near = (shift: number) =>
    JSON.stringify(summary(solve(sceneOf(parts.map((part) => grown(part, shift))))).facts);
  return near(1e-4) === near(-1e-4);
}

describe('rigid motion of the whole scene', () => {
  it('changes nothing but world directions', () => {
    fc.assert(
      fc.property(
        someParts,
        someRotation,
        fc.tuple(fc.integer({ min: -500, max: 500 }), fc.integer({ min: -500, max: 500 })),
        (parts, rotation, [x, y]) => {
          // An odd shift a part keeps faces from lining up exactly, where a hair of roundoff decides.
          const apart = parts.map((part, index) => shifted(part, 0.137 * index));
          fc.pre(isDecided(apart));
          const motion: RigidTransform = { rotation, translation: [x, y, 7] };
          const moved = apart.map((part) =>
            part.pose ? { ...part, pose: compose(motion, part.pose) } : part,
          );
          expectSame(solve(sceneOf(moved)), solve(sceneOf(apart)));
        },
      ),
      { numRuns: 80 },
    );
  });

  it('turns the directions of clearances with it', () => {
    const motion: RigidTransform = { rotation: [0, -1, 0, 1, 0, 0, 0, 0, 1], translation: [10, 20, 30] };
    fc.assert(
      fc.property(someParts, (parts) => {
        const moved = parts.map((part) => (part.pose ? { ...part, pose: compose(motion, part.pose) } : part));
        const before = solve(sceneOf(parts)).clearances;
        const after = new Map(solve(sceneOf(moved)).clearances.map((one) => [one.id, one]));
        for (const one of before) {
          const turned = after.get(one.id);
          const rule = turned && Math.abs(turned.millimetres - one.millimetres) < 1e-9;
          if (!turned || !rule || turned.from.box !== one.from.box || turned.to.box !== one.to.box) continue;
          const expected = rotateVector(motion.rotation, one.direction);
          const along = expected.reduce((sum, x, axis) => sum + x * (turned.direction[axis] ?? 0), 0);
          expect(along).toBeCloseTo(1, 9);
        }
      }),
      { numRuns: 60 },
    );
  });
});

function shifted(part: DrawnPart, by: number): DrawnPart {
  const pose = part.pose;
  if (!pose) return part;
  const [x, y, z] = pose.translation;
  return { ...part, pose: { ...pose, translation: [x + by, y + 2.3 * by, z + 3.1 * by] } };
}

describe('growing a box', () => {
  it('never makes a clearance wider', () => {
    let compared = 0;
    fc.assert(
      fc.property(someParts, fc.nat(6), fc.integer({ min: 1, max: 25 }), (parts, which, by) => {
        const index = which % parts.length;
        const larger = parts.map((part, place) => (place === index ? grown(part, by) : part));
        // Of a rule that shows only the nearest, another partner may take over; of the others each pair is by itself.
        const key = (one: Clearance) =>
          isNearestOnly(one.rule) ? `${one.rule}/${one.parts[0]}` : `${one.rule}/${one.parts.join('/')}`;
        const after = new Map(solve(sceneOf(larger)).clearances.map((one) => [key(one), one.millimetres]));
        for (const one of solve(sceneOf(parts)).clearances) {
          const now = after.get(key(one));
          if (now === undefined) continue;
          compared++;
          expect(now).toBeLessThanOrEqual(one.millimetres + 1e-9);
        }
      }),
      { numRuns: 120 },
    );
    expect(compared).toBeGreaterThan(50);
  });

  it('never frees an interference, nor makes the travel to a neighbour longer', () => {
    fc.assert(
      fc.property(someParts, fc.nat(6), fc.integer({ min: 1, max: 25 }), (parts, which, by) => {
        const index = which % parts.length;
        const larger = parts.map((part, place) => (place === index ? grown(part, by) : part));
        const before = solve(sceneOf(parts));
        const after = solve(sceneOf(larger));
        const ids = new Set(after.findings.map((finding) => finding.id));
        for (const finding of before.findings) {
          if (finding.kind === 'interference') expect(ids).toContain(finding.id);
        }
        before.neighbours.forEach((neighbour, place) => {
          if (neighbour.millimetres === undefined) return;
          const now = after.neighbours[place]?.millimetres ?? Number.POSITIVE_INFINITY;
          expect(now).toBeLessThanOrEqual(neighbour.millimetres + 1e-9);
        });
      }),
      { numRuns: 80 },
    );
  });
});

describe('the same scene', () => {
  it('gives the same answer twice, with ids that occur once', () => {
    fc.assert(
      fc.property(someParts, (parts) => {
        const first = solve(sceneOf(parts));
        expect(solve(sceneOf(parts))).toEqual(first);
        for (const list of [first.findings, first.clearances]) {
          const ids = list.map((one) => one.id);
          expect(new Set(ids).size).toBe(ids.length);
        }
        expect(first.neighbours).toHaveLength(6 * parts.length);
      }),
      { numRuns: 60 },
    );
  });
});
