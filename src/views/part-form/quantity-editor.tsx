/** A dimension or rating: value, unit, how far it may be off, where it comes from. */
import { readNumberEntry } from '../../ui/number-entry';
import { fieldText, readNumber } from '../../ui/numbers';
import { defaultOrigin } from './default-words';
import type { ScalarField } from './describe-schema';
import { isQuantityDraft, type QuantityDraft } from './draft';
import type { EditorProps } from './editor-props';
import { FieldRow, faultId, inputId } from './field-row';
import { useFormSurroundings } from './form-context';

const SOURCES = ['sheet', 'standard', 'measured', 'assumed'] as const;

export function QuantityEditor({ field, draft, path, faults, onChange }: EditorProps<ScalarField>) {
  const standing = useFormSurroundings().standingIn[path];
  if (!isQuantityDraft(draft)) return null;
  const { facts, optional } = field;
  const fault = faults.get(path) ?? faults.get(`${path}.value`) ?? faults.get(`${path}.plusMinus`);
  const set = (change: Partial<QuantityDraft>) => onChange({ ...draft, ...change });
  const isDefault = optional && draft.value.trim() === '' && standing !== undefined;
  const fallback = facts.fallback === undefined ? '' : String(facts.fallback);
  return (
    <FieldRow
      facts={facts}
      optional={optional}
      path={path}
      note={draft.note}
      standsIn={
        isDefault ? `${fieldText(standing.value)} ${facts.unit}, ${defaultOrigin(standing)}` : undefined
      }
      reading={readingOf(draft.value, facts.unit)}
      fault={fault}
    >
      <input
        id={inputId(path)}
        className="field number"
        autoComplete="off"
        spellCheck={false}
        value={draft.value}
        placeholder={standing === undefined ? fallback : fieldText(standing.value)}
        aria-invalid={fault !== undefined}
        aria-describedby={fault === undefined ? undefined : faultId(path)}
        onChange={(event) => set({ value: event.target.value })}
      />
      <span className="form-unit">{facts.unit}</span>
      <span aria-hidden="true">±</span>
      <input
        className="field number form-band"
        inputMode="decimal"
        autoComplete="off"
        aria-label={`${facts.title}, plus or minus`}
        value={draft.plusMinus}
        onChange={(event) => set({ plusMinus: event.target.value })}
      />
      <select
        className="select form-source"
        aria-label={`${facts.title}, source`}
        value={draft.source ?? 'sheet'}
        onChange={(event) => set({ source: event.target.value })}
      >
        {SOURCES.map((source) => (
          <option key={source}>{source}</option>
        ))}
      </select>
    </FieldRow>
  );
}

/** '= 322.26 mm' under a sum or inches, and what keeps a text from being a number while it is typed. */
function readingOf(text: string, unit: string | undefined): string | undefined {
  if (text.trim() === '' || readNumber(text) !== undefined) return undefined;
  const entry = readNumberEntry(text, unit === 'mm');
  return 'value' in entry
    ? `= ${fieldText(Number(entry.value.toFixed(4)))} ${unit ?? ''}`
    : `${entry.fault} …`;
}
