/** Tax, and for how long the quote holds. */
import { readNumber } from '../../../ui/numbers';
import { CommitField } from './commit-field';
import { amountText, editQuote, type Quote } from './typed-money';

function boundedFault(most: number, least: number, whole: boolean) {
  return (text: string): string | undefined => {
    if (text === '') return undefined;
    const value = readNumber(text);
    if (value === undefined || (whole && !Number.isInteger(value)))
      return whole ? 'A whole number.' : 'Not a number.';
    return value < least || value > most ? `${least} to ${most}.` : undefined;
  };
}

export function QuoteTerms({ quote = {} }: { readonly quote: Quote | undefined }) {
  const { date = '', validDays, tax, pricesIncludeTax = false } = quote;
  return (
    <fieldset className="money-terms">
      <legend className="quiet">Tax and quote</legend>
      <div className="labelled">
        <span aria-hidden="true">Tax, %</span>
        <CommitField
          label="Tax, %"
          value={amountText(tax === undefined ? undefined : tax * 100)}
          numeric
          fault={boundedFault(100, 0, false)}
          onTake={(text) => {
            const value = readNumber(text);
            editQuote(() => ({ tax: value === undefined ? undefined : value / 100 }));
          }}
        />
      </div>
      <label className="check">
        <input
          type="checkbox"
          checked={pricesIncludeTax}
          onChange={({ target }) =>
            editQuote(() => ({ pricesIncludeTax: target.checked ? true : undefined }))
          }
        />
        Prices include it
      </label>
      <div className="labelled">
        <span aria-hidden="true">Quote of</span>
        <CommitField
          label="Day of the quote"
          type="date"
          value={date}
          onTake={(text) => editQuote(() => ({ date: text === '' ? undefined : text }))}
        />
      </div>
      <div className="labelled">
        <span aria-hidden="true">Good for, days</span>
        <CommitField
          label="Quote good for, days"
          value={amountText(validDays)}
          numeric
          fault={boundedFault(365, 1, true)}
          onTake={(text) => editQuote(() => ({ validDays: readNumber(text) }))}
        />
      </div>
    </fieldset>
  );
}
