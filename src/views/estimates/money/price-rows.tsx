/** A row for each part: what it costs, where and when that was read. */
import type { PlacedPart, Plan } from '../../../../geometry';
import { CommitField } from './commit-field';
import { amountFault, currencyFault, editPrice, type PriceText, textOfPrice } from './typed-money';

interface PriceRowsProps {
  readonly plan: Plan;
  readonly parts: readonly PlacedPart[];
  /** What an amount is in when its own field is empty. */
  readonly unit: string;
}

export function PriceRows({ plan, parts, unit }: PriceRowsProps) {
  return (
    <table className="estimates-table money-table">
      <caption>Prices, typed by hand; no shop is asked</caption>
      <thead>
        <tr>
          <th scope="col">Part</th>
          <th scope="col">Price</th>
          <th scope="col">Currency</th>
          <th scope="col">Read on</th>
          <th scope="col">Shop, note</th>
        </tr>
      </thead>
      <tbody>
        {parts.map(({ id, label, spec }) => (
          <tr key={id}>
            <th scope="row">
              {label} <span className="quiet">{spec.model}</span>
            </th>
            <PriceCells part={id} label={label} text={textOfPrice(plan.prices?.[id])} unit={unit} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface PriceCellsProps {
  readonly part: string;
  readonly label: string;
  readonly text: PriceText;
  readonly unit: string;
}

function PriceCells({ part, label, text, unit }: PriceCellsProps) {
  const take = (change: Partial<PriceText>) => editPrice(part, { ...text, ...change });
  const priceless = text.amount === '';
  return (
    <>
      <td>
        <CommitField
          label={`Price of ${label}`}
          value={text.amount}
          numeric
          fault={(typed) => amountFault(typed, { empty: true })}
          onTake={(amount) => take({ amount })}
        />
      </td>
      <td>
        <CommitField
          label={`Currency of the price of ${label}`}
          value={text.currency}
          placeholder={unit}
          maxLength={3}
          disabled={priceless}
          fault={currencyFault}
          onTake={(currency) => take({ currency })}
        />
      </td>
      <td>
        <CommitField
          label={`Day the price of ${label} was read`}
          type="date"
          value={text.date}
          disabled={priceless}
          onTake={(date) => take({ date })}
        />
      </td>
      <td>
        <CommitField
          label={`Shop or note for the price of ${label}`}
          value={text.shop}
          placeholder="Shop, note"
          disabled={priceless}
          onTake={(shop) => take({ shop })}
        />
      </td>
    </>
  );
}
