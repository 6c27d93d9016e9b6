/** A part by number: every figure of its schema in a plain form. What is typed stays until it is saved or let go. */
import { type FormEvent, type ReactNode, useMemo, useRef, useState } from 'react';
import type { PartKind, PartSpec } from '../../../geometry';
import { countOf } from '../../ui/numbers';
import { blankDraft, type Draft, toDraft } from './draft';
import { FieldEditor } from './field-editor';
import { inputId } from './field-row';
import { type FieldFault, readForm, specField } from './spec-field';
import './part-form.css';

interface PartFormProps {
  readonly kind: PartKind;
  /** Figures to begin with; an empty form when there are none. */
  readonly start: PartSpec | undefined;
  readonly onDirty: () => void;
  /** Called with a valid spec and the name of the button that was pressed. */
  readonly onSave: (spec: PartSpec, action: string) => void;
  /** Buttons of type submit; their values are the names of the actions. */
  readonly children: ReactNode;
}

export function PartForm({ kind, start, onDirty, onSave, children }: PartFormProps) {
  const field = specField(kind);
  const [draft, setDraft] = useState<Draft>(() => (start ? toDraft(field, start) : blankDraft(field)));
  const [faults, setFaults] = useState<readonly FieldFault[]>([]);
  const summary = useRef<HTMLDivElement>(null);
  const byPath = useMemo(() => new Map(faults.map(({ path, message }) => [path, message])), [faults]);
  const change = (next: Draft) => {
    setDraft(next);
    onDirty();
    if (faults.length > 0) {
      const result = readForm(field, next);
      setFaults(result.ok ? [] : result.faults);
    }
  };
  const save = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const { submitter } = event.nativeEvent as SubmitEvent;
    const action = submitter instanceof HTMLButtonElement ? submitter.value : '';
    const result = readForm(field, draft);
    if (result.ok) return onSave(result.spec, action);
    setFaults(result.faults);
    requestAnimationFrame(() => summary.current?.focus());
  };
  return (
    <form className="part-form" onSubmit={save} noValidate>
      <div className="dialog-body">
        {faults.length > 0 && (
          <div ref={summary} className="form-faults" tabIndex={-1} role="alert">
            <p>{countOf(faults.length, 'field needs', 'fields need')} another look. Nothing is saved yet.</p>
            <ul>
              {faults.map(({ path, title, message }) => (
                <li key={path}>
                  <button type="button" onClick={() => goToField(path)}>
                    {title || path}
                  </button>{' '}
                  {message}
                </li>
              ))}
            </ul>
          </div>
        )}
        <div className="form-fields">
          <FieldEditor field={field} draft={draft} path="" faults={byPath} onChange={change} />
        </div>
      </div>
      <div className="dialog-actions">{children}</div>
    </form>
  );
}

function goToField(path: string): void {
  const input =
    document.getElementById(inputId(path)) ?? document.getElementById(inputId(path.replace(/\.[^.]+$/, '')));
  input?.scrollIntoView({ block: 'center' });
  input?.focus();
}
