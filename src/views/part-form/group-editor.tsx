/** A group of fields; an optional one can be added and taken out, one of several variants can be switched. */
import { type ObjectField, type VariantsField, variantValue } from './describe-schema';
import { asObject, filledDraft, optionOf, switchVariant } from './draft';
import { type EditorProps, FieldEditor } from './field-editor';

export function GroupEditor(props: EditorProps<ObjectField | VariantsField>) {
  const { field, draft, path, onChange } = props;
  const { title, help } = field.facts;
  if (path === '') return <GroupFields {...props} />;
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
        <div className="form-row">
          <label className="form-label" htmlFor={`${path}-variant`}>
            {field.by.charAt(0).toUpperCase() + field.by.slice(1)}
          </label>
          <div className="form-input">
            <select
              id={`${path}-variant`}
              className="select"
              value={variantValue(field, object)}
              onChange={(event) => onChange(switchVariant(field, values, event.target.value))}
            >
              {field.options.map((option) => (
                <option key={variantValue(field, option)}>{variantValue(field, option)}</option>
              ))}
            </select>
          </div>
        </div>
      )}
      {object.fields.map(([key, inner]) => (
        <FieldEditor
          key={key}
          field={inner}
          draft={values[key]}
          path={path === '' ? key : `${path}.${key}`}
          faults={faults}
          onChange={(next) => onChange({ ...values, [key]: next })}
        />
      ))}
    </>
  );
}
