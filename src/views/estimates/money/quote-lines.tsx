/** What a quote adds to the parts: labour, carriage, a rebate. */
import { readNumber } from '../../../ui/numbers';
import { CommitField } from './commit-field';
import { amountFault, amountText, changedAt, editQuote, type Quote } from './typed-money';

type Line = NonNullable<Quote['lines']>[number];

const MOST_LINES = 30;

export function QuoteLines({ lines, unit }: { readonly lines: readonly Line[]; readonly unit: string }) {
  const change = (index: number, to: Partial<Line>) =>
    editQuote((quote) => ({ lines: changedAt(quote.lines ?? [], index, to) }));
  return (
    <fieldset className="money-list">
      <legend className="quiet">
        Labour and other lines{unit === '' ? '' : `, ${unit}`}; a rebate is below zero
      </legend>
      {lines.map(({ label, amount }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines have no identity but their place.
        <div className="money-line" key={i}>
          <CommitField
            label={`Line ${i + 1}, what for`}
            value={label}
            onTake={(text) => change(i, { label: text })}
          />
          <CommitField
            label={`Line ${i + 1}, amount`}
            value={amountText(amount)}
            numeric
            fault={(typed) => amountFault(typed, { empty: false, negative: true })}
            onTake={(text) => change(i, { amount: readNumber(text) ?? amount })}
          />
          <button
            type="button"
            className="button small"
            aria-label={`Remove line ${i + 1}, ${label}`}
            onClick={() => editQuote((quote) => ({ lines: (quote.lines ?? []).filter((_, at) => at !== i) }))}
          >
            Remove
          </button>
        </div>
      ))}
      {lines.length < MOST_LINES && (
        <button
          type="button"
          className="button small"
          onClick={() =>
            editQuote((quote) => ({ lines: [...(quote.lines ?? []), { label: 'Labour', amount: 0 }] }))
          }
        >
          Add a line
        </button>
      )}
    </fieldset>
  );
}
