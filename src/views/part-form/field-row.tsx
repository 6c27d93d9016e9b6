/** The frame round one field: title, what it is measured between, its default, what is wrong with it. */
import type { ReactNode } from 'react';
import type { FieldFacts } from '../../../geometry';

interface FieldRowProps {
  readonly facts: FieldFacts;
  readonly optional: boolean;
  readonly path: string;
  readonly note?: string | undefined;
  /** What stands in for the empty field, with where it comes from. */
  readonly standsIn?: string | undefined;
  /** How what was typed is read, where that is not plain. */
  readonly reading?: string | undefined;
  readonly fault: string | undefined;
  readonly children: ReactNode;
}

export const faultId = (path: string) => `fault-${path}`;
export const inputId = (path: string) => `field-${path}`;

export function FieldRow(props: FieldRowProps) {
  const { facts, optional, path, note, standsIn, reading, fault, children } = props;
  const { title, datum, help, fallback, unit } = facts;
  const isNumber = typeof fallback === 'number';
  const usual =
    fallback === undefined ? undefined : `default ${fallback}${isNumber && unit ? ` ${unit}` : ''}`;
  const hints = [
    datum,
    help,
    standsIn === undefined ? usual : undefined,
    fallback === undefined && standsIn === undefined && optional ? 'may be left empty' : undefined,
    note,
  ].filter(Boolean);
  return (
    <div className="form-row" data-fault={fault !== undefined} data-path={path}>
      <label htmlFor={inputId(path)} className="form-label">
        <span>{title}</span>
        {hints.length > 0 && <span className="quiet">{hints.join('; ')}</span>}
        {standsIn !== undefined && <span className="form-default">default {standsIn}</span>}
      </label>
      <div className="form-input">{children}</div>
      {reading !== undefined && fault === undefined && <p className="form-reading quiet">{reading}</p>}
      {fault !== undefined && (
        <p className="fault" id={faultId(path)}>
          {fault}
        </p>
      )}
    </div>
  );
}
