/** Reads tables of parts (CSV and its relatives: semicolons, tabs, bars), row by row. */
import Papa from 'papaparse';
import { decimalMarkOfCells, factorOfUnit, type PartKind } from '../../../geometry';
import { fileLimits } from './file-limits';
import { type FileReading, RowCollector, refusedFile, tooLarge } from './part-file';
import { type Column, matchColumns, soleKind } from './table-columns';
import { type TablePlan, takeRow } from './table-rows';

/** What a person is shown before anything is read: the columns, what they seem to be, and the first rows. */
export interface TableLook {
  readonly columns: readonly Column[];
  readonly sample: readonly (readonly string[])[];
  readonly kind: PartKind | undefined;
  /** The table says the kind of each row itself. */
  readonly hasKinds: boolean;
  readonly plan: TablePlan;
  /** The second line holds units and no part. */
  readonly hasUnitRow: boolean;
}

const LOOKED_AT = 200_000;
const SAMPLE_ROWS = 5;
/** Rows between two words about how far it has got. */
const ROWS_A_WORD = 500;

/** Looks at the beginning of a table. A text answer says why it is none. */
export function lookAtTable(text: string, kind: PartKind | undefined): TableLook | string {
  if (text.length > fileLimits.bytes) return tooLarge(text.length);
  const start = text.slice(0, LOOKED_AT);
  const delimiter = delimiterOf(start);
  const { data } = Papa.parse<string[]>(start, { delimiter, skipEmptyLines: 'greedy', preview: 200 });
  const [headers, ...all] = data;
  // The last line may be cut off in the middle.
  const rows = start.length < text.length ? all.slice(0, -1) : all;
  if (!headers || rows.length === 0) return 'has no row under its header';
  if (headers.length > fileLimits.columns)
    return `has ${headers.length} columns; ${fileLimits.columns} are the most`;
  const first = matchColumns(headers, kind);
  const kindAt = first.findIndex(({ path }) => path === 'kind');
  const said = kindAt < 0 ? kind : soleKind(rows.map((row) => row[kindAt] ?? ''));
  const hasUnitRow = isUnitRow(rows[0] ?? []);
  const matched = matchColumns(headers, said);
  const columns = hasUnitRow ? withUnits(matched, rows[0] ?? []) : matched;
  // Tables of this page begin with the kind and write their numbers with points.
  const own =
    kindAt === 0 && columns.every(({ path, header }) => path !== undefined && header.startsWith(path));
  const cells = rows.flat().filter((cell) => cell.length < 40);
  return {
    columns,
    sample: rows.slice(hasUnitRow ? 1 : 0, SAMPLE_ROWS),
    kind: said,
    hasKinds: kindAt >= 0,
    hasUnitRow,
    plan: { columns, kind: said, delimiter, mark: own ? '.' : decimalMarkOfCells(cells) },
  };
}

/** What parts the most columns of the header: labels seldom hold commas, but figures of half the world do. */
function delimiterOf(text: string): string {
  const columns = (delimiter: string) =>
    Papa.parse<string[]>(text, { delimiter, preview: 1 }).data[0]?.length ?? 0;
  return DELIMITERS.reduce((best, one) => (columns(one) > columns(best) ? one : best));
}

const DELIMITERS = [',', ';', '\t', '|'];

/** Every filled cell is the name of a unit. */
function isUnitRow(cells: readonly string[]): boolean {
  const filled = cells.map((cell) => cell.trim().replace(/^[([](.*)[)\]]$/, '$1')).filter(Boolean);
  return filled.length > 0 && filled.every((cell) => factorOfUnit(cell) !== undefined);
}

function withUnits(columns: readonly Column[], cells: readonly string[]): readonly Column[] {
  return columns.map((column, index) => {
    const unit = (cells[index] ?? '').trim().replace(/^[([](.*)[)\]]$/, '$1');
    return unit === '' ? column : { ...column, unit };
  });
}

/** Reads the whole table. Never throws. `onShare` hears how far it has got, from 0 to 1. */
export function readTable(
  text: string,
  plan: TablePlan,
  hasUnitRow: boolean,
  onShare: (share: number) => void = () => {},
): FileReading {
  if (text.length > fileLimits.bytes) return refusedFile(tooLarge(text.length));
  const rows = new RowCollector();
  let line = 0;
  let done = 0;
  let refused: string | undefined;
  Papa.parse<string[]>(text, {
    delimiter: plan.delimiter,
    step: ({ data: cells }, parser) => {
      line += 1;
      const isHead = line === 1 || (line === 2 && hasUnitRow);
      const isBlank = cells.every((cell) => cell.trim() === '');
      if (!isHead && !isBlank) takeRow(plan, line, cells, rows);
      done += cells.reduce((sum, cell) => sum + cell.length + 1, 0);
      if (line % ROWS_A_WORD === 0) onShare(Math.min(1, done / text.length));
      if (rows.rows > fileLimits.parts) {
        refused = `holds more than ${fileLimits.parts} rows`;
        parser.abort();
      }
    },
  });
  return refused === undefined ? rows.reading() : refusedFile(refused);
}
