/** Which field the head of a table's column names: the same words, rules and units as for a pasted sheet. */
import type { PartKind } from '../parts/part-spec';
import { labelOf } from './clauses';
import { matches } from './figure-rules';
import { foldText } from './fold-text';
import { itemsOf } from './items';
import { kindRules } from './kinds/kind-rules';
import { tokensOf } from './tokens';
import { type SheetUnit, unitNamed } from './units';
import type { Atom } from './words/atoms';

const LONGEST_HEADER = 120;

/** Words that name a field by themselves. */
const named: readonly (readonly [atom: Atom, path: string])[] = [
  ['maker', 'maker'],
  ['model', 'model'],
  ['form', 'form'],
  ['efficiency', 'grade'],
  ['modular', 'modular'],
  ['interface', 'interface'],
  ['type', 'style'],
];

export interface HeaderField {
  readonly path: string;
  /** Name of the unit in the header, when it has one. */
  readonly unit: string | undefined;
}

/** Undefined when the words are not known, or fit more than one field. */
export function fieldOfHeader(header: string, kind: PartKind): HeaderField | undefined {
  const text = header.slice(0, LONGEST_HEADER).replaceAll('_', ' ').trim();
  const { words, unit } = withoutUnit(text);
  const { tokens } = tokensOf(words, foldText(words));
  const label = labelOf(itemsOf(tokens, undefined).items);
  if (!label.isKnown || label.atoms.length === 0) return undefined;
  const atoms = new Set(label.atoms);
  const [only, more] = label.atoms;
  const plain = more === undefined ? named.find(([atom]) => atom === only) : undefined;
  if (plain) return { path: plain[1], unit: undefined };
  const { own, figures } = kindRules[kind];
  const found = figures.filter(
    (rule) =>
      rule.paths.length > 0 &&
      rule.all.length > 0 &&
      matches(rule, atoms, own) &&
      (unit === undefined || rule.measure === unit.measure),
  );
  const paths = new Set(
    found.filter(({ all }) => all.length === found[0]?.all.length).flatMap((rule) => rule.paths.slice(0, 1)),
  );
  const [path] = paths;
  const byUnit = figures.find(
    ({ all, measure, ...rule }) =>
      all.length === 0 && measure === unit?.measure && matches({ all, measure, ...rule }, atoms, own),
  );
  const chosen = path ?? byUnit?.paths[0];
  return chosen === undefined ? undefined : { path: chosen, unit: unit?.name };
}

/** 'Weight (kg)', 'Noise dB(A)', 'RPM': the words, and the unit behind them or in them. */
function withoutUnit(text: string): { readonly words: string; readonly unit: SheetUnit | undefined } {
  const whole = unitNamed(foldText(text));
  if (whole) return { words: text, unit: whole };
  for (const met of text.matchAll(/[ ([]/g)) {
    const rest = text.slice(met.index).trim();
    const unit =
      unitNamed(foldText(rest)) ?? unitNamed(foldText(rest.replace(/^[([](.*)[)\]]$/, '$1').trim()));
    if (unit && met.index > 0) return { words: text.slice(0, met.index), unit };
  }
  return { words: text, unit: undefined };
}

/** How many of the field's unit are one of the unit with this name; undefined for a name that is no unit. */
export function factorOfUnit(name: string): number | undefined {
  const unit = unitNamed(foldText(name).trim());
  return unit && unit.measure !== 'foreign' ? unit.factor : undefined;
}
