/** A field that is taken when it is left or on Enter, and refused in words while it is wrong; Escape takes it back. */
import { type KeyboardEvent, useId, useState } from 'react';

interface CommitFieldProps {
  readonly label: string;
  readonly value: string;
  /** Why the text cannot be taken; undefined when it can. */
  readonly fault?: (text: string) => string | undefined;
  readonly onTake: (text: string) => void;
  readonly type?: 'text' | 'date';
  readonly numeric?: boolean;
  readonly placeholder?: string;
  readonly maxLength?: number;
  readonly disabled?: boolean;
}

export function CommitField(props: CommitFieldProps) {
  const {
    label,
    value,
    fault,
    onTake,
    type = 'text',
    numeric = false,
    placeholder,
    maxLength = 80,
    disabled,
  } = props;
  const [typed, setTyped] = useState<string>();
  const id = useId();
  const wrong = typed === undefined ? undefined : fault?.(typed.trim());
  const take = () => {
    if (typed === undefined || wrong !== undefined) return;
    setTyped(undefined);
    if (typed.trim() !== value) onTake(typed.trim());
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') {
      event.preventDefault();
      take();
    }
    if (event.key !== 'Escape' || typed === undefined) return;
    // Only the text is taken back; the sheet stays open.
    event.preventDefault();
    event.stopPropagation();
    setTyped(undefined);
  };
  return (
    <span className="money-field">
      <input
        className={numeric ? 'field number' : 'field'}
        type={type}
        inputMode={numeric ? 'decimal' : undefined}
        autoComplete="off"
        aria-label={label}
        aria-invalid={wrong !== undefined}
        aria-describedby={wrong === undefined ? undefined : id}
        placeholder={placeholder}
        maxLength={maxLength}
        disabled={disabled}
        value={typed ?? value}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={take}
        onKeyDown={onKeyDown}
      />
      {wrong !== undefined && (
        <span className="fault" id={id} role="alert">
          {wrong}
        </span>
      )}
    </span>
  );
}
