/** From the cells of a row to a part: numbers in their units, yes and no, choices; what is wrong is said by column. */
import { type DecimalMark, factorOfUnit, type PartKind, readNumberCell } from '../../../geometry';
import { fileLimits } from './file-limits';
import type { RowCollector, RowFault } from './part-file';
import { isKind, type Leaf, leafAt } from './spec-leaves';
import type { Column } from './table-columns';

export interface TablePlan {
  readonly columns: readonly Column[];
  /** For tables that do not say it in a column. */
  readonly kind: PartKind | undefined;
  readonly mark: DecimalMark;
  readonly delimiter: string;
}

type Faults = Omit<RowFault, 'row'>[];

export function takeRow(plan: TablePlan, row: number, cells: readonly string[], rows: RowCollector): void {
  if (cells.length > fileLimits.columns) {
    rows.refuse(row, [
      { field: '', message: `has ${cells.length} columns; ${fileLimits.columns} are the most` },
    ]);
    return;
  }
  const kindColumn = plan.columns.findIndex(({ path }) => path === 'kind');
  const said = kindColumn < 0 ? plan.kind : (cells[kindColumn] ?? '').trim().toLowerCase();
  if (said === undefined || !isKind(said)) {
    rows.refuse(row, [
      { field: 'kind', message: said ? `is no kind of part, met '${said.slice(0, 40)}'` : 'is missing' },
    ]);
    return;
  }
  const faults: Faults = [];
  const root: Branch = { kind: said };
  plan.columns.forEach((column, index) => {
    const cell = (cells[index] ?? '').trim();
    if (column.path === undefined || column.path === 'kind' || cell === '') return;
    const leaf = leafAt(said, column.path);
    // A table of many kinds has columns that are not for this one; they are empty there, or a slip.
    if (!leaf) {
      faults.push({
        field: column.header || column.path,
        message: `a ${said} has no such field, met '${cell.slice(0, 40)}'`,
      });
      return;
    }
    const value = cellValue(cell, leaf, column, plan.mark);
    if (typeof value === 'object') faults.push({ field: column.header || column.path, message: value.fault });
    else place(root, column, value, faults);
  });
  if (faults.length > 0) rows.refuse(row, faults);
  else rows.take(row, settled(root), (path) => headerAt(plan, path));
}

/** Complaints about a field go by its column; those about a field no column has, by the field. */
function headerAt({ columns }: TablePlan, path: string): string {
  return columns.find((column) => column.path === path && column.share === 'value')?.header ?? path;
}

type Cell = string | number | boolean | { readonly fault: string };

function cellValue(cell: string, leaf: Leaf, column: Column, mark: DecimalMark): Cell {
  if (cell.length > fileLimits.cell)
    return { fault: `has ${cell.length} characters; ${fileLimits.cell} are the most` };
  // Cells that a spreadsheet would take for a formula carry a quote in front, also those this page writes.
  const text = /^'[=+\-@\t\r]/.test(cell) ? cell.slice(1) : cell;
  if (column.share === 'source' || column.share === 'note') return text;
  switch (leaf.type) {
    case 'text':
      return text;
    case 'boolean':
      return yesOrNo(text);
    case 'choice':
      return choice(text, leaf);
    default:
      return number(text, column, mark);
  }
}

function yesOrNo(text: string): Cell {
  if (/^(yes|true|1|ja|oui|s[ií]|x|wahr|vrai)$/i.test(text)) return true;
  if (/^(no|false|0|nein|non|-|falsch|faux)$/i.test(text)) return false;
  return { fault: `must be yes or no, met '${text.slice(0, 40)}'` };
}

function choice(text: string, { options }: Leaf): Cell {
  const plain = (one: string) => one.toLowerCase().replaceAll(/[\s-]/g, '');
  const bare = plain(text).replace(/(mm|inch|in|")$/, '');
  const found = options.find(
    (option) => plain(String(option)) === plain(text) || plain(String(option)) === bare,
  );
  return found ?? { fault: `must be one of ${options.slice(0, 12).join(', ')}, met '${text.slice(0, 40)}'` };
}

function number(text: string, { unit }: Column, mark: DecimalMark): Cell {
  const read = readNumberCell(text, mark);
  if (read === undefined) return { fault: `must be a number, met '${text.slice(0, 40)}'` };
  if (read === 'ambiguous') return { fault: `can be read in two ways, met '${text.slice(0, 40)}'` };
  const name = read.unit ?? unit;
  const factor = name === undefined ? 1 : factorOfUnit(name);
  if (factor === undefined) return { fault: `is in a unit this page does not know, met '${name ?? ''}'` };
  return Number((read.value * factor).toFixed(6));
}

interface Branch {
  [key: string]: Branch | string | number | boolean | undefined;
}

/** Objects have no inherited keys here, so no path can reach anything but what is put in. */
function place(
  root: Branch,
  { path = '', share }: Column,
  value: string | number | boolean,
  faults: Faults,
): void {
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let branch = root;
  for (const key of keys) {
    const inner = branch[key] ?? Object.create(null);
    if (typeof inner !== 'object') {
      faults.push({ field: path, message: 'stands under a field that has a value of its own' });
      return;
    }
    branch[key] = inner;
    branch = inner;
  }
  const before = branch[last];
  if (share === 'value') {
    if (typeof before === 'object') before[VALUE] = value;
    else branch[last] = value;
    return;
  }
  const long: Branch = typeof before === 'object' ? before : Object.create(null);
  if (before !== undefined && typeof before !== 'object') long[VALUE] = before;
  long[share] = value;
  branch[last] = long;
}

const VALUE = 'value';

/** Branches whose keys are all numbers become lists; a hole in a list stays one and is named by the schema. */
function settled(branch: Branch): unknown {
  const entries = Object.entries(branch).map(
    ([key, value]) => [key, typeof value === 'object' ? settled(value) : value] as const,
  );
  if (entries.length > 0 && entries.every(([key]) => /^\d{1,3}$/.test(key))) {
    const list: unknown[] = [];
    for (const [, value] of entries.toSorted(([a], [b]) => Number(a) - Number(b))) list.push(value);
    return list;
  }
  return Object.fromEntries(entries);
}
