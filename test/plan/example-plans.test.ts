import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { placePlan } from '../../geometry/plan/place-plan';
import { readPlan } from '../../geometry/plan/read-plan';
import { insertionPath, poseOnPath } from '../../geometry/solver/assembly/insertion-path';
import { assemblyOrder } from '../../geometry/solver/assembly/order/assembly-order';
import { solve } from '../../geometry/solver/solve';

function example(name: string) {
  const read = readPlan(readFileSync(new URL(`../../public/plans/${name}.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const scene = placePlan(read.plan);
  return { plan: read.plan, scene, solution: solve(scene) };
}

describe('example plans', () => {
  it.each(['demo', 'faults', 'small', 'tilted', 'blocked', 'knot'])(
    '%s has every part on a mount that takes it',
    (name) => {
      const { scene } = example(name);
      expect(scene.problems).toEqual([]);
      for (const part of scene.parts) {
        if (part.kind !== 'enclosure') expect(part.seat, part.id).toBeDefined();
      }
    },
  );

  it('demo fits, with a tight spot under the gap wanted', () => {
    const { solution } = example('demo');
    expect(solution.verdict.fits).toBe(true);
    const [tightest] = solution.clearances;
    // 173 tray to glass - 6.5 standoff - 1.57 board (ATX 2.2 figure 7) - 3.4 seat - 3.6 package - 155.2 cooler.
    expect(tightest?.rule).toBe('cooler to side panel');
    expect(tightest?.millimetres).toBeCloseTo(173 - 6.5 - 1.57 - 3.4 - 3.6 - 155.2, 2);
    expect(tightest?.millimetres).toBeLessThan(tightest?.wanted ?? 0);
  });

  it('faults has its three: an overlap, a covered slot, plugs against the panel', () => {
    const { solution } = example('faults');
    expect(solution.verdict.fits).toBe(false);
    const said = solution.findings.map(
      (finding) => `${finding.kind} ${finding.parts.join('+')} ${finding.feature ?? ''}`,
    );
    expect(said).toContain('interference cooler+memory ');
    expect(said.some((line) => line.startsWith('intrusion') && line.includes('enclosure'))).toBe(true);
    expect(said.some((line) => line.startsWith('covered') && line.endsWith('slot 4'))).toBe(true);
  });

  it('small carries its card on a riser behind the board', () => {
    const { scene, solution } = example('small');
    expect(solution.verdict.fits).toBe(true);
    const card = scene.parts.find((part) => part.kind === 'card');
    expect(card?.seat?.on).toBe('adapter-2');
    expect(card?.pose.translation[2]).toBeLessThan(0);
  });

  it('tilted has a card that goes in with its far end first, and no other way', () => {
    const { scene, solution } = example('tilted');
    expect(solution.verdict.fits).toBe(true);
    const path = insertionPath(scene, 'card');
    expect(path.proof).toBe('certified free');
    expect(path.words).toContain('far end first, tilted');
    // A turn cannot be a way of the slot, whose latch and contacts ask for a straight push: it was searched for.
    expect(path.method).toBe('search in the plane of the tilt');
    expect(path.meets.map(({ name }) => name)).toContain('the block crossbar');
    // On its way the bracket end stands higher than the far end, out of the slot's plane.
    const tilts = Array.from({ length: 101 }, (_, k) => Math.abs(poseOnPath(path, k / 100).rotation[6]));
    expect(Math.max(...tilts)).toBeGreaterThan(Math.sin((30 * Math.PI) / 180) * 0.9);
    const order = assemblyOrder(scene);
    expect(order.buildable).toBe(true);
    expect(order.steps.find((step) => step.unit === 'card')?.wayWords).toContain('far end first');
  });

  it('the same card without the crossbar goes straight in', () => {
    const { plan } = example('tilted');
    const enclosure = plan.parts.enclosure;
    if (enclosure?.spec.kind !== 'enclosure') throw new Error('no enclosure');
    const { blocks: _, ...spec } = enclosure.spec;
    const open = { ...plan, parts: { ...plan.parts, enclosure: { ...enclosure, spec } } };
    expect(insertionPath(placePlan(open), 'card').method).toBe('way of its mount');
  });

  it('blocked fits in place, and its card has no way in within the bounds, which are said', () => {
    const { scene, solution } = example('blocked');
    expect(solution.verdict.fits).toBe(true);
    const path = insertionPath(scene, 'card');
    expect(path.proof).toBe('no way in found within these bounds');
    expect(path.sentence).toContain('within these bounds');
    expect(path.furthest?.name).toBe('the block crossbar');
    expect(path.furthest?.t).toBeLessThan(1);
    const order = assemblyOrder(scene);
    expect(order.buildable).toBe(false);
    expect(order.stuck?.knots.map(({ units }) => units)).toEqual([['board', 'card']]);
    expect(order.stuck?.freeing[0]).toEqual(['card']);
  });

  it('knot fits in place, and its board and cooler keep each other out', () => {
    const { plan, scene, solution } = example('knot');
    expect(solution.verdict.fits).toBe(true);
    const order = assemblyOrder(scene);
    expect(order.buildable).toBe(false);
    expect(order.stuck?.knots.map(({ units }) => [...units].sort())).toEqual([['board', 'cooler']]);
    expect(order.stuck?.freeing).toContainEqual(['cooler']);
    expect(order.stuck?.openings[0]).toContain('opening in the tray');
    // What it says would free it does: the same plan with an opening behind the socket is built.
    const enclosure = plan.parts.enclosure;
    if (enclosure?.spec.kind !== 'enclosure') throw new Error('no enclosure');
    const tray = { ...enclosure.spec.tray, cutout: { from: [10, 190], to: [150, 330] } as const };
    const spec = {
      ...enclosure.spec,
      tray: { ...tray, cutout: { from: [...tray.cutout.from], to: [...tray.cutout.to] } },
    };
    const read = readPlan(
      JSON.stringify({ ...plan, parts: { ...plan.parts, enclosure: { ...enclosure, spec } } }),
    );
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(assemblyOrder(placePlan(read.plan)).buildable).toBe(true);
    const { cooler: _, ...parts } = plan.parts;
    expect(assemblyOrder(placePlan({ ...plan, parts })).buildable).toBe(true);
  });
});
