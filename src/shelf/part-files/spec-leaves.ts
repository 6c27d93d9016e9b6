/** The single values a spec is made of, read from the schema of all parts: what a table may have columns for. */
import { z } from 'zod';
import { type FieldFacts, type PartKind, partKinds, partSpecSchema } from '../../../geometry';

export interface Leaf {
  /** 'length', 'power.*.type': a star stands for the place in a list. */
  readonly path: string;
  readonly type: 'quantity' | 'number' | 'boolean' | 'text' | 'choice';
  readonly title: string;
  readonly unit: string | undefined;
  /** What a choice may be, as written in the spec. */
  readonly options: readonly (string | number)[];
}

type Schema = z.core.$ZodType;

const known = new Map<PartKind, ReadonlyMap<string, Leaf>>();

/** By path. Variants of a kind (styles of coolers, forms of drives) are together. */
export function leavesOf(kind: PartKind): ReadonlyMap<string, Leaf> {
  const before = known.get(kind);
  if (before) return before;
  const leaves = new Map<string, Leaf>();
  for (const option of partSpecSchema.options) {
    if (kindsOf(option).includes(kind)) collect(option, '', [], leaves);
  }
  known.set(kind, leaves);
  return leaves;
}

/** The leaf a path with numbers leads to: 'power.0.type'. */
export function leafAt(kind: PartKind, path: string): Leaf | undefined {
  return leavesOf(kind).get(path.replaceAll(/\.\d+(?=\.|$)/g, '.*'));
}

export function isKind(text: string): text is PartKind {
  return partKinds.some((kind) => kind === text);
}

function kindsOf(schema: Schema): readonly unknown[] {
  if (schema instanceof z.ZodDiscriminatedUnion) return schema.options.flatMap(kindsOf);
  const kind: unknown = schema instanceof z.ZodObject ? schema.shape.kind : undefined;
  return kind instanceof z.ZodLiteral ? [kind.value] : [];
}

function collect(schema: Schema, path: string, titles: readonly string[], leaves: Map<string, Leaf>): void {
  const { inner, facts } = unwrapped(schema);
  const title = facts.title;
  const above = title === undefined ? titles : [...titles, title];
  const add = (type: Leaf['type'], options: Leaf['options'] = []) => {
    const before = leaves.get(path);
    const leaf: Leaf = { path, type, title: above.join(', ') || path, unit: facts.unit, options };
    // A variant's own constant ('tower') is one of the choices of all of them.
    leaves.set(path, before ? { ...before, options: [...before.options, ...options] } : leaf);
  };
  if (facts.quantity) add('quantity');
  else if (inner instanceof z.ZodNumber) add('number');
  else if (inner instanceof z.ZodBoolean) add('boolean');
  else if (inner instanceof z.ZodString) add('text');
  else if (inner instanceof z.ZodObject)
    for (const [key, value] of Object.entries(inner.shape))
      collect(value, path ? `${path}.${key}` : key, above, leaves);
  else if (inner instanceof z.ZodArray) collect(inner.element, `${path}.*`, above, leaves);
  else if (inner instanceof z.ZodTuple)
    for (const item of inner.def.items.slice(0, 1)) collect(item, `${path}.*`, above, leaves);
  else if (inner instanceof z.ZodDiscriminatedUnion)
    for (const option of inner.options) collect(option, path, above, leaves);
  else add('choice', optionsOf(inner));
}

function unwrapped(schema: Schema): {
  readonly inner: Schema;
  readonly facts: Facts;
} {
  let inner = schema;
  let facts = factsOf(inner);
  while (inner instanceof z.ZodOptional) {
    inner = inner.unwrap();
    facts = { ...factsOf(inner), ...facts };
  }
  return { inner, facts };
}

type Facts = Partial<FieldFacts> & { readonly quantity?: boolean };

function factsOf(schema: Schema): Facts {
  const meta: unknown = z.globalRegistry.get(schema);
  return typeof meta === 'object' && meta !== null ? meta : {};
}

function optionsOf(schema: Schema): readonly (string | number)[] {
  if (schema instanceof z.ZodEnum) return schema.options;
  if (schema instanceof z.ZodUnion) return schema.options.flatMap(optionsOf);
  const value: unknown = schema instanceof z.ZodLiteral ? schema.value : undefined;
  return typeof value === 'string' || typeof value === 'number' ? [value] : [];
}
