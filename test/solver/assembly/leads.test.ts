import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { placePlan } from '../../../geometry/plan/place-plan';
import { readPlan } from '../../../geometry/plan/read-plan';
import { leadGrid } from '../../../geometry/solver/assembly/leads/lead-grid';
import { leadScratch, octile, searchLead } from '../../../geometry/solver/assembly/leads/lead-search';
import { routeLeads } from '../../../geometry/solver/assembly/leads/route-leads';
import { assemblySheet } from '../../../geometry/solver/assembly/sheet/assembly-sheet';
import { PackedBoxes } from '../../../geometry/space/packed-boxes';
import { distance } from '../../../geometry/space/vector';
import { boxesOf } from './oracle-scenes';

function example(name: string) {
  const read = readPlan(readFileSync(new URL(`../../../public/plans/${name}.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return placePlan(read.plan);
}

describe('grid ways', () => {
  it('octile distance in three dimensions, and its worst ratio to the straight line', () => {
    expect(octile(10, 4, 2)).toBeCloseTo(12.292529, 6);
    expect(octile(7, 5, 3)).toBeCloseTo(10.024579, 5);
    const [x, y, z] = [1, Math.SQRT2 - 1, Math.sqrt(3) - Math.SQRT2];
    expect(octile(x, y, z) / Math.hypot(x, y, z)).toBeCloseTo(1.128093, 6);
  });

  it('goes round a wall, keeps off it, and turns by no more than 45 degrees at a time', () => {
    const wall = PackedBoxes.from(boxesOf([[95, 0, 0, 105, 150, 100]]));
    const grid = leadGrid({ min: [0, 0, 0], max: [200, 200, 100] }, wall);
    const points = searchLead(
      grid,
      { from: [20, 50, 50], leaves: [1, 0, 0], to: [180, 50, 50], clearance: 6, nearEnds: 0 },
      leadScratch(grid),
    );
    expect(points).toBeDefined();
    let before: readonly [number, number, number] | undefined;
    for (let k = 1; k < (points?.length ?? 0); k++) {
      const [a, b] = [points?.[k - 1] ?? [0, 0, 0], points?.[k] ?? [0, 0, 0]];
      const step = [b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const;
      if (before) {
        const cosine =
          (before[0] * step[0] + before[1] * step[1] + before[2] * step[2]) /
          (Math.hypot(...before) * Math.hypot(...step));
        expect(cosine).toBeGreaterThan(Math.SQRT1_2 - 1e-6);
      }
      before = step;
      if (b[0] > 89 && b[0] < 111) expect(b[1]).toBeGreaterThan(155);
    }
  });

  it('finds none through a closed wall', () => {
    const wall = PackedBoxes.from(boxesOf([[95, 0, 0, 105, 200, 100]]));
    const grid = leadGrid({ min: [0, 0, 0], max: [200, 200, 100] }, wall);
    const goal = { from: [20, 50, 50], to: [180, 50, 50], clearance: 6, nearEnds: 0 } as const;
    expect(searchLead(grid, goal, leadScratch(grid))).toBeUndefined();
  });
});

describe('leads of the demo machine', () => {
  const scene = example('demo');
  const plan = routeLeads(scene);
  const byId = new Map(plan.leads.map((lead) => [lead.id, lead]));

  it('only leads this build needs, each from socket to socket', () => {
    expect(plan.leads.map((lead) => lead.id)).toContain('main 24-pin');
    expect(plan.leads.some((lead) => lead.kind === 'peripheral 4-pin')).toBe(false);
    for (const lead of plan.leads) expect(lead.points.length, lead.sentence).toBeGreaterThan(1);
  });

  it('none is shorter than the straight line between its ends', () => {
    for (const lead of plan.leads) {
      const [first, last] = [lead.points[0], lead.points.at(-1)];
      if (first && last) expect(lead.routed).toBeGreaterThanOrEqual(distance(first, last) - 1e-6);
    }
  });

  it('a short set of leads is found too short, a measured longer one is not', () => {
    expect(byId.get('main 24-pin')?.spare).toBeLessThan(0);
    const longer = routeLeads(scene, { lengths: { 'main 24-pin': 600 } });
    expect(longer.leads.find((lead) => lead.id === 'main 24-pin')?.spare).toBeGreaterThan(0);
  });

  it('a pinned point is gone through and lengthens the lead', () => {
    const pin = [330, 180, 60] as const;
    const pinned = routeLeads(scene, { pins: { 'main 24-pin': [pin] } }).leads.find(
      (lead) => lead.id === 'main 24-pin',
    );
    expect(pinned?.points.some((point) => distance(point, pin) < 1e-9)).toBe(true);
    expect(pinned?.routed).toBeGreaterThan(byId.get('main 24-pin')?.routed ?? 0);
  });
});

describe('the assembly sheet of the demo machine', () => {
  it('has numbered steps with screws, threads, tools, checks and cautions', () => {
    const sheet = assemblySheet(example('demo'), 'Chart room workstation');
    expect(sheet.buildable).toBe(true);
    expect(sheet.steps.map((step) => step.number)).toEqual(sheet.steps.map((_, k) => k + 1));
    const cooler = sheet.steps.find((step) => step.units[0] === 'cooler');
    expect(cooler?.cautions.join()).toContain('alternately');
    expect(cooler?.tools).toContain('long screwdriver, 250 mm shaft');
    const glass = sheet.steps.filter((step) => step.cautions.some((caution) => caution.startsWith('Glass')));
    expect(glass.map((step) => step.units[0])).toEqual(['enclosure/side panel', 'enclosure/side panel']);
    // microATX with its nine standoffs, one M.2 screw, four on the supply plate.
    const count = (use: string) => sheet.screwList.find((row) => row.use === use)?.count;
    expect(count('board')).toBe(9);
    expect(count('M.2 drive')).toBe(1);
    expect(count('supply plate')).toBe(4);
    expect(sheet.general.join()).toContain('never opened');
    expect(sheet.steps.at(-1)?.title).toBe('Put the side panel back on');
  });
});
