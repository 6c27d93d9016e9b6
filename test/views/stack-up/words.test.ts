import { describe, expect, test } from 'vitest';
import type { StackUp, StackUpTerm } from '../../../geometry';
import { curveScale } from '../../../src/views/stack-up/curve-scale';
import { promiseWords } from '../../../src/views/stack-up/measuring-words';
import { fallingShort, touching } from '../../../src/views/stack-up/odds-words';
import { restOf, sourceWords, summand } from '../../../src/views/stack-up/sum-rows';
import { verdictWords } from '../../../src/views/stack-up/verdict-words';

const term = (more: Partial<StackUpTerm>): StackUpTerm => ({
  part: 'cooler',
  partLabel: 'Cooler',
  path: 'height',
  title: 'Height',
  datum: undefined,
  nominal: 155.2,
  plusMinus: 0.5,
  sigmas: 3,
  source: 'sheet',
  isDefault: true,
  isStated: true,
  sensitivity: -1,
  contribution: 0.5,
  share: 0.5,
  boxes: [],
  ...more,
});

const panel = term({
  part: 'enclosure',
  partLabel: 'Enclosure',
  nominal: 160,
  sensitivity: 1,
  isDefault: false,
});

const stackUp = (more: Partial<StackUp> = {}): StackUp => ({
  clearance: 'cooler to side panel',
  faces: [
    { part: 'cooler', box: 'fins' },
    { part: 'enclosure', box: 'side panel' },
  ],
  nominal: 4.8,
  wanted: 3,
  terms: [term({}), panel],
  worstCase: [3.8, 5.8],
  rss: 0.71,
  sigma: 0.24,
  probabilityOfContact: 0,
  probabilityBelowWanted: 0,
  kinked: false,
  kinks: [],
  fit: 'clearance fit',
  wantedKept: 'always',
  ...more,
});

describe('odds', () => {
  test.each([
    [0, 'fewer than 1 build in a million touches'],
    [0.0769, 'about 1 build in 13 touches'],
    [1 / 4321, 'about 1 build in 4,300 touches'],
    [0.34, 'about 3 builds in 10 touch'],
    [0.79, 'about 8 builds in 10 touch'],
    [0.975, 'all but about 1 build in 40 touch'],
    [1, 'practically every build touches'],
  ])('%f is said as builds: %s', (probability, words) => {
    expect(touching(probability)).toBe(words);
  });

  test('of the wanted gap name it', () => {
    expect(fallingShort(0.5, '3.0')).toBe('about 5 builds in 10 fall short of the 3.0 mm wanted');
  });
});

describe('the sum', () => {
  test('adds what widens the gap and takes off what narrows it, halves and slanted ones by their part', () => {
    expect(summand(term({}))).toBe('− 155.2');
    expect(summand(panel)).toBe('+ 160.0');
    expect(summand(term({ nominal: 128, sensitivity: -0.5 }))).toBe('− ½ × 128.0');
    expect(summand(term({ nominal: 40, sensitivity: Math.SQRT1_2 }))).toBe('+ 0.71 × 40.0');
    expect(summand(term({ nominal: -9.5, sensitivity: -1 })), 'less of a negative').toBe('+ 9.5');
  });

  test('comes to the gap, with a rest where dimensions without a band stand in between', () => {
    expect(restOf(stackUp())).toBeUndefined();
    expect(restOf(stackUp({ nominal: 20.95 }))).toBeCloseTo(16.15, 9);
  });

  test('says where a band was assumed and where the sheet is silent', () => {
    expect(sourceWords(term({}))).toBe('sheet, ± by default');
    expect(sourceWords(term({ source: 'measured', isDefault: false }))).toBe('measured');
    expect(sourceWords(term({ source: 'standard', isStated: false, isDefault: false }))).toBe(
      'published, sheet is silent',
    );
  });
});

