/** The quantity fields of one spec, with what the spec says in each. */
import type { Dimension } from '../dimension';
import type { PartSpec } from '../part-spec';
import { type FieldNode, partFieldTree, type QuantityFacts } from './field-tree';

export type FieldPath = readonly (string | number)[];

/** One quantity field of a spec, filled or left empty. */
export interface QuantityField extends QuantityFacts {
  readonly path: FieldPath;
  /** 'Interior, tray to side panel'; entries of lists go by their own name or by their number. */
  readonly title: string;
  /** Undefined where the sheet is silent. */
  readonly stated: Dimension | undefined;
}

/** In the order of the schema. Fields of absent objects are listed too; those of absent lists and pairs are not. */
export function quantityFields(spec: PartSpec): readonly QuantityField[] {
  const found: QuantityField[] = [];
  collect(partFieldTree(), spec, [], [], found);
  return found;
}

function collect(
  node: FieldNode,
  value: unknown,
  path: FieldPath,
  above: readonly string[],
  found: QuantityField[],
): void {
  const titles = node.title === undefined ? above : [...above, node.title];
  switch (node.type) {
    case 'quantity':
      found.push({ path, title: joined(titles), ...node.facts, stated: value as Dimension | undefined });
      return;
    case 'object':
      for (const [key, inner] of node.members)
        collect(inner, member(value, key), [...path, key], titles, found);
      return;
    case 'list':
      if (!Array.isArray(value)) return;
      value.forEach((entry: unknown, index) => {
        const name = `${node.title ?? ''} ${nameOfEntry(entry, index)}`.trim();
        collect(node.entry, entry, [...path, index], [...above, name], found);
      });
      return;
    case 'tuple':
      if (value === undefined) return;
      node.items.forEach((inner, index) => {
        if (inner) collect(inner, member(value, index), [...path, index], titles, found);
      });
      return;
    case 'choice': {
      const branch = node.branches.get(member(value, node.by));
      if (branch) collect(branch, value, path, titles, found);
    }
  }
}

/** Entries are called by their label, by their place, or by their number. */
function nameOfEntry(entry: unknown, index: number): string {
  const name = member(entry, 'id') ?? member(entry, 'place');
  return typeof name === 'string' ? name : `${index + 1}`;
}

function joined(titles: readonly string[]): string {
  return titles.map((title, index) => (index === 0 ? title : lowered(title))).join(', ');
}

function lowered(title: string): string {
  return /^[A-Z][a-z]/.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
}

function member(value: unknown, key: string | number): unknown {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
  return (value as Readonly<Record<string | number, unknown>>)[key];
}
