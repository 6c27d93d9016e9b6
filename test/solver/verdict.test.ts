import { describe, expect, it } from 'vitest';
import { solve } from '../../geometry/solver/solve';
import { demoLikeBuild } from './demo-like-build';
import { edited, solvePlan } from './edited-plan';
import { sceneOf } from './scene-of-boxes';

const plan = demoLikeBuild();
const ranks = { fault: 0, caution: 1, note: 2 } as const;

describe('the verdict', () => {
  it('names the tightest clearance when everything fits', () => {
    const { verdict, clearances } = solvePlan(plan);
    const [tightest] = clearances;
    expect(verdict.fits).toBe(true);
    expect(verdict.faults).toBe(0);
    expect(verdict.tightest).toBe(tightest?.id);
    expect(tightest?.millimetres).toBe(Math.min(...clearances.map((clearance) => clearance.millimetres)));
    expect(verdict.headline).toBe(
      `Everything fits. Tightest: ${tightest?.millimetres.toFixed(1)} mm between rear fan and board’s rear connectors.`,
    );
    expect(verdict.detail).toContain('Slot 3 (x1) is covered by the card');
  });

  it('leads with the worst fault and counts the others when it does not fit', () => {
    const { verdict, findings } = solvePlan(
      edited(plan, {
        card: { spec: { length: 400, boardLength: 280 } },
        memory: { spec: { height: 44 } },
      }),
    );
    expect(verdict.fits).toBe(false);
    expect(verdict.faults).toBe(2);
    expect(verdict.headline).toBe(`Does not fit yet. ${findings[0]?.sentence}`);
    expect(findings[0]?.sentence).toMatch(/^The card’s backplate overlaps front fan 1 by \d+\.\d mm\.$/);
    expect(verdict.detail).toMatch(/^There is one more fault\./);
  });

  it('is at ease with nothing at all', () => {
    const { verdict, findings, clearances, neighbours } = solve(sceneOf([]));
    expect(verdict).toEqual({ fits: true, faults: 0, cautions: 0, headline: 'Everything fits.', detail: '' });
    expect([findings, clearances, neighbours]).toEqual([[], [], []]);
  });
});

describe('the order of what is said', () => {
  it('is faults, cautions, notes; and clearances tightest first', () => {
    const { findings, clearances } = solvePlan(edited(plan, { memory: { spec: { height: 44 } } }));
    const weights = findings.map((finding) => ranks[finding.weight]);
    expect(weights).toEqual([...weights].sort());
    const gaps = clearances.map((clearance) => clearance.millimetres);
    expect(gaps).toEqual([...gaps].sort((a, b) => a - b));
  });
});