describe('the verdict', () => {
  test('a transition fit gives the odds of contact and of the wanted gap', () => {
    const words = verdictWords(
      stackUp({
        fit: 'transition fit',
        wantedKept: 'depending on the pieces',
        worstCase: [-0.4, 2],
        probabilityOfContact: 1 / 13,
        probabilityBelowWanted: 0.96,
      }),
    );
    expect(words).toBe(
      'With ordinary tolerances about 1 build in 13 touches; all but about 1 build in 25 fall short of the 3.0 mm wanted.',
    );
  });

  test('odds that hold for the likelier of two faces are said to be the least', () => {
    const words = verdictWords(
      stackUp({ fit: 'transition fit', kinked: true, wanted: 0, probabilityOfContact: 0.1 }),
    );
    expect(words).toBe('With ordinary tolerances, at the least, about 1 build in 10 touches.');
  });

  test('what is certain is said without odds', () => {
    expect(verdictWords(stackUp())).toBe('Whatever pieces you get, the 3.0 mm wanted are kept.');
    expect(verdictWords(stackUp({ wantedKept: 'never' }))).toMatch(/^No build touches, but none keeps/);
    expect(verdictWords(stackUp({ fit: 'interference fit' }))).toMatch(/they overlap\.$/);
  });

  test('bands from the sheets are not called ordinary', () => {
    const stated = stackUp({ fit: 'transition fit', wanted: 0, terms: [panel], probabilityOfContact: 0.1 });
    expect(verdictWords(stated)).toMatch(/^With these tolerances /);
  });
});

describe('the curve', () => {
  test('shows zero and the wanted gap in place while they are near, and leaves them out when far', () => {
    const near = curveScale(stackUp({ nominal: 2, sigma: 0.3 }));
    expect(near.isShown(0) && near.isShown(3)).toBe(true);
    expect(near.place(0)).toBeLessThan(near.place(3));
    const far = curveScale(stackUp({ nominal: 181, worstCase: [179.8, 183.2], sigma: 0.26 }));
    expect(far.isShown(0)).toBe(false);
    expect(far.place(181)).toBeGreaterThan(0.3);
    expect(far.place(181)).toBeLessThan(0.7);
  });
});

describe('what measuring would be worth', () => {
  const measurement = {
    part: 'cooler',
    partLabel: 'Cooler',
    path: 'height',
    title: 'Height',
    datum: undefined,
    nominal: 120,
    plusMinus: 0.3,
    measuredPlusMinus: 0.1,
    instrument: 'caliper' as const,
    leaves: 0.4,
    chanceDecided: 0.93,
  };
  const worth = {
    clearance: 'x',
    question: 'wanted gap',
    threshold: 3,
    nominal: 2.5,
    band: [2, 3.1],
    measurements: [measurement, measurement, measurement],
    settled: true,
    leaves: 0.4,
    lead: 0.5,
    beyondCaliper: 0,
  } as const;

  test('is promised only when it settles the question', () => {
    expect(promiseWords(worth)).toBe(
      'Measure these three: as the sheets say, that settles it. Chance that the readings decide: 93 %.',
    );
  });

  test('says in words why it cannot settle the question', () => {
    const open = { ...worth, settled: false, leaves: 1.42, lead: 0.27 };
    const hopeless = { ...open, measurements: [{ ...measurement, chanceDecided: 0 }], beyondCaliper: 2 };
    expect(promiseWords(hopeless)).toBe(
      'Measuring cannot settle this: with this one measured ± 1.4 mm stay, and the sheets put the gap 0.3 mm from what is wanted. Two lengths are beyond a 150 mm caliper, and a steel rule is no better than the sheet; with a longer one type its ±. With the parts in, feeler gauges or modelling clay tell the gap itself.',
    );
    expect(promiseWords({ ...open, measurements: [] })).toMatch(
      /^Measuring cannot settle this: every dimension/,
    );
    expect(promiseWords({ ...open, question: 'contact' })).toMatch(
      /^Measuring settles this only if .* 0\.3 mm from touching\. .* decide: 93 %\.$/,
    );
  });
});
