/** A dimension or rating: value, unit, how far it may be off, where it comes from. */
import type { ScalarField } from './describe-schema';
import { isQuantityDraft, type QuantityDraft } from './draft';
import type { EditorProps } from './editor-props';
import { FieldRow, faultId, inputId } from './field-row';

const SOURCES = ['sheet', 'standard', 'measured', 'assumed'] as const;

export function QuantityEditor({ field, draft, path, faults, onChange }: EditorProps<ScalarField>) {
  if (!isQuantityDraft(draft)) return null;
  const { facts, optional } = field;
  const fault = faults.get(path) ?? faults.get(`${path}.value`) ?? faults.get(`${path}.plusMinus`);
  const set = (change: Partial<QuantityDraft>) => onChange({ ...draft, ...change });
  return (
    <FieldRow facts={facts} optional={optional} path={path} note={draft.note} fault={fault}>
      <input
        id={inputId(path)}
        className="field number"
        inputMode="decimal"
        autoComplete="off"
        value={draft.value}
        placeholder={facts.fallback === undefined ? '' : String(facts.fallback)}
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
