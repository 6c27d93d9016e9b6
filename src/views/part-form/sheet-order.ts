/**
 * What a form asks first, in the order in which sheets state it: how long, how high, how thick, what it plugs into.
 * Fields that must be filled in are asked first in any case; the rest is folded away.
 */
import type { PartKind } from '../../../geometry';
import type { Field, ObjectField } from './describe-schema';

const firstAsked: Readonly<Record<PartKind, readonly string[]>> = {
  enclosure: [
    'maker',
    'model',
    'interior',
    'board',
    'supplyBays',
    'fanSeats',
    'radiatorRails',
    'riser',
    'walls',
  ],
  board: ['maker', 'model', 'form', 'width', 'depth', 'socket', 'memory', 'slots'],
  processor: ['maker', 'model', 'socket', 'class', 'width', 'depth', 'height'],
  cooler: [
    'maker',
    'model',
    'height',
    'width',
    'depth',
    'stacks',
    'fans',
    'fan',
    'finBottom',
    'tubes',
    'patterns',
  ],
  memory: ['maker', 'model', 'form', 'height', 'thickness', 'capacity'],
  drive: ['maker', 'model', 'length', 'height', 'above', 'sink', 'capacity'],
  card: [
    'maker',
    'model',
    'length',
    'height',
    'thickness',
    'bracketSlots',
    'interface',
    'power',
    'sustained',
  ],
  supply: ['maker', 'model', 'form', 'depth', 'watts', 'modular', 'plugs'],
  fan: ['maker', 'model', 'size', 'thickness', 'speed', 'flow', 'pressure', 'sound'],
  radiator: ['maker', 'model', 'row', 'length', 'width', 'thickness'],
  adapter: ['maker', 'model', 'opening', 'takes', 'thickness', 'boardHeight', 'height'],
};

export type KeyedField = readonly [key: string, field: Field];

export interface AskedFields {
  readonly first: readonly KeyedField[];
  readonly more: readonly KeyedField[];
}

/** The fields of a part, those that matter first in the order of a sheet, the others as the schema has them. */
export function askedFields(kind: PartKind, { fields }: ObjectField): AskedFields {
  const order = firstAsked[kind];
  const rank = ([key]: KeyedField): number => {
    const place = order.indexOf(key);
    return place < 0 ? order.length : place;
  };
  const isFirst = ([key, field]: KeyedField): boolean => order.includes(key) || !field.optional;
  return {
    first: fields.filter(isFirst).toSorted((a, b) => rank(a) - rank(b)),
    more: fields.filter((entry) => !isFirst(entry)),
  };
}

/** Of kinds with long lists only what is no entry of a list stands on the drawing at all times. */
const crowded: ReadonlySet<PartKind> = new Set<PartKind>(['enclosure', 'board']);

/** Whether the dimension of a field stands on the drawing whether or not the field is in hand. */
export function isAlwaysDrawn(kind: PartKind, path: string): boolean {
  const [key = '', ...rest] = path.split('.');
  if (key === 'walls' || !firstAsked[kind].includes(key)) return false;
  return !crowded.has(kind) || (rest.every((step) => !/^\d+$/.test(step)) && path !== 'board.standoff');
}
