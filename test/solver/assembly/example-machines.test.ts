import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { placePlan } from '../../../geometry/plan/place-plan';
import { readPlan } from '../../../geometry/plan/read-plan';
import { type AssemblyOrder, assemblyOrder } from '../../../geometry/solver/assembly/order/assembly-order';
import { serviceOrder } from '../../../geometry/solver/assembly/order/service-order';

function example(name: string) {
  const read = readPlan(readFileSync(new URL(`../../../public/plans/${name}.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const scene = placePlan(read.plan);
  return { scene, order: assemblyOrder(scene) };
}

/** Place of the step that puts a unit in; panels come off first and are closed last, the last one counts. */
function stepOf(order: AssemblyOrder, unit: string): number {
  const at = order.steps.findLastIndex((step) => step.unit === unit);
  expect(at, unit).toBeGreaterThanOrEqual(0);
  return at;
}

describe('orders of the example plans, common practice, no source: none of it is written down as a rule', () => {
  const demo = example('demo');
  const small = example('small');

  it('demo: the M.2 drive and its sink go in before the tower cooler, which covers their screws', () => {
    const { order } = demo;
    expect(stepOf(order, 'drive')).toBeLessThan(stepOf(order, 'board/sink of m2 upper'));
    expect(stepOf(order, 'board/sink of m2 upper')).toBeLessThan(stepOf(order, 'cooler'));
    const reasons = order.steps.flatMap((step) => step.reasons);
    const why = reasons.find((reason) => reason.first === 'drive' && reason.second === 'cooler');
    expect(why?.force).toBe('must');
    expect(why?.sentence).toContain('Drive 1 goes in before the cooler');
  });

  it('demo and small: the 24-pin and processor leads are plugged before the supply slides home', () => {
    for (const { order } of [demo, small]) {
      // In demo the plate carries the supply home.
      const home = order.steps.some((step) => step.unit === 'adapter' && step.with.includes('supply'))
        ? 'adapter'
        : 'supply';
      expect(stepOf(order, 'board/plug main 24-pin')).toBeLessThan(stepOf(order, home));
      expect(stepOf(order, 'board/plug processor 8-pin')).toBeLessThan(stepOf(order, home));
    }
  });

  it('demo: the adapter plate is on the supply before both go in', () => {
    const { order } = demo;
    const supply = order.steps[stepOf(order, 'supply')];
    expect(supply?.bench).toBe('adapter');
    expect(order.steps[stepOf(order, 'adapter')]?.with).toContain('supply');
  });

  it('the card goes in last but for its own lead and the panels', () => {
    for (const { order } of [demo, small]) {
      const after = order.steps.slice(stepOf(order, 'card') + 1);
      expect(after.every((step) => step.action === 'close' || step.unit.startsWith('card/plug'))).toBe(true);
    }
  });

  it('the tower’s screws want the long driver; only leads that this build needs appear', () => {
    const { order } = demo;
    const cooler = order.steps[stepOf(order, 'cooler')];
    expect(cooler?.needs.map((need) => need.tool)).toEqual([
      'long screwdriver, 250 mm shaft',
      'long screwdriver, 250 mm shaft',
    ]);
    const plugs = order.steps.filter((step) => step.action === 'plug in').map((step) => step.unit);
    expect(plugs.some((unit) => unit.includes('peripheral'))).toBe(false);
    expect(plugs.filter((unit) => unit.startsWith('card/'))).toHaveLength(1);
  });

  it('small: the low cooler is screwed from behind the board, so it goes on before the board goes in', () => {
    const { order } = small;
    const cooler = order.steps[stepOf(order, 'cooler')];
    expect(cooler?.bench).toBe('board');
    expect(stepOf(order, 'cooler')).toBeLessThan(stepOf(order, 'board'));
  });

  it('faults cannot be built: the knot is named with its overlap, and what would free it', () => {
    const { order } = example('faults');
    expect(order.buildable).toBe(false);
    expect(order.stuck?.knots).toHaveLength(1);
    expect(order.stuck?.knots[0]?.units).toEqual(['cooler/front fan', 'memory']);
    expect(order.stuck?.knots[0]?.pairs[0]).toContain('overlap by');
    expect(order.stuck?.freeing).toContainEqual(['memory']);
    expect(order.stuck?.waiting).toContain('board');
  });

  it('is the same every time', () => {
    expect(assemblyOrder(demo.scene)).toEqual(demo.order);
  });

  it('counts what comes out to change each part', () => {
    const service = new Map(serviceOrder(demo.scene).map((entry) => [entry.unit, entry]));
    expect(service.get('memory')).toMatchObject({ count: 0, covers: ['enclosure/side panel'] });
    // Sink, cooler and its fan stand over the drive on the board.
    expect([...(service.get('drive')?.parts ?? [])].sort()).toEqual([
      'board/sink of m2 upper',
      'cooler',
      'cooler/front fan',
    ]);
    expect(service.get('card')?.plugs).toEqual(['card/plug power 1']);
    for (const entry of service.values()) expect(entry.possible, entry.unit).toBe(true);
  });
});
