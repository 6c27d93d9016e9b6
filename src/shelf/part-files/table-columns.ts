/** Which column of a table is which field: read from its header, changeable, and remembered for tables alike. */
import { fieldOfHeader, type PartKind } from '../../../geometry';
import { isKind, leafAt } from './spec-leaves';

/** What of a figure a column holds: '± ' and source stand in columns of their own. */
export type Share = 'value' | 'plusMinus' | 'source' | 'note';

export interface Column {
  readonly header: string;
  /** 'kind', 'length', 'power.0.type'; undefined for a column nobody asks for. */
  readonly path: string | undefined;
  readonly share: Share;
  /** Name of the unit its numbers are in, when it is not the field's own. */
  readonly unit: string | undefined;
}

const SHARES: Readonly<Record<string, Share>> = { '±': 'plusMinus', source: 'source', note: 'note' };

/** Headers as this page writes them come first, then the words that sheets use for a field of the kind. */
export function matchColumns(headers: readonly string[], kind: PartKind | undefined): readonly Column[] {
  const columns = headers.map((header) => matchHeader(header, kind));
  const taken = new Set<string>();
  return columns.map((column) => {
    if (column.path === undefined) return column;
    const key = `${column.path} ${column.share}`;
    // Two columns for one field: the first has it, and the person sees that the second has none.
    if (taken.has(key)) return { ...column, path: undefined };
    taken.add(key);
    return column;
  });
}

function matchHeader(header: string, kind: PartKind | undefined): Column {
  const text = header.replace(/^\ufeff/, '').trim();
  const none: Column = { header: text, path: undefined, share: 'value', unit: undefined };
  if (/^(kind|category|art|type of part|kategorie)$/i.test(text)) return { ...none, path: 'kind' };
  const { name, unit } = withoutUnit(text);
  const [first = '', second = ''] = splitShare(name);
  const share = SHARES[second] ?? 'value';
  if (isFieldPath(first, kind)) return { ...none, path: first, share, unit };
  if (kind === undefined) return none;
  const found = fieldOfHeader(text, kind);
  if (!found || !leafAt(kind, found.path)) return none;
  return { ...none, path: found.path, unit: found.unit };
}

/** 'length (in)' */
function withoutUnit(text: string): { readonly name: string; readonly unit: string | undefined } {
  const met = /^(.{1,80}?) ?[([]([^()[\]]{1,12})[)\]]$/.exec(text);
  return met ? { name: met[1] ?? text, unit: met[2] } : { name: text, unit: undefined };
}

function splitShare(name: string): readonly string[] {
  const at = name.lastIndexOf(' ');
  const last = name.slice(at + 1);
  return at > 0 && Object.hasOwn(SHARES, last) ? [name.slice(0, at), last] : [name];
}

/** A path of the kind, or of any kind when it is not known yet; nothing that could reach an object's own workings. */
function isFieldPath(text: string, kind: PartKind | undefined): boolean {
  if (!/^[a-z][A-Za-z0-9]*(\.[A-Za-z0-9]+){0,6}$/.test(text)) return false;
  return kind === undefined ? true : leafAt(kind, text) !== undefined;
}

/** The kind of every row, when a table says it in a column and all rows agree. */
export function soleKind(cells: readonly string[]): PartKind | undefined {
  const kinds = new Set(cells.map((cell) => cell.trim().toLowerCase()));
  const [only] = kinds;
  return kinds.size === 1 && only !== undefined && isKind(only) ? only : undefined;
}
