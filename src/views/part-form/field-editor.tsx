/** Draws one field of a form, and the fields inside it: groups, variants, lists and points hold fields in turn. */
import type { ListField, ObjectField, TupleField, VariantsField } from './describe-schema';
import { asList, asObject, filledDraft, optionOf } from './draft';
import type { EditorProps } from './editor-props';
import { QuantityEditor } from './quantity-editor';
import { ScalarEditor } from './scalar-editor';
import { VariantSelect } from './variant-select';

export function FieldEditor(props: EditorProps) {
  const { field } = props;
  switch (field.type) {
    case 'constant':
      return null;
    case 'quantity':
      return <QuantityEditor {...props} field={field} />;
    case 'object':
    case 'variants':
      return <GroupEditor {...props} field={field} />;
    case 'list':
      return <ListEditor {...props} field={field} />;
    case 'tuple':
      return <TupleEditor {...props} field={field} />;
    default:
      return <ScalarEditor {...props} field={field} />;
  }
}

/** An optional group can be added and taken out, one of several variants can be switched. */
function GroupEditor(props: EditorProps<ObjectField | VariantsField>) {
  const { field, draft, onChange } = props;
  const { title, help } = field.facts;
  return (
    <fieldset className="form-group">
      {title && <legend>{title}</legend>}
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
        <GroupFields {...props} />
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

function GroupFields({ field, draft, path, faults, onChange }: EditorProps<ObjectField | VariantsField>) {
  const values = asObject(draft);
  const object = field.type === 'variants' ? optionOf(field, String(values[field.by])) : field;
  return (
    <>
      {field.type === 'variants' && (
        <VariantSelect field={field} values={values} path={path} onChange={onChange} />
      )}
      {object.fields.map(([key, inner]) => (
        <FieldEditor
          key={key}
          field={inner}
          draft={values[key]}
          path={`${path}.${key}`}
          faults={faults}
          onChange={(next) => onChange({ ...values, [key]: next })}
        />
      ))}
    </>
  );
}

function ListEditor({ field, draft, path, faults, onChange }: EditorProps<ListField>) {
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

/** A point or a range: its coordinates under one heading. */
function TupleEditor({ field, draft, path, faults, onChange }: EditorProps<TupleField>) {
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
