import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { placePlan } from '../../geometry/plan/place-plan';
import { readPlan } from '../../geometry/plan/read-plan';
import { solve } from '../../geometry/solver/solve';

function example(name: string) {
  const read = readPlan(readFileSync(new URL(`../../public/plans/${name}.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const scene = placePlan(read.plan);
  return { plan: read.plan, scene, solution: solve(scene) };
}

describe('example plans', () => {
  it.each(['demo', 'faults', 'small'])('%s has every part on a mount that takes it', (name) => {
    const { scene } = example(name);
    expect(scene.problems).toEqual([]);
    for (const part of scene.parts) {
      if (part.kind !== 'enclosure') expect(part.seat, part.id).toBeDefined();
    }
  });

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
});
