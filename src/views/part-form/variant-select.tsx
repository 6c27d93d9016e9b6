/** Chooses between the styles or forms of one kind of part. */
import { type VariantsField, variantValue } from './describe-schema';
import { type Draft, type ObjectDraft, optionOf, switchVariant } from './draft';

interface VariantSelectProps {
  readonly field: VariantsField;
  readonly values: ObjectDraft;
  readonly path: string;
  readonly onChange: (draft: Draft) => void;
}

export function VariantSelect({ field, values, path, onChange }: VariantSelectProps) {
  const chosen = optionOf(field, String(values[field.by]));
  return (
    <div className="form-row">
      <label className="form-label" htmlFor={`${path}-variant`}>
        {field.by.charAt(0).toUpperCase() + field.by.slice(1)}
      </label>
      <div className="form-input">
        <select
          id={`${path}-variant`}
          className="select"
          value={variantValue(field, chosen)}
          onChange={(event) => onChange(switchVariant(field, values, event.target.value))}
        >
          {field.options.map((option) => (
            <option key={variantValue(field, option)}>{variantValue(field, option)}</option>
          ))}
        </select>
      </div>
    </div>
  );
}
