/** The frame round one field: title, what it is measured between, its default, what is wrong with it. */
import type { ReactNode } from 'react';
import type { FieldFacts } from '../../../geometry';

interface FieldRowProps {
  readonly facts: FieldFacts;
  readonly optional: boolean;
  readonly path: string;
  readonly note?: string | undefined;
  readonly fault: string | undefined;
  readonly children: ReactNode;
}

export const faultId = (path: string) => `fault-${path}`;
export const inputId = (path: string) => `field-${path}`;

export function FieldRow({ facts, optional, path, note, fault, children }: FieldRowProps) {
  const { title, datum, help, fallback, unit } = facts;
  const isNumber = typeof fallback === 'number';
  const hints = [
    datum,
    help,
    fallback === undefined ? undefined : `default ${fallback}${isNumber && unit ? ` ${unit}` : ''}`,
    fallback === undefined && optional ? 'may be left empty' : undefined,
    note,
  ].filter(Boolean);
  return (
    <div className="form-row" data-fault={fault !== undefined}>
      <label htmlFor={inputId(path)} className="form-label">
        <span>{title}</span>
        {hints.length > 0 && <span className="quiet">{hints.join('; ')}</span>}
      </label>
      <div className="form-input">{children}</div>
      {fault !== undefined && (
        <p className="fault" id={faultId(path)}>
          {fault}
        </p>
      )}
    </div>
  );
}
