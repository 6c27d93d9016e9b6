/** Parts as a table: one row a part, one column a value, figures in the units of the fields. */
import Papa from 'papaparse';
import type { PartSpec } from '../../../geometry';
import { leafAt } from './spec-leaves';

export const TABLE_ENDING = '.csv';

type Row = Map<string, string | number | boolean>;

/** Columns in the order in which they first come up; cells a spreadsheet would take for a formula begin with a quote. */
export function writeTable(specs: readonly PartSpec[]): string {
  const columns = new Map<string, string>([['kind', 'kind']]);
  const rows = specs.map((spec) => {
    const row: Row = new Map();
    flatten(spec, '', row);
    for (const column of row.keys()) if (!columns.has(column)) columns.set(column, headerOf(column, spec));
    return row;
  });
  const keys = [...columns.keys()];
  return `${Papa.unparse(
    {
      fields: [...columns.values()],
      data: rows.map((row) => keys.map((key) => row.get(key) ?? '')),
    },
    { escapeFormulae: true, newline: '\r\n' },
  )}\r\n`;
}

function headerOf(column: string, { kind }: PartSpec): string {
  const isBare = !column.includes(' ');
  const unit = isBare ? leafAt(kind, column)?.unit : undefined;
  return unit ? `${column} (${unit})` : column;
}

function flatten(value: unknown, path: string, row: Row): void {
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') {
    row.set(path, value);
    return;
  }
  if (Array.isArray(value)) {
    value.forEach((item: unknown, index) => {
      flatten(item, `${path}.${index}`, row);
    });
    return;
  }
  if (typeof value !== 'object' || value === null) return;
  const parts = Object.entries(value);
  if (isStated(value)) {
    for (const [key, part] of parts) flatten(part, sharePath(path, key), row);
    return;
  }
  for (const [key, inner] of parts) flatten(inner, path === '' ? key : `${path}.${key}`, row);
}

/** The long form of a dimension: its value and what is said about it. */
function isStated(value: object): boolean {
  return 'value' in value && Object.keys(value).every((key) => STATED.has(key));
}

const STATED: ReadonlySet<string> = new Set(['value', 'plusMinus', 'sigmas', 'source', 'note']);

function sharePath(path: string, key: string): string {
  if (key === 'value') return path;
  return `${path} ${key === 'plusMinus' ? '±' : key}`;
}
