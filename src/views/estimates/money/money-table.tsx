/** Prices, lines of the quote and tax, to be typed; the sum and what is left of the budget beside them. */
import { moneySum, type Plan, unitName, validUntil, writeValue } from '../../../../geometry';
import { useSolutionStore } from '../../../store/use-store';
import { PriceRows } from './price-rows';
import { QuoteLines } from './quote-lines';
import { QuoteTerms } from './quote-terms';
import { WishPrices } from './wish-prices';
import './money-table.css';

interface MoneyTableProps {
  readonly plan: Plan;
  readonly currency: string;
}

export function MoneyTable({ plan, currency }: MoneyTableProps) {
  const scene = useSolutionStore((state) => state.scene);
  const unit = plan.brief?.currency ?? currency;
  return (
    <div className="money">
      <MoneySums plan={plan} unit={unit} />
      <PriceRows plan={plan} parts={scene.parts} unit={unit} />
      <QuoteLines lines={plan.quote?.lines ?? []} unit={unit} />
      <QuoteTerms quote={plan.quote} />
      <WishPrices wishes={plan.quote?.wishes ?? []} parts={scene.parts} unit={unit} />
    </div>
  );
}

function MoneySums({ plan, unit }: { readonly plan: Plan; readonly unit: string }) {
  const { parts, lines, tax, total, unpriced, foreign } = moneySum(plan);
  const budget = plan.brief?.budget;
  const said = (value: number) => `${writeValue(value, 'money')}${unitName('money', unit)}`;
  const until = validUntil(plan.quote);
  const rows: readonly (readonly [name: string, words: string])[] = [
    ['Parts', said(parts)],
    ['Labour and other lines', said(lines)],
    [plan.quote?.pricesIncludeTax ? 'Tax, inside these' : 'Tax', said(tax)],
    ['Total', said(total)],
    ['Budget', budget === undefined ? 'none in the brief' : said(budget)],
    ...(budget === undefined
      ? []
      : [[total > budget ? 'Over the budget' : 'To spare', said(Math.abs(budget - total))] as const]),
    ...(until === undefined ? [] : [['Quote good until', until] as const]),
  ];
  const gaps = [
    ...(unpriced.length > 0
      ? [`${unpriced.length} of ${Object.keys(plan.parts).length} parts have no price`]
      : []),
    ...(foreign.length > 0
      ? [`some prices are in ${foreign.join(' and ')} and are added as if they were not`]
      : []),
  ];
  return (
    <>
      <dl className="money-sums" aria-live="polite">
        {rows.map(([name, words]) => (
          <div key={name} data-strong={name === 'Total'}>
            <dt>{name}</dt>
            <dd className="number">{words}</dd>
          </div>
        ))}
      </dl>
      {gaps.length > 0 && <p className="fault">So far: {gaps.join('; ')}. The total is not the whole.</p>}
      {unit === '' && <p className="quiet">No currency is named; the brief is the place for it.</p>}
    </>
  );
}
