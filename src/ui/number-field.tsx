/** A number typed into a plain text field: taken on Enter or on leaving, refused in words, stepped by arrow keys. */
import { type KeyboardEvent, useId, useState } from 'react';
import { fieldText, readNumber } from './numbers';

interface NumberFieldProps {
  readonly label: string;
  readonly value: number;
  readonly onChange: (value: number) => void;
  readonly unit?: string;
  readonly min?: number;
  readonly max?: number;
  readonly step?: number;
}

export function NumberField(props: NumberFieldProps) {
  const { label, value, onChange, unit, min = -5000, max = 5000, step = 1 } = props;
  const [typed, setTyped] = useState<string>();
  const id = useId();
  const read = typed === undefined ? value : readNumber(typed);
  const fault = faultOf(read, min, max);
  const take = (next: number) => {
    setTyped(undefined);
    if (next !== value) onChange(next);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && read !== undefined && !fault) take(read);
    if (event.key === 'Escape') setTyped(undefined);
    const direction = { ArrowUp: 1, ArrowDown: -1 }[event.key];
    if (direction === undefined || read === undefined) return;
    event.preventDefault();
    const by = direction * (event.shiftKey ? step / 10 : step);
    take(Math.min(max, Math.max(min, Number((read + by).toFixed(6)))));
  };
  return (
    <label className="labelled">
      <span>{label}</span>
      <span className="with-unit">
        <input
          className="field number"
          inputMode="decimal"
          autoComplete="off"
          value={typed ?? fieldText(value)}
          aria-invalid={fault !== undefined}
          aria-describedby={fault ? id : undefined}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={() => {
            if (read !== undefined && !fault) take(read);
          }}
          onKeyDown={onKeyDown}
        />
        {unit && <span>{unit}</span>}
      </span>
      {fault && (
        <span className="fault" id={id} role="alert">
          {fault}
        </span>
      )}
    </label>
  );
}

function faultOf(value: number | undefined, min: number, max: number): string | undefined {
  if (value === undefined) return 'Not a number.';
  if (value < min) return `At least ${fieldText(min)}.`;
  return value > max ? `At most ${fieldText(max)}.` : undefined;
}
