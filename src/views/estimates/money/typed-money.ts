/** What a person types about money, and what becomes of it in the plan. Every edit is one step of undo. */
import { amountOf, type Plan } from '../../../../geometry';
import { editPlan } from '../../../store/plan-store';
import { fieldText, readNumber } from '../../../ui/numbers';

export type Price = NonNullable<Plan['prices']>[string];
export type Quote = NonNullable<Plan['quote']>;

const MOST = 1e6;

export function amountFault(
  text: string,
  { empty, negative = false }: { empty: boolean; negative?: boolean },
) {
  if (text === '') return empty ? undefined : 'An amount is wanted.';
  const value = readNumber(text);
  if (value === undefined) return 'Not a number.';
  if (value < (negative ? -MOST : 0)) return negative ? 'Too low.' : 'At least 0.';
  return value > MOST ? `At most ${MOST}.` : undefined;
}

export function currencyFault(text: string): string | undefined {
  return text === '' || /^[A-Za-z]{3}$/.test(text) ? undefined : 'Three letters.';
}

export function amountText(value: number | undefined): string {
  return value === undefined ? '' : fieldText(value);
}

export interface PriceText {
  readonly amount: string;
  readonly currency: string;
  readonly date: string;
  readonly shop: string;
}

export function textOfPrice(price: Price | undefined): PriceText {
  const { currency = '', date = '', shop = '' } = typeof price === 'object' ? price : {};
  return { amount: amountText(price === undefined ? undefined : amountOf(price)), currency, date, shop };
}

/** The shortest form that says all of it; undefined without an amount. */
export function priceOfText({ amount, currency, date, shop }: PriceText): Price | undefined {
  const value = readNumber(amount);
  if (value === undefined) return undefined;
  const notes = {
    ...(currency === '' ? {} : { currency: currency.toUpperCase() }),
    ...(date === '' ? {} : { date }),
    ...(shop === '' ? {} : { shop }),
  };
  return Object.keys(notes).length === 0 ? value : { amount: value, ...notes };
}

export function editPrice(part: string, text: PriceText): void {
  const price = priceOfText(text);
  editPlan((plan) => {
    const { [part]: _, ...others } = plan.prices ?? {};
    return withPrices(plan, price === undefined ? others : { ...others, [part]: price });
  });
}

function withPrices(plan: Plan, prices: NonNullable<Plan['prices']>): Plan {
  const { prices: _, ...rest } = plan;
  return Object.keys(prices).length === 0 ? rest : { ...rest, prices };
}

/** An entry set to undefined is left out. */
export type QuoteEdit = { readonly [K in keyof Quote]?: Quote[K] | undefined };

export function editQuote(edit: (quote: Quote) => QuoteEdit): void {
  editPlan((plan) => {
    const { quote = {}, ...rest } = plan;
    const next = Object.fromEntries(
      Object.entries({ ...quote, ...edit(quote) }).filter(
        ([, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0),
      ),
    ) as Quote;
    return Object.keys(next).length === 0 ? rest : { ...rest, quote: next };
  });
}

export function changedAt<T>(list: readonly T[], index: number, change: Partial<T>): T[] {
  return list.map((one, i) => (i === index ? { ...one, ...change } : one));
}
