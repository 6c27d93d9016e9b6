/** What a wish costs: the part as chosen against the plainer one that would do, and how much louder that one is. */
import type { PlacedPart } from '../../../../geometry';
import { readNumber } from '../../../ui/numbers';
import { CommitField } from './commit-field';
import { amountFault, amountText, changedAt, editQuote, type Quote } from './typed-money';

type Wish = NonNullable<Quote['wishes']>[number];

const MOST_WISHES = 30;
const LOUDEST = 100;

interface WishPricesProps {
  readonly wishes: readonly Wish[];
  readonly parts: readonly PlacedPart[];
  readonly unit: string;
}

export function WishPrices({ wishes, parts, unit }: WishPricesProps) {
  const [first] = parts;
  return (
    <fieldset className="money-list">
      <legend className="quiet">
        Wishes: the plainer part that would do, its price{unit === '' ? '' : ` in ${unit}`} and its sound at 1
        m, dB
      </legend>
      {wishes.map((wish, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: wishes have no identity but their place.
        <WishLine key={i} wish={wish} index={i} parts={parts} />
      ))}
      {first && wishes.length < MOST_WISHES && (
        <button
          type="button"
          className="button small"
          onClick={() =>
            editQuote((quote) => ({
              wishes: [...(quote.wishes ?? []), { label: 'A wish', part: first.id, plainPrice: 0 }],
            }))
          }
        >
          Add a wish
        </button>
      )}
    </fieldset>
  );
}

interface WishLineProps {
  readonly wish: Wish;
  readonly index: number;
  readonly parts: readonly PlacedPart[];
}

function WishLine({ wish, index, parts }: WishLineProps) {
  const change = (to: Partial<Wish>) =>
    editQuote((quote) => ({ wishes: changedAt(quote.wishes ?? [], index, to) }));
  const name = `Wish ${index + 1}`;
  return (
    <div className="money-line money-wish">
      <CommitField label={`${name}, what`} value={wish.label} onTake={(label) => change({ label })} />
      <select
        className="select"
        aria-label={`${name}, part`}
        value={wish.part}
        onChange={(event) => change({ part: event.target.value })}
      >
        {parts.map(({ id, label }) => (
          <option key={id} value={id}>
            {label}
          </option>
        ))}
      </select>
      <CommitField
        label={`${name}, price of the plainer part`}
        value={amountText(wish.plainPrice)}
        numeric
        fault={(typed) => amountFault(typed, { empty: false })}
        onTake={(text) => change({ plainPrice: readNumber(text) ?? wish.plainPrice })}
      />
      <CommitField
        label={`${name}, sound of the plainer part, dB`}
        value={amountText(wish.plainDecibels)}
        numeric
        placeholder="dB"
        fault={soundFault}
        onTake={(text) =>
          editQuote((quote) => ({ wishes: withSound(quote.wishes ?? [], index, readNumber(text)) }))
        }
      />
      <button
        type="button"
        className="button small"
        aria-label={`Remove ${name.toLowerCase()}, ${wish.label}`}
        onClick={() =>
          editQuote((quote) => ({ wishes: (quote.wishes ?? []).filter((_, at) => at !== index) }))
        }
      >
        Remove
      </button>
    </div>
  );
}

function soundFault(text: string): string | undefined {
  if (text === '') return undefined;
  const value = readNumber(text);
  if (value === undefined) return 'Not a number.';
  return value < 0 || value > LOUDEST ? `0 to ${LOUDEST}.` : undefined;
}

function withSound(wishes: readonly Wish[], index: number, decibels: number | undefined): Wish[] {
  return wishes.map((wish, i) => {
    if (i !== index) return wish;
    const { plainDecibels: _, ...rest } = wish;
    return decibels === undefined ? rest : { ...rest, plainDecibels: decibels };
  });
}
