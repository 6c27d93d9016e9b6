import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { addPart, type PartSpec, type Plan, placePlan, readPlan, replacePart, solve } from '../../geometry';
import { SeatTrials } from '../../src/workers/seat-in-plan';
import { everyShelfEntry } from '../views/every-shelf-entry';

function example(file: string): Plan {
  const read = readPlan(readFileSync(`public/plans/${file}.json`, 'utf8'));
  if (!read.ok) throw new Error('the example cannot be read');
  return read.plan;
}

function entry(id: string): PartSpec {
  const found = everyShelfEntry.find(([key]) => key === id);
  if (!found) throw new Error(`no entry ${id}`);
  return found[1];
}

const demo = example('demo');

/** The same question asked the long way: place it, solve everything from nothing, look. */
function fromScratch(plan: Plan, id: string) {
  const { clearances, findings } = solve(placePlan(plan));
  return {
    gap: clearances.find(({ parts }) => parts.includes(id))?.millimetres,
    faults: findings.filter(({ weight, parts }) => weight === 'fault' && parts.includes(id)).length,
  };
}

describe('a part in the place of the selected one', () => {
  const coolers = everyShelfEntry.filter(([, spec]) => spec.kind === 'cooler');

  test.each(coolers)('%s has the gap and the faults that it has when it is really there', (_, spec) => {
    const verdict = new SeatTrials(demo).judge(spec, 'cooler');
    const { plan, loosened } = replacePart(demo, 'cooler', spec);
    const { gap, faults } = fromScratch(plan, 'cooler');
    expect(verdict.seat).toBe('replace');
    expect(verdict.tightest?.millimetres).toBe(gap);
    if (loosened.length === 0 && faults === 0) expect(verdict.faults).toEqual([]);
    else expect(verdict.fits).toBe(false);
  });

  test('one that loosens what sits on it does not fit, and says what', () => {
    const verdict = new SeatTrials(example('small')).judge(entry('generic-board-microatx'), 'board');
    expect(verdict.fits).toBe(false);
    expect(verdict.faults.length).toBeGreaterThan(0);
  });
});

describe('a part beside what is there', () => {
  const bare: Plan = { format: 1, name: 'Bare', parts: {} };

  test('takes a free mount, and is judged there', () => {
    const { card: _, ...parts } = demo.parts;
    const plan = { ...demo, parts };
    const verdict = new SeatTrials(plan).judge(entry('generic-single-slot-half'), undefined);
    expect(verdict.seat).toBe('mount');
    expect(verdict.where).toMatch(/ on /);
    const placed = addPart(plan, entry('generic-single-slot-half'), verdict.placement ?? { at: [0, 0, 0] });
    expect(verdict.tightest?.millimetres).toBe(fromScratch(placed.plan, placed.id).gap);
  });

  test('has no seat in an empty plan, unless it is an enclosure', () => {
    const trials = new SeatTrials(bare);
    expect(trials.judge(entry('generic-fan-120x25'), undefined)).toEqual({
      seat: 'none',
      where: '',
      fits: false,
      faults: [],
      covers: [],
    });
    expect(trials.judge(entry('tidewrack-saltpan-26'), undefined)).toMatchObject({
      seat: 'free',
      fits: true,
    });
  });

  test('stands in for one of its kind when every mount is taken', () => {
    const verdict = new SeatTrials(demo).judge(entry('dunlinmoor-bittern-155'), undefined);
    expect(verdict).toMatchObject({ seat: 'replace', where: 'Cooler' });
    expect(verdict.placement).toBeUndefined();
  });
});

test('the same answer whatever was tried before', () => {
  const used = new SeatTrials(demo);
  for (const [, spec] of everyShelfEntry) used.judge(spec, undefined);
  for (const [, spec] of everyShelfEntry.filter((_, index) => index % 7 === 0))
    expect(used.judge(spec, undefined)).toEqual(new SeatTrials(demo).judge(spec, undefined));
});
