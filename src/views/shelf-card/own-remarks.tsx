/** Note, price and mass that a person keeps with an entry. */
import { type FormEvent, useId, useState } from 'react';
import { nominal, type PartSpec } from '../../../geometry';
import { remark } from '../../shelf/shelf-store';
import { planStore } from '../../store/plan-store';
import { announce } from '../../store/status-store';
import type { Remarks } from '../../store/stored-records';
import { fieldText, readNumber } from '../../ui/numbers';

interface OwnRemarksProps {
  readonly id: string;
  readonly spec: PartSpec;
  readonly remarks: Remarks | undefined;
}

export function OwnRemarks({ id, spec, remarks }: OwnRemarksProps) {
  const [note, setNote] = useState(remarks?.note ?? '');
  const [price, setPrice] = useState(textOf(remarks?.price?.amount));
  const [mass, setMass] = useState(textOf(remarks?.mass));
  const [fault, setFault] = useState<string>();
  const faultId = useId();
  const currency = planStore.getState().plan.brief?.currency;
  const save = async (event: FormEvent) => {
    event.preventDefault();
    const [amount, grams] = [readPositive(price), readPositive(mass)];
    if (amount === 'wrong') return setFault('The price is not a number of zero or more.');
    if (grams === 'wrong') return setFault('The mass is not a number of zero or more.');
    try {
      await remark(id, ({ note: _, price: before, mass: __, ...others }) => ({
        ...others,
        ...(note.trim() === '' ? {} : { note }),
        ...(amount === undefined ? {} : { price: { ...before, ...(currency ? { currency } : {}), amount } }),
        ...(grams === undefined ? {} : { mass: grams }),
      }));
      setFault(undefined);
      announce(`Remarks on ${spec.model} kept.`);
    } catch {
      setFault('That could not be kept: a figure is too large, or the browser keeps no data for this page.');
    }
  };
  return (
    <form className="own-remarks" aria-label="Your remarks" onSubmit={(event) => void save(event)}>
      <h3 className="heading">Your remarks</h3>
      <label className="labelled own-note">
        <span>Note</span>
        <textarea
          className="field"
          rows={2}
          maxLength={2000}
          value={note}
          onChange={(event) => setNote(event.target.value)}
        />
      </label>
      <label className="labelled">
        <span>Price{currency ? `, ${currency}` : ''}</span>
        <input
          className="field number"
          inputMode="decimal"
          value={price}
          aria-invalid={fault?.includes('price') ?? false}
          aria-describedby={fault === undefined ? undefined : faultId}
          onChange={(event) => setPrice(event.target.value)}
        />
      </label>
      <label className="labelled">
        <span>Mass as weighed, g</span>
        <input
          className="field number"
          inputMode="decimal"
          placeholder={spec.mass === undefined ? '' : `sheet: ${fieldText(nominal(spec.mass))}`}
          value={mass}
          aria-invalid={fault?.includes('mass') ?? false}
          aria-describedby={fault === undefined ? undefined : faultId}
          onChange={(event) => setMass(event.target.value)}
        />
      </label>
      <button type="submit" className="button">
        Keep
      </button>
      {fault !== undefined && (
        <p className="fault" id={faultId} role="alert">
          {fault}
        </p>
      )}
    </form>
  );
}

function textOf(value: number | undefined): string {
  return value === undefined ? '' : fieldText(value);
}

function readPositive(text: string): number | undefined | 'wrong' {
  if (text.trim() === '') return undefined;
  const value = readNumber(text);
  return value === undefined || value < 0 ? 'wrong' : value;
}
