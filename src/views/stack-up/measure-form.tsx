/** Typing what a person has measured instead of what the sheet says. */
import { type FormEvent, useId, useState } from 'react';
import type { StackUpTerm } from '../../../geometry';
import { measureDimension } from '../../store/measure-dimension';
import { fieldText, readNumber } from '../../ui/numbers';

interface MeasureFormProps {
  readonly dimension: Pick<StackUpTerm, 'part' | 'partLabel' | 'path' | 'title' | 'datum' | 'nominal'>;
  /** Half-width of the band to begin with, mm; without one, what is usual of a measured value. */
  readonly plusMinus?: number | undefined;
  readonly onDone: () => void;
}

export function MeasureForm({ dimension, plusMinus: before, onDone }: MeasureFormProps) {
  const [value, setValue] = useState(fieldText(dimension.nominal));
  const [band, setBand] = useState(before === undefined ? '' : fieldText(before));
  const [fault, setFault] = useState<string>();
  const id = useId();
  const take = (event: FormEvent) => {
    event.preventDefault();
    const [read, plusMinus] = [readNumber(value), band.trim() === '' ? undefined : readNumber(band)];
    if (read === undefined) return setFault('The value is not a number.');
    if (band.trim() !== '' && (plusMinus === undefined || plusMinus < 0))
      return setFault('The ± is not a number of zero or more.');
    const refused = measureDimension(dimension, { value: read, plusMinus });
    if (refused !== undefined) return setFault(refused);
    onDone();
  };
  return (
    <form
      className="measure-form"
      onSubmit={take}
      aria-label={`Measured: ${dimension.partLabel}, ${dimension.title}`}
    >
      {dimension.datum !== undefined && <p className="quiet">From where to where: {dimension.datum}</p>}
      <label className="labelled">
        <span>Measured, mm</span>
        <input
          className="field number"
          inputMode="decimal"
          autoComplete="off"
          // biome-ignore lint/a11y/noAutofocus: the form opens because a person asked for this field.
          autoFocus
          value={value}
          aria-invalid={fault !== undefined}
          aria-describedby={fault === undefined ? undefined : id}
          onChange={(event) => setValue(event.target.value)}
          onFocus={(event) => event.target.select()}
        />
      </label>
      <label className="labelled">
        <span>±, mm</span>
        <input
          className="field number"
          inputMode="decimal"
          autoComplete="off"
          placeholder="usual"
          value={band}
          onChange={(event) => setBand(event.target.value)}
        />
      </label>
      <button type="submit" className="button">
        Take
      </button>
      {fault !== undefined && (
        <p className="fault" id={id} role="alert">
          {fault}
        </p>
      )}
    </form>
  );
}
