/** Typing in a measurement: what, how much, who, when, how, and a photo of it. */
import { type ChangeEvent, type FormEvent, useId, useState } from 'react';
import { dimensionsOf } from '../../../geometry';
import { LARGEST_PICTURE_FILE, scaleDown } from '../../shelf/photos';
import { type NewEvidence, recordEvidence, takeIntoSheet } from '../../shelf/record-evidence';
import type { ShelfEntry } from '../../shelf/shelf-entry';
import { announce } from '../../store/status-store';
import { fieldText, readNumber } from '../../ui/numbers';

interface EvidenceFormProps {
  readonly entry: ShelfEntry;
  readonly onDone: () => void;
}

const MASS = 'mass';
/** Remembered from one measurement to the next, as long as the page lives. */
let lastWho = '';

export function EvidenceForm({ entry, onDone }: EvidenceFormProps) {
  const { spec } = entry;
  const dimensions = dimensionsOf(spec);
  const [path, setPath] = useState(dimensions[0]?.path ?? MASS);
  const [photo, setPhoto] = useState<NewEvidence['photo']>();
  const [intoSheet, setIntoSheet] = useState(entry.own === true);
  const [fault, setFault] = useState<string>();
  const faultId = useId();
  const chosen = dimensions.find((one) => one.path === path);
  const takePhoto = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0];
    setPhoto(undefined);
    setFault(undefined);
    if (!file) return;
    try {
      setPhoto(await scaleDown(file));
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error));
    }
  };
  const save = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const read = readForm(new FormData(event.currentTarget), chosen?.title ?? 'Mass');
    if (typeof read === 'string') return setFault(read);
    const measured = {
      ...read,
      ...(chosen ? { path } : {}),
      unit: chosen ? ('mm' as const) : ('g' as const),
    };
    lastWho = measured.who;
    try {
      const refused = intoSheet && chosen ? await takeIntoSheet(entry, measured) : undefined;
      if (refused !== undefined) return setFault(refused);
      await recordEvidence(entry.id, { ...measured, photo });
      announce(`${measured.title} of ${spec.model}: measurement kept.`);
      onDone();
    } catch {
      setFault('That could not be kept: the browser keeps no data for this page, or has no room left.');
    }
  };
  return (
    <form className="evidence-form" aria-label="A measurement" onSubmit={(event) => void save(event)}>
      <label className="labelled wide-field">
        <span>What was measured</span>
        <select className="select" value={path} onChange={(event) => setPath(event.target.value)}>
          {dimensions.map((one) => (
            <option key={one.path} value={one.path}>
              {one.title} (now {fieldText(one.nominal)} mm)
            </option>
          ))}
          <option value={MASS}>Mass</option>
        </select>
        {chosen?.datum !== undefined && <span className="quiet">From where to where: {chosen.datum}</span>}
      </label>
      <Field
        name="value"
        label={`Measured, ${chosen ? 'mm' : 'g'}`}
        fault={fault}
        faultId={faultId}
        decimal
      />
      <Field name="plusMinus" label="±" decimal />
      <Field name="who" label="Who" start={lastWho} />
      <label className="labelled">
        <span>When</span>
        <input
          type="date"
          name="when"
          className="field"
          defaultValue={new Date().toLocaleDateString('sv-SE')}
        />
      </label>
      <Field name="how" label="How (caliper, rule ...)" />
      <label className="labelled wide-field">
        <span>
          Photo, up to {LARGEST_PICTURE_FILE / 1e6} MB; it is scaled to 1,600 pixels and stays in this browser
        </span>
        <input type="file" accept="image/*" className="field" onChange={(event) => void takePhoto(event)} />
      </label>
      {entry.own && chosen && (
        <label className="check wide-field">
          <input
            type="checkbox"
            checked={intoSheet}
            onChange={(event) => setIntoSheet(event.target.checked)}
          />
          Put it into the part’s sheet
        </label>
      )}
      {fault !== undefined && (
        <p className="fault wide-field" id={faultId} role="alert">
          {fault}
        </p>
      )}
      <div className="buttons wide-field">
        <button type="submit" className="button strong">
          Keep the measurement
        </button>
        <button type="button" className="button" onClick={onDone}>
          Cancel
        </button>
      </div>
    </form>
  );
}

interface FieldProps {
  readonly name: string;
  readonly label: string;
  readonly start?: string;
  readonly decimal?: boolean;
  readonly fault?: string | undefined;
  readonly faultId?: string;
}

function Field({ name, label, start = '', decimal = false, fault, faultId }: FieldProps) {
  return (
    <label className="labelled">
      <span>{label}</span>
      <input
        name={name}
        className={decimal ? 'field number' : 'field'}
        inputMode={decimal ? 'decimal' : 'text'}
        maxLength={decimal ? 20 : 80}
        defaultValue={start}
        aria-invalid={fault !== undefined}
        aria-describedby={fault === undefined ? undefined : faultId}
      />
    </label>
  );
}

/** What stands in the fields, or in words what is wrong with it. */
function readForm(form: FormData, title: string): Omit<NewEvidence, 'unit' | 'path' | 'photo'> | string {
  const text = (name: string) => String(form.get(name) ?? '').trim();
  const value = readNumber(text('value'));
  if (value === undefined) return 'What was measured is not a number.';
  const plusMinus = text('plusMinus') === '' ? undefined : readNumber(text('plusMinus'));
  if (text('plusMinus') !== '' && (plusMinus === undefined || plusMinus < 0))
    return 'The ± is not a number of zero or more.';
  if (text('when') === '') return 'The day is missing.';
  return {
    title,
    value,
    ...(plusMinus === undefined ? {} : { plusMinus }),
    who: text('who'),
    when: text('when'),
    how: text('how'),
  };
}
