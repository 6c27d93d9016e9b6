/** From figures to estimates: varies every assumption of a topic and gathers what that does to each figure. */
import { type AssumptionId, type AssumptionValues, assumptions, middleValues } from './assumptions';
import type { AssumptionEffect, Estimate, EstimateUnit, Figure, Limit, Standing } from './estimate';

/** Effects smaller than this share of the figure are not worth a line. */
const WORTH_NAMING = 1e-3;

/**
 * Computes the figures at the middle of all assumptions, then with each of `varied` at its lowest and highest value in
 * turn. The band is the root of the sum of the squares of the effects on each side: the assumptions are taken to be
 * independent, as JCGM 100:2008 section 5.1 does for uncertainties.
 */
export function estimatesOf(
  figuresAt: (values: AssumptionValues) => readonly Figure[],
  varied: readonly AssumptionId[],
  values: AssumptionValues = middleValues,
): readonly Estimate[] {
  const middle = figuresAt(values);
  const effects = new Map<string, AssumptionEffect[]>(middle.map((figure) => [figure.id, []]));
  for (const id of varied) {
    const atLow = valuesById(figuresAt({ ...values, [id]: assumptions[id].low }));
    const atHigh = valuesById(figuresAt({ ...values, [id]: assumptions[id].high }));
    for (const figure of middle) {
      if (figure.value === undefined || figure.exact) continue;
      const effect = {
        id,
        words: wordsOf(id),
        source: assumptions[id].source,
        atLow: (atLow.get(figure.id) ?? figure.value) - figure.value,
        atHigh: (atHigh.get(figure.id) ?? figure.value) - figure.value,
      };
      if (effect.atLow !== 0 || effect.atHigh !== 0) effects.get(figure.id)?.push(effect);
    }
  }
  return middle.map((figure) => estimateOf(figure, effects.get(figure.id) ?? []));
}

function valuesById(figures: readonly Figure[]): Map<string, number> {
  return new Map(figures.flatMap(({ id, value }) => (value === undefined ? [] : [[id, value] as const])));
}

/** The assumption in words, with its numbers. */
export function wordsOf(id: AssumptionId): string {
  const { says, value, low, high, unit } = assumptions[id];
  return `${says} ${value} ${unit} (${low} to ${high})`.replace('  ', ' ');
}

function estimateOf(figure: Figure, effects: readonly AssumptionEffect[]): Estimate {
  const { id, topic, title, part, unit, currency, value, because, missing, formula, inputs, limit } = figure;
  const shared = {
    id,
    topic,
    title,
    unit,
    missing: missing ?? [],
    formula,
    inputs,
    ...(part === undefined ? {} : { part }),
    ...(currency === undefined ? {} : { currency }),
    ...(limit === undefined ? {} : { limit }),
  };
  if (value === undefined || !Number.isFinite(value)) {
    const unknown = `unknown, because ${because ?? 'the model gives no number'}`;
    return {
      ...shared,
      unknown,
      assumptions: [],
      standing: limit ? 'unknown' : 'no limit',
      sentence: `${title}: ${unknown}.`,
    };
  }
  const band = bandOf(value, effects);
  const least = WORTH_NAMING * Math.max(Math.abs(value), band.high - band.low);
  return {
    ...shared,
    value,
    ...band,
    assumptions: effects.filter((effect) => reachOf(effect) > least).sort((a, b) => reachOf(b) - reachOf(a)),
    standing: limit ? standingOf(value, band, limit) : 'no limit',
    sentence: sentenceOf(figure, value, band),
  };
}

/** How far apart an assumption can put the figure. */
export function reachOf({ atLow, atHigh }: AssumptionEffect): number {
  return Math.max(atLow, atHigh, 0) - Math.min(atLow, atHigh, 0);
}

function bandOf(value: number, effects: readonly AssumptionEffect[]): { low: number; high: number } {
  let below = 0;
  let above = 0;
  for (const { atLow, atHigh } of effects) {
    below += Math.min(atLow, atHigh, 0) ** 2;
    above += Math.max(atLow, atHigh, 0) ** 2;
  }
  return { low: value - Math.sqrt(below), high: value + Math.sqrt(above) };
}

function standingOf(value: number, band: { low: number; high: number }, limit: Limit): Standing {
  const inside = (one: number) => (limit.kind === 'at most' ? one <= limit.value : one >= limit.value);
  if (!inside(value)) return 'not met';
  return inside(limit.kind === 'at most' ? band.high : band.low) ? 'met' : 'perhaps';
}

const decimals: Partial<Record<EstimateUnit, number>> = {
  V: 3,
  A: 1,
  K: 1,
  kg: 1,
  Pa: 2,
  times: 2,
  mm: 1,
  l: 1,
  deg: 1,
  money: 2,
  'money/l': 2,
  'money/dB': 2,
};

/** A value with the digits its unit deserves and a true minus. */
export function writeValue(value: number, unit: EstimateUnit): string {
  const text =
    unit === 'money' && Number.isInteger(value) ? String(value) : value.toFixed(decimals[unit] ?? 0);
  return text.replace('-', Number(text) === 0 ? '' : '\u2212');
}

function sentenceOf(
  { title, unit, exact, currency }: Figure,
  value: number,
  band: { low: number; high: number },
): string {
  const name = unitName(unit, currency);
  const middle = `${title}: ${writeValue(value, unit)}${name}`;
  if (exact) return `${middle}.`;
  return `${middle} (${writeValue(band.low, unit)} to ${writeValue(band.high, unit)}${name}), an estimate.`;
}

/** After a number, with the space before it; money in its currency, and without one where nobody has said which. */
export function unitName(unit: EstimateUnit, currency?: string): string {
  const money = currency === undefined || currency === '' ? '' : ` ${currency}`;
  switch (unit) {
    case 'times':
    case 'count':
      return '';
    case 'deg':
      return '°';
    case 'money':
      return money;
    case 'money/l':
      return `${money} a litre`;
    case 'money/dB':
      return `${money} a dB`;
    default:
      return ` ${unit}`;
  }
}
