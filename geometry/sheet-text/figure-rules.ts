/** The form of a rule: which set of ideas and which kind of unit make a figure a field's. */
import type { Measure } from './units';
import type { Atom } from './words/atoms';

export interface FigureRule {
  /** Fields it may be; which of them is told by what each can be. None: known, but no field asks for it. */
  readonly paths: readonly string[];
  /** 'count' is a bare number. */
  readonly measure: Exclude<Measure, 'foreign'> | 'count' | 'any';
  /** Every one of these must be said ... */
  readonly all: readonly Atom[];
  /** ... and nothing but these besides. */
  readonly also?: readonly Atom[];
  /** Not a fact: the question to put. */
  readonly ask?: string;
  /** A plain statement elsewhere settles the question; otherwise only an explicit one does. */
  readonly yieldsToAny?: boolean;
  readonly isExplicit?: boolean;
  /** In words, for the person; for a figure without a field: why it is left. */
  readonly because: string;
  /** These values only. */
  readonly among?: readonly number[];
  /** Value of the field for the figure: '240' for a row of 240 mm. */
  readonly asText?: boolean;
}

export interface KindRules {
  /** Ideas that any label of this kind may hold: the part itself. */
  readonly own: readonly Atom[];
  readonly figures: readonly FigureRule[];
}

export function field(
  path: string | readonly string[],
  measure: FigureRule['measure'],
  all: readonly Atom[],
  also: readonly Atom[],
  because: string,
  more: Partial<FigureRule> = {},
): FigureRule {
  return { paths: typeof path === 'string' ? [path] : path, measure, all, also, because, ...more };
}

/** Known for what it is, and left. */
export function ignored(all: readonly Atom[], also: readonly Atom[] | undefined, why: string): FigureRule {
  return { paths: [], measure: 'any', all, because: why, ...(also ? { also } : {}) };
}

export function matches(rule: FigureRule, atoms: ReadonlySet<Atom>, own: readonly Atom[]): boolean {
  if (!rule.all.every((atom) => atoms.has(atom))) return false;
  if (rule.also === undefined) return true;
  const { also } = rule;
  for (const atom of atoms) {
    if (!rule.all.includes(atom) && !also.includes(atom) && !own.includes(atom)) return false;
  }
  return true;
}

/** The same for all kinds, and looked at first. */
export const sharedIgnored: readonly FigureRule[] = [
  ignored(['package', 'weight'], undefined, 'the weight of the packing, not of the part'),
  ignored(['gross'], undefined, 'the weight with its packing'),
  ignored(['idle'], undefined, 'drawn when idle; the form asks for work'),
  ignored(['recommended', 'supply'], undefined, 'says which supply it wants; the form has no field for it'),
  ignored(['min'], undefined, 'the lowest figure; the form asks for the highest'),
];

export const massRule = field('mass', 'mass', ['weight'], ['max', 'outer'], 'weight of the part');
