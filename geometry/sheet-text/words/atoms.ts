/**
 * The ideas that the words of a sheet stand for. A label is a set of them: 'max. cooler height' is max, cooler and
 * height. `subjects` say of what, `measures` say which figure, `qualifiers` say under what condition.
 */
export const subjects = [
  'card',
  'cooler',
  'heatsink',
  'fan',
  'radiator',
  'block',
  'pump',
  'supply',
  'board',
  'memory',
  'module',
  'drive',
  'processor',
  'enclosure',
  'tube',
  'package',
  'bracket',
  'slot',
  'connector',
  'tray',
  'hole pattern',
] as const;

export const measures = [
  'length',
  'width',
  'height',
  'depth',
  'thickness',
  'diameter',
  'size',
  'weight',
  'power',
  'design power',
  'speed',
  'flow',
  'pressure',
  'noise',
  'temperature',
  'capacity',
  'form',
  'type',
  'modular',
  'efficiency',
  'interface',
  'maker',
  'model',
  'cable',
] as const;

export const qualifiers = [
  'max',
  'min',
  'idle',
  'load',
  'peak',
  'recommended',
  'behind',
  'clearance',
  'count',
  'front',
  'inner',
  'outer diameter',
  'outer',
  'kit',
  'each module',
  'gross',
  'with fan',
  'without fan',
  'with front fan',
  'without front fan',
  'with plugs',
  'without plugs',
  'with bracket',
  'without bracket',
  'with sink',
] as const;

export type Atom = (typeof subjects)[number] | (typeof measures)[number] | (typeof qualifiers)[number];

const measureAtoms: ReadonlySet<Atom> = new Set(measures);
const subjectAtoms: ReadonlySet<Atom> = new Set(subjects);

export function isMeasure(atom: Atom): boolean {
  return measureAtoms.has(atom);
}

export function isSubject(atom: Atom): boolean {
  return subjectAtoms.has(atom);
}
