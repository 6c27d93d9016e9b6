/** From what was read on a sheet to what the form takes: lists are begun, and a depth goes where the style has it. */
import type { PartKind, ReadValue } from '../../../geometry';
import { asList, asObject, type Draft, isQuantityDraft } from '../part-form/draft';
import type { FilledValue } from '../part-form/fill-draft';

export interface SheetFill {
  readonly values: readonly FilledValue[];
  /** Read, but the form has no place for it. */
  readonly homeless: readonly ReadValue[];
}

const LONGEST_NOTE = 200;

/** Fields that decide which others there are come first. */
const FIRST: ReadonlySet<string> = new Set(['style', 'form', 'fan.count']);

export function filledValues(
  kind: PartKind,
  draft: Draft,
  read: readonly ReadValue[],
  text: string,
): SheetFill {
  const ordered = [
    ...read.filter(({ path }) => FIRST.has(path)),
    ...read.filter(({ path }) => !FIRST.has(path)),
  ];
  const style = styleOf(draft, read);
  const counted = Number(read.find(({ path }) => path === 'fan.count')?.value ?? 0);
  const fans = counted || asList(asObject(draft).fans).length || 1;
  const values: FilledValue[] = [];
  const homeless: ReadValue[] = [];
  const lists = new Set<string>();
  for (const one of ordered) {
    const group = one.path.split('.')[0] ?? '';
    if (one.path.startsWith('limits.')) homeless.push(one);
    else if (group === 'power' || group === 'plugs' || group === 'patterns') lists.add(group);
    else if (kind === 'cooler' && (one.path === 'depth' || group === 'fan')) {
      const placed = coolerFills(style, one, fans, text);
      if (placed.length > 0) values.push(...placed);
      else homeless.push(one);
    } else values.push(plain(one, one.path, text));
  }
  for (const list of lists) values.push(...listFills(list, read, text));
  if (kind === 'card') values.push(...socketPlaces(read));
  return { values, homeless };
}

function plain({ value, plusMinus, span }: ReadValue, path: string, text: string): FilledValue {
  return { path, value, plusMinus, source: 'sheet', note: phraseOf(text, span) };
}

/** The phrase on one line, as the note of the value. */
export function phraseOf(
  text: string,
  { start, end }: { readonly start: number; readonly end: number },
): string {
  return text.slice(start, end).replaceAll(/\s+/g, ' ').trim().slice(0, LONGEST_NOTE);
}

function styleOf(draft: Draft, read: readonly ReadValue[]): string {
  const stated = read.find(({ path }) => path === 'style')?.value;
  return String(stated ?? asObject(draft).style ?? '');
}

function coolerFills(style: string, one: ReadValue, fans: number, text: string): readonly FilledValue[] {
  if (style !== 'tower') {
    if (one.path === 'depth') return [plain(one, 'depth', text)];
    return style === 'top flow' && one.path !== 'fan.count' ? [plain(one, one.path, text)] : [];
  }
  if (one.path === 'depth') return [{ path: 'stacks', value: 1 }, plain(one, 'stacks.0.depth', text)];
  if (one.path === 'fan.count') return [{ path: 'fans', value: Number(one.value) }];
  const key = one.path === 'fan.size' ? 'size' : 'thickness';
  return Array.from({ length: fans }, (_, index) => plain(one, `fans.${index}.${key}`, text));
}

const SOCKET_EDGE = 'power.edge';
/** Common practice, no source: sockets on the long edge stand two thirds along it, side by side. */
const ALONG_TOP = 2 / 3;
const SOCKET_PITCH_MM = 24;
/** Fields that stand in where the sheet is silent, mm: a usual long card, and the height of a full-height one. */
const USUAL = { length: 270, height: 111 } as const;

/** The edge is the person's answer; the place along it is on no sheet, and is filled in as an assumption. */
function socketPlaces(read: readonly ReadValue[]): readonly FilledValue[] {
  const edge = read.find(({ path }) => path === SOCKET_EDGE)?.value;
  if (edge === undefined) return [];
  const number = (path: 'length' | 'height') =>
    Number(read.find((one) => one.path === path)?.value ?? USUAL[path]);
  const sockets = read
    .filter(({ path }) => path.startsWith('power.') && path !== SOCKET_EDGE)
    .reduce((sum, { value }) => sum + Number(value), 0);
  const middle = edge === 'top' ? number('length') * ALONG_TOP : number('height') / 2;
  const note = 'not on the pasted sheet; a usual place';
  return Array.from({ length: sockets }, (_, index) => index).flatMap((index): readonly FilledValue[] => {
    const at = Math.round(middle + (index - (sockets - 1) / 2) * SOCKET_PITCH_MM);
    return [
      { path: `power.${index}.edge`, value: edge },
      { path: `power.${index}.at`, value: at, source: 'assumed', note },
    ];
  });
}

/** A list is begun anew: which edge a socket faces is on no sheet, and another part's would be a guess. */
function listFills(list: string, read: readonly ReadValue[], text: string): readonly FilledValue[] {
  const entries = read.filter(({ path }) => path.startsWith(`${list}.`));
  const named = entries
    .filter(({ path }) => path !== SOCKET_EDGE)
    .map((one) => ({ one, name: one.path.slice(list.length + 1) }));
  if (list === 'power') {
    const sockets = named.flatMap(({ one, name }) => Array.from({ length: Number(one.value) }, () => name));
    const types = sockets.map((type, index): FilledValue => ({ path: `power.${index}.type`, value: type }));
    return [...emptied(list, sockets.length), ...types];
  }
  const fills = named.flatMap(({ one, name }, index): readonly FilledValue[] =>
    list === 'patterns'
      ? [{ path: `patterns.${index}`, value: name }]
      : [
          { path: `plugs.${index}.type`, value: name },
          { ...plain(one, `plugs.${index}.count`, text), source: undefined, note: undefined },
        ],
  );
  return [...emptied(list, named.length), ...fills];
}

function emptied(list: string, length: number): readonly FilledValue[] {
  return [
    { path: list, value: 0 },
    { path: list, value: length },
  ];
}

/**
 * What a new part keeps of the part it was started from is nobody's statement about it: such figures become
 * assumptions, and the name is left to be typed.
 */
export function keptAsAssumed(draft: Draft, read: readonly ReadValue[]): readonly FilledValue[] {
  const names = ['maker', 'model'].filter((name) => !read.some(({ path }) => path === name));
  return [...names.map((path): FilledValue => ({ path, value: '' })), ...assumed(draft, [])];
}

function assumed(draft: Draft, path: readonly string[]): readonly FilledValue[] {
  if (typeof draft !== 'object') return [];
  if (isQuantityDraft(draft)) {
    if (draft.value === '' || draft.source === 'standard') return [];
    const note = 'not on the pasted sheet';
    return [{ path: path.join('.'), value: draft.value, source: 'assumed', note }];
  }
  const entries: readonly (readonly [string, Draft])[] = Array.isArray(draft)
    ? draft.map((item: Draft, index) => [String(index), item] as const)
    : Object.entries(asObject(draft));
  return entries.flatMap(([key, inner]) => assumed(inner, [...path, key]));
}
