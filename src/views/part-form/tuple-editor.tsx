/** A point or a range: its coordinates under one heading. */
import type { TupleField } from './describe-schema';
import { asList, filledDraft } from './draft';
import { type EditorProps, FieldEditor } from './field-editor';

export function TupleEditor({ field, draft, path, faults, onChange }: EditorProps<TupleField>) {
  const { title, help } = field.facts;
  const values = asList(draft);
  return (
    <fieldset className="form-group tight">
      <legend>{title}</legend>
      {help && <p className="quiet">{help}</p>}
      {draft === undefined ? (
        <button
          type="button"
          className="button small"
          aria-label={`Add ${title}`}
          onClick={() => onChange(filledDraft(field))}
        >
          Add
        </button>
      ) : (
        field.items.map((item, index) => (
          <FieldEditor
            // biome-ignore lint/suspicious/noArrayIndexKey: the places of a tuple never change.
            key={index}
            field={item.facts.title ? item : { ...item, facts: { ...item.facts, title: `${index + 1}` } }}
            draft={values[index]}
            path={`${path}.${index}`}
            faults={faults}
            onChange={(next) => onChange(field.items.map((_, at) => (at === index ? next : values[at])))}
          />
        ))
      )}
      {draft !== undefined && field.optional && (
        <button
          type="button"
          className="button small"
          aria-label={`Take out ${title}`}
          onClick={() => onChange(undefined)}
        >
          Take out
        </button>
      )}
    </fieldset>
  );
}
