import { describe, expect, it } from 'vitest';
import { estimatePlan } from '../../../geometry/estimates/estimate-plan';
import { moneyFigures, moneySum, validUntil } from '../../../geometry/estimates/money/money-figures';
import { costPerDecibel } from '../../../geometry/estimates/money/wish-figures';
import { examplePlan } from '../example-plan';

function priced(change: (plan: Record<string, unknown>) => void = () => undefined) {
  return examplePlan('small', (parts, plan) => {
    plan.prices = Object.fromEntries(Object.keys(parts).map((id) => [id, 100]));
    change(plan);
  });
}

function figureOf(placed: ReturnType<typeof examplePlan>, id: string, today?: string) {
  return moneyFigures(placed.plan, placed.scene, today).find((figure) => figure.id === id);
}

describe('money', () => {
  const parts = Object.keys(examplePlan('small').plan.parts).length;

  it('adds parts, lines and tax, before or inside the prices', () => {
    const lines = [{ label: 'labour', amount: 200 }];
    const net = moneySum(priced((plan) => Object.assign(plan, { quote: { tax: 0.25, lines } })).plan);
    expect(net.total).toBeCloseTo((parts * 100 + 200) * 1.25, 9);
    const gross = moneySum(
      priced((plan) => Object.assign(plan, { quote: { tax: 0.25, lines, pricesIncludeTax: true } })).plan,
    );
    expect(gross.total).toBeCloseTo(parts * 100 + 200, 9);
    expect(gross.tax).toBeCloseTo((parts * 100 + 200) * 0.2, 9);
  });

  it('holds the total against the budget, and never guesses a price', () => {
    expect(figureOf(priced(), 'money spare')?.value).toBe(2200 - parts * 100);
    const gap = priced((plan) => delete (plan.prices as Record<string, number>).card);
    expect(figureOf(gap, 'money total')?.because).toBe('Card has no price');
    expect(figureOf(gap, 'money typed')?.value).toBe((parts - 1) * 100);
    const mixed = priced((plan) =>
      Object.assign(plan.prices as object, {
        card: { amount: 400, currency: 'USD', shop: 'a shop', date: '2026-11-01' },
      }),
    );
    expect(figureOf(mixed, 'money total')?.because).toContain('USD as well as EUR');
  });

  it('prices a wish, a decibel and a day', () => {
    const wish = priced((plan) =>
      Object.assign(plan, {
        quote: {
          date: '2026-11-02',
          validDays: 14,
          wishes: [{ label: 'quiet', part: 'cooler', plainPrice: 60 }],
        },
      }),
    );
    expect(figureOf(wish, 'money wish 1')?.value).toBe(40);
    expect(validUntil(wish.plan.quote)).toBe('2026-11-16');
    expect(figureOf(wish, 'money quote days', '2026-11-10')?.value).toBe(6);
    expect(figureOf(wish, 'money quote days')).toBeUndefined();
    expect(costPerDecibel({ price: 10, decibels: 40 }, { price: 30, decibels: 36 })).toBe(5);
    expect(costPerDecibel({ price: 10, decibels: 40 }, { price: 30, decibels: 41 })).toBeUndefined();
  });

  it('prices a decibel less by the two sheets, or says why not', () => {
    const quieter = (plainDecibels: number, sound?: number) => {
      const placed = priced((plan) => {
        if (sound !== undefined)
          Object.assign((plan.parts as { cooler: { spec: object } }).cooler.spec, { eachFan: { sound } });
        Object.assign(plan, {
          quote: { wishes: [{ label: 'quiet', part: 'cooler', plainPrice: 60, plainDecibels }] },
        });
      });
      return figureOf(placed, 'money decibel 1');
    };
    expect(quieter(38, 30)?.value).toBe(5);
    expect(quieter(29, 30)?.because).toBe('Cooler, 30 dB, is no quieter than the plainer part, 29 dB');
    expect(quieter(38)?.because).toBe('the sheet of Cooler states no sound');
  });

  it('takes the currency of the brief, else the one the prices name, and tells it in the sentence', () => {
    expect(figureOf(priced(), 'money total')?.currency).toBe('EUR');
    const named = priced((plan) => {
      delete (plan.brief as Record<string, unknown>).currency;
      Object.assign(plan.prices as object, { card: { amount: 400, currency: 'SEK' } });
    });
    expect(figureOf(named, 'money total')?.currency).toBe('SEK');
    const { topics } = estimatePlan(named.plan, named.scene, { load: 'idle' }, { bands: false });
    expect(topics.money.answer).toMatch(/^Total: \d+ SEK\. Left of the budget: \d+ SEK\.$/);
  });
});
