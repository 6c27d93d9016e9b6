/** The fields of a whole part: what matters first, the rest folded away with a count of what stands at its default. */
import { useState } from 'react';
import type { PartKind } from '../../../geometry';
import { countOf } from '../../ui/numbers';
import type { Field, ObjectField, VariantsField } from './describe-schema';
import { asObject, type Draft, isQuantityDraft, optionOf } from './draft';
import type { EditorProps } from './editor-props';
import { FieldEditor } from './field-editor';
import { askedFields, type KeyedField } from './sheet-order';
import { VariantSelect } from './variant-select';

interface AskedFieldsProps extends EditorProps<ObjectField | VariantsField> {
  readonly kind: PartKind;
}

export function AskedFields({ kind, field, draft, faults, onChange }: AskedFieldsProps) {
  const [isOpen, setOpen] = useState(false);
  const values = asObject(draft);
  const object = field.type === 'variants' ? optionOf(field, String(values[field.by])) : field;
  const { first, more } = askedFields(kind, object);
  const hasFault = [...faults.keys()].some((path) => more.some(([key]) => path.split('.')[0] === key));
  const editor = ([key, inner]: KeyedField) => (
    <FieldEditor
      key={key}
      field={inner}
      draft={values[key]}
      path={key}
      faults={faults}
      onChange={(next) => onChange({ ...values, [key]: next })}
    />
  );
  const empty = more.filter(([key, inner]) => isEmpty(inner, values[key])).length;
  return (
    <>
      {field.type === 'variants' && (
        <VariantSelect field={field} values={values} path="" onChange={onChange} />
      )}
      {first.map(editor)}
      {more.length > 0 && (
        <details
          className="form-more"
          open={isOpen || hasFault}
          onToggle={(event) => setOpen(event.currentTarget.open)}
        >
          <summary>
            More dimensions and ratings{' '}
            <span className="quiet">
              {countOf(more.length, 'field')}, {empty === more.length ? 'all' : empty} at{' '}
              {empty === 1 ? 'its default' : 'their defaults'}
            </span>
          </summary>
          <div className="form-fields">{more.map(editor)}</div>
        </details>
      )}
    </>
  );
}

/** Nothing was typed or chosen: the default stands. */
function isEmpty(field: Field, draft: Draft): boolean {
  if (draft === undefined || draft === '') return true;
  if (isQuantityDraft(draft)) return draft.value.trim() === '';
  return field.optional && draft === false;
}
