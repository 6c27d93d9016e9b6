/** In what two sheets of the same kind of part differ, field by field, as a person reads it. */
import type { PartSpec } from '../../geometry';

export interface SpecDifference {
  /** 'interior.trayToSide' */
  readonly path: string;
  /** 'Interior, tray to side' */
  readonly title: string;
  /** As words; undefined where the field is empty. */
  readonly before: string | undefined;
  readonly after: string | undefined;
}

/** Whether two sheets say the same, whatever the order of their fields. */
export function isSameSpec(a: PartSpec, b: PartSpec): boolean {
  return a === b || differencesOf(a, b).length === 0;
}

/** In the order of the fields of `before`, then those that are new. */
export function differencesOf(before: PartSpec, after: PartSpec): readonly SpecDifference[] {
  const [old, young] = [leavesOf(before), leavesOf(after)];
  const paths = new Set([...old.keys(), ...young.keys()]);
  return [...paths].flatMap((path) => {
    const [one, other] = [old.get(path), young.get(path)];
    return one === other ? [] : [{ path, title: titleOf(path), before: one, after: other }];
  });
}

/** Every field with what it says; a dimension with its band and source is one field. */
function leavesOf(value: unknown, path = '', leaves = new Map<string, string>()): Map<string, string> {
  if (typeof value !== 'object' || value === null) {
    if (value !== undefined) leaves.set(path, String(value));
  } else if ('value' in value) leaves.set(path, statedText(value));
  else
    for (const [key, inner] of Object.entries(value))
      leavesOf(inner, path === '' ? key : `${path}.${key}`, leaves);
  return leaves;
}

function statedText(stated: object): string {
  const { value, plusMinus, source, note } = stated as Readonly<Record<string, unknown>>;
  const more = [source, note].filter((text) => text !== undefined).join(', ');
  return `${value}${plusMinus === undefined ? '' : ` ± ${plusMinus}`}${more ? ` (${more})` : ''}`;
}

function titleOf(path: string): string {
  const words = path
    .split('.')
    .map((step) => (/^\d+$/.test(step) ? String(Number(step) + 1) : step))
    .join(', ')
    .replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return words.charAt(0).toUpperCase() + words.slice(1);
}
