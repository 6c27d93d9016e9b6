/** A list of fields or groups, with a way to add one and to take one out. */
import type { ListField } from './describe-schema';
import { asList, filledDraft } from './draft';
import { type EditorProps, FieldEditor } from './field-editor';

export function ListEditor({ field, draft, path, faults, onChange }: EditorProps<ListField>) {
  const items = asList(draft);
  const { title, help } = field.facts;
  const takeOut = (index: number) => {
    const rest = items.filter((_, at) => at !== index);
    onChange(rest.length === 0 && field.optional ? undefined : rest);
  };
  const fault = faults.get(path);
  return (
    <fieldset className="form-group">
      <legend>{title}</legend>
      {help && <p className="quiet">{help}</p>}
      {items.map((item, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: items have no identity but their place; all state is in the draft.
        <div className="form-item" key={index}>
          <FieldEditor
            field={{ ...field.item, facts: { ...field.item.facts, title: `${title} ${index + 1}` } }}
            draft={item}
            path={`${path}.${index}`}
            faults={faults}
            onChange={(next) => onChange(items.map((old, at) => (at === index ? next : old)))}
          />
          <button
            type="button"
            className="button small"
            aria-label={`Take out ${title} ${index + 1}`}
            onClick={() => takeOut(index)}
          >
            Take out
          </button>
        </div>
      ))}
      <button
        type="button"
        className="button small"
        aria-label={`Add to ${title}`}
        onClick={() => onChange([...items, filledDraft(field.item)])}
      >
        Add
      </button>
      {fault !== undefined && <p className="fault">{fault}</p>}
    </fieldset>
  );
}
