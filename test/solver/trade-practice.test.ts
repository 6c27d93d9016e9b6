import { describe, expect, it } from 'vitest';
import type { Plan } from '../../geometry/plan/plan-schema';
import { demoLikeBuild } from './demo-like-build';
import { clashes, edited, solvePlan, without } from './edited-plan';

/** Facts every builder knows; common practice, no source. */
const plan = demoLikeBuild();

const covered = (of: Plan): readonly string[] =>
  solvePlan(of)
    .findings.filter((finding) => finding.kind === 'covered' && finding.weight !== 'note')
    .flatMap((finding) => (finding.feature === undefined ? [] : [finding.feature]))
    .filter((feature) => feature.startsWith('slot'));

const thick = (thickness: number): Plan => edited(plan, { card: { spec: { thickness } } });

describe('a graphics card on a microATX board whose x16 slot is the second from the top', () => {
  it('leaves the x1 slot above usable and covers the x1 slot below when it is about three slots thick', () => {
    // Three slots are 61.0 mm; the slots are x1, x16, x1, x4 from the top.
    expect(covered(thick(58))).toEqual(['slot 3', 'slot 4']);
    expect(covered(thick(58))).not.toContain('slot 1');
  });

  it('covers one neighbour with two slots, none with one', () => {
    expect(covered(thick(40))).toEqual(['slot 3']);
    expect(covered(thick(19))).toEqual([]);
  });
});

describe('a tower cooler that clears a microATX enclosure with room to spare', () => {
  it('still has a larger one that fits', () => {
    const gap = solvePlan(plan).clearances.find((clearance) => clearance.rule === 'cooler to side panel');
    const most = Number(/up to ([\d.]+) mm high/.exec(gap?.limit ?? '')?.[1]);
    const { cooler } = plan.parts;
    const now = cooler?.spec.kind === 'cooler' ? Number(cooler.spec.height) : Number.NaN;
    expect(gap?.millimetres).toBeGreaterThan(3);
    expect(most).toBeGreaterThan(now);
    expect(clashes(edited(plan, { cooler: { spec: { height: most } } }))).toEqual([]);
  });
});

describe('an SFX-L supply on its adapter plate in an ATX opening', () => {
  /** The same opening with an ATX supply of ordinary length. */
  const withAtx = edited(without(plan, 'plate'), {
    supply: { spec: { form: 'ATX', depth: 160 }, placement: { on: 'enclosure', mount: 'supply floor' } },
  });
  const inFront = (of: Plan) =>
    solvePlan(of).clearances.find((clearance) => clearance.rule === 'supply plugs to what is in front');

  it('fits there, and leaves more room in front of its plugs', () => {
    expect(solvePlan(plan).findings.filter((finding) => finding.kind === 'seat')).toEqual([]);
    const [small, large] = [inFront(plan), inFront(withAtx)];
    expect(small?.millimetres).toBeGreaterThan((large?.millimetres ?? Number.POSITIVE_INFINITY) + 20);
  });

  it('does not fit there without the plate', () => {
    const bare = edited(without(plan, 'plate'), {
      supply: { placement: { on: 'enclosure', mount: 'supply floor' } },
    });
    expect(solvePlan(bare).findings.filter((finding) => finding.kind === 'seat')).toHaveLength(1);
  });
});

describe('a front fan', () => {
  it('takes its own depth from the length a card may have', () => {
    // "As published" with the front empty, and "as built" with a 25 mm fan: 25 mm less.
    const most = (of: Plan) => {
      const tip = solvePlan(of).clearances.find((clearance) => clearance.rule === 'card tip');
      return tip?.millimetres ?? Number.NaN;
    };
    expect(most(without(plan, 'fan-2')) - most(plan)).toBeCloseTo(25, 6);
  });
});
