/** Texts, plain numbers, choices and ticks. */
import type { ScalarField } from './describe-schema';
import type { EditorProps } from './editor-props';
import { FieldRow, faultId, inputId } from './field-row';

export function ScalarEditor(props: EditorProps<ScalarField>) {
  const { field, path, faults } = props;
  const fault = faults.get(path);
  return (
    <FieldRow facts={field.facts} optional={field.optional} path={path} fault={fault}>
      <ScalarInput {...props} />
      {field.facts.unit && field.type !== 'choice' && <span className="form-unit">{field.facts.unit}</span>}
    </FieldRow>
  );
}

function ScalarInput({ field, draft, path, faults, onChange }: EditorProps<ScalarField>) {
  const hasFault = faults.has(path);
  const shared = {
    id: inputId(path),
    'aria-invalid': hasFault,
    'aria-describedby': hasFault ? faultId(path) : undefined,
  };
  const text = typeof draft === 'string' ? draft : '';
  if (field.type === 'boolean')
    return (
      <input
        {...shared}
        className="form-tick"
        type="checkbox"
        checked={draft === true}
        onChange={(event) => onChange(event.target.checked)}
      />
    );
  if (field.type === 'choice')
    return (
      <select {...shared} className="select" value={text} onChange={(event) => onChange(event.target.value)}>
        {(field.optional || text === '') && (
          <option value="">
            {field.facts.fallback === undefined ? 'not stated' : `default: ${field.facts.fallback}`}
          </option>
        )}
        {field.options.map((option) => (
          <option key={option} value={String(option)}>
            {option}
            {typeof option === 'number' && field.facts.unit ? ` ${field.facts.unit}` : ''}
          </option>
        ))}
      </select>
    );
  if (field.type === 'text' && field.long)
    return (
      <textarea
        {...shared}
        className="field"
        rows={2}
        value={text}
        onChange={(event) => onChange(event.target.value)}
      />
    );
  return (
    <input
      {...shared}
      className={field.type === 'number' ? 'field number' : 'field'}
      inputMode={field.type === 'number' ? 'decimal' : 'text'}
      autoComplete="off"
      value={text}
      onChange={(event) => onChange(event.target.value)}
    />
  );
}
