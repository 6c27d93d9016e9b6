/** What is said about money: what was typed, added up. No shop is asked, nothing is guessed. */
import { outerSizeOf } from '../../parts/enclosure/outer-size';
import type { Plan, Quote } from '../../plan/plan-schema';
import type { Scene } from '../../plan/scene';
import type { EstimateInput, Figure, Limit } from '../estimate';
import { amountOf, wishFigures } from './wish-figures';

export interface MoneySum {
  /** Parts as typed. */
  readonly parts: number;
  /** Labour, carriage and the like. */
  readonly lines: number;
  readonly tax: number;
  /** What the client pays. */
  readonly total: number;
  /** Parts of the plan without a price. */
  readonly unpriced: readonly string[];
  /** Of the brief, else the one that the prices name first. */
  readonly currency: string | undefined;
  /** Currencies among the prices that are not that one. */
  readonly foreign: readonly string[];
}

export function moneySum(plan: Plan): MoneySum {
  const prices = plan.prices ?? {};
  const ids = Object.keys(plan.parts);
  const parts = ids.reduce((sum, id) => sum + (prices[id] === undefined ? 0 : amountOf(prices[id])), 0);
  const lines = (plan.quote?.lines ?? []).reduce((sum, { amount }) => sum + amount, 0);
  const { tax, total } = taxed(parts + lines, plan.quote);
  const named = ids.flatMap((id) => {
    const price = prices[id];
    return typeof price === 'object' && price.currency !== undefined ? [price.currency] : [];
  });
  const currency = plan.brief?.currency ?? named[0];
  return {
    parts,
    lines,
    tax,
    total,
    unpriced: ids.filter((id) => prices[id] === undefined),
    currency,
    foreign: [...new Set(named.filter((one) => one !== currency))],
  };
}

function taxed(sum: number, quote: Quote | undefined): { tax: number; total: number } {
  const share = quote?.tax ?? 0;
  return quote?.pricesIncludeTax
    ? { tax: sum - sum / (1 + share), total: sum }
    : { tax: sum * share, total: sum * (1 + share) };
}

/** Last day of a quote, ISO; undefined when it states no date or no length. */
export function validUntil(quote: Quote | undefined): string | undefined {
  if (quote?.date === undefined || quote.validDays === undefined) return undefined;
  const end = new Date(`${quote.date}T00:00:00Z`);
  end.setUTCDate(end.getUTCDate() + quote.validDays);
  return end.toISOString().slice(0, 10);
}

const DAY_MS = 86_400_000;

/** `today` in ISO form lets a quote run out; without it the remaining days are left out. */
export function moneyFigures(plan: Plan, scene: Scene, today?: string): readonly Figure[] {
  const sum = moneySum(plan);
  const { currency } = sum;
  const shared = {
    topic: 'money',
    unit: 'money',
    inputs: inputsOf(plan, scene),
    exact: true,
    ...(currency === undefined ? {} : { currency }),
  } as const;
  const because = unknownBecause(scene, sum);
  const known = (value: number) => (because === undefined ? { value } : { because });
  const budget = plan.brief?.budget;
  const limit: { limit?: Limit } =
    budget === undefined ? {} : { limit: { kind: 'at most', value: budget, from: 'brief' } };
  const spec = scene.parts.find((part) => part.kind === 'enclosure')?.spec;
  const litres = spec?.kind === 'enclosure' ? outerSizeOf(spec).litres : undefined;
  const last = validUntil(plan.quote);
  return [
    {
      ...shared,
      id: 'money typed',
      title: 'Prices typed so far',
      value: sum.parts,
      formula: 'Every price typed for a part of this plan, added up.',
    },
    {
      ...shared,
      id: 'money total',
      title: 'Total',
      ...known(sum.total),
      formula: 'Parts, lines of the quote and tax, added up.',
      ...limit,
    },
    ...(budget === undefined
      ? []
      : [
          {
            ...shared,
            id: 'money spare',
            title: 'Left of the budget',
            ...known(budget - sum.total),
            formula: 'Budget less total.',
          } satisfies Figure,
        ]),
    ...(sum.tax === 0
      ? []
      : [
          {
            ...shared,
            id: 'money tax',
            title: 'Tax in the total',
            ...known(Math.round(sum.tax * 100) / 100),
            formula: 'Its share of the net sum.',
          } satisfies Figure,
        ]),
    ...(litres === undefined
      ? []
      : [
          {
            ...shared,
            id: 'money per litre',
            title: 'Cost of a litre, walls round',
            unit: 'money/l',
            ...known(sum.total / litres),
            formula: 'Total over the volume round the walls.',
          } satisfies Figure,
        ]),
    ...(plan.quote?.wishes ?? []).flatMap((wish, i) => wishFigures(plan, scene, wish, i + 1, shared)),
    ...(last === undefined || today === undefined
      ? []
      : [
          {
            ...shared,
            id: 'money quote days',
            title: `Days left of the quote, good until ${last}`,
            unit: 'days',
            value: daysLeft(last, today),
            formula: 'Last day less today.',
            limit: { kind: 'at least', value: 0, from: 'quote' },
          } satisfies Figure,
        ]),
  ];
}

function daysLeft(last: string, today: string): number {
  return Math.round((Date.parse(last) - Date.parse(today)) / DAY_MS);
}

function unknownBecause(scene: Scene, { unpriced, foreign, currency }: MoneySum): string | undefined {
  if (foreign.length > 0) return `prices are in ${foreign.join(' and ')} as well as ${currency}`;
  if (unpriced.length === 0) return undefined;
  const names = unpriced.map((id) => scene.parts.find((part) => part.id === id)?.label ?? id);
  const few = names.slice(0, 3).join(', ');
  return names.length > 3
    ? `${few} and ${names.length - 3} more have no price`
    : `${few} ${names.length > 1 ? 'have' : 'has'} no price`;
}

function inputsOf(plan: Plan, scene: Scene): readonly EstimateInput[] {
  const parts = scene.parts.flatMap((part): EstimateInput[] => {
    const price = plan.prices?.[part.id];
    if (price === undefined) return [];
    const note = typeof price === 'object' ? [price.shop, price.date].filter(Boolean).join(', ') : '';
    return [
      { name: part.label, value: amountOf(price), unit: 'money', source: 'plan', ...(note ? { note } : {}) },
    ];
  });
  const { lines = [], tax, pricesIncludeTax } = plan.quote ?? {};
  return [
    ...parts,
    ...lines.map(
      ({ label, amount }): EstimateInput => ({
        name: label,
        value: amount,
        unit: 'money',
        source: 'plan',
      }),
    ),
    ...(tax === undefined
      ? []
      : [
          {
            name: pricesIncludeTax ? 'tax, inside the prices' : 'tax, on top of the prices',
            value: Number((100 * tax).toFixed(2)),
            unit: '%',
            source: 'plan',
          } satisfies EstimateInput,
        ]),
  ];
}
