import { describe, expect, it } from 'vitest';
import { withStatement } from '../../../geometry/parts/stated-dimensions/change-dimension';
import type { Plan } from '../../../geometry/plan/plan-schema';
import { stackUpOf } from '../../../geometry/solver/stack-up/stack-ups';
import {
  allWorthMeasuring,
  type WorthMeasuring,
  worthMeasuring,
} from '../../../geometry/solver/stack-up/worth-measuring';
import { examplePlan } from './example-plans';
import { normals, seeded } from './sampling';

const PLUG = 'card plug to side panel/card/enclosure';

/** The plan with the readings written into its sheets, off by given shares of the bands as they were. */
function withReadings(plan: Plan, { measurements }: WorthMeasuring, off: (index: number) => number): Plan {
  const parts = { ...plan.parts };
  measurements.forEach(({ part, path, nominal, plusMinus, measuredPlusMinus }, index) => {
    const entry = parts[part];
    if (!entry) throw new RangeError(part);
    const reading = {
      value: nominal + off(index) * plusMinus,
      plusMinus: measuredPlusMinus,
      source: 'measured',
    } as const;
    parts[part] = { ...entry, spec: withStatement(entry.spec, path, reading) };
  });
  return { ...plan, parts };
}

describe('worth measuring', () => {
  const plan = examplePlan('faults');

  it('names the dimensions whose reading settles the question, if the sheets are right', () => {
    const worth = worthMeasuring(plan, PLUG);
    if (!worth) throw new RangeError(PLUG);
    expect(worth.question).toBe('contact');
    expect(worth.settled).toBe(true);
    const read = stackUpOf(
      withReadings(plan, worth, () => 0),
      PLUG,
    );
    expect(stackUpOf(plan, PLUG)?.fit).toBe('transition fit');
    expect(read?.fit).toBe('interference fit');
    const [least = 0, most = 0] = read?.worstCase ?? [];
    expect((most - least) / 2).toBeCloseTo(worth.measurements.at(-1)?.leaves ?? Number.NaN, 9);
  });

  it('gives the chance that readings decide, as readings drawn from the bands do', () => {
    const worth = worthMeasuring(plan, PLUG);
    if (!worth) throw new RangeError(PLUG);
    const normal = normals(seeded(5));
    const drawn = 400;
    let decided = 0;
    for (let k = 0; k < drawn; k++) {
      const off = worth.measurements.map(() => normal() / 3);
      const fit = stackUpOf(
        withReadings(plan, worth, (index) => off[index] ?? 0),
        PLUG,
      )?.fit;
      if (fit !== 'transition fit') decided++;
    }
    // Two standard errors of 400 draws are 0.04.
    expect(decided / drawn).toBeCloseTo(worth.measurements.at(-1)?.chanceDecided ?? Number.NaN, 1);
  });

  it('lists only what is undecided, and only readings that narrow', () => {
    for (const worth of allWorthMeasuring(plan)) {
      const stack = stackUpOf(plan, worth.clearance);
      expect(stack?.fit === 'transition fit' || stack?.wantedKept === 'depending on the pieces').toBe(true);
      for (const { plusMinus, measuredPlusMinus } of worth.measurements)
        expect(measuredPlusMinus).toBeLessThan(plusMinus);
    }
    expect(worthMeasuring(plan, 'card tip/card/fan-2')).toBeUndefined();
    expect(worthMeasuring(plan, 'nothing')).toBeUndefined();
  });

  it('narrows the band at once when a value is measured', () => {
    const cooler = plan.parts.cooler;
    if (!cooler) throw new RangeError('no cooler');
    const id = 'cooler to side panel/cooler/enclosure';
    const reading = { value: 156.4, plusMinus: 0.1, source: 'measured' } as const;
    const measured = {
      ...plan,
      parts: { ...plan.parts, cooler: { ...cooler, spec: withStatement(cooler.spec, 'height', reading) } },
    };
    const [before, after] = [stackUpOf(plan, id), stackUpOf(measured, id)];
    const width = (band: readonly [number, number] | undefined) => (band ? band[1] - band[0] : Number.NaN);
    expect(width(before?.worstCase) - width(after?.worstCase)).toBeCloseTo(2 * (0.5 - 0.1), 9);
    expect((after?.nominal ?? 0) - (before?.nominal ?? 0)).toBeCloseTo(0.6, 9);
  });
});
