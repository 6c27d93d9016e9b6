/** The quantity fields of all specs, read once from their schemas. */
import type { z } from 'zod';
import { z as zod } from 'zod';
import type { Unit } from '../dimension';
import { partSpecSchema } from '../part-spec';

export interface QuantityFacts {
  readonly unit: Unit | undefined;
  readonly datum: string | undefined;
  /** May be negative: a place along an axis, not a size. */
  readonly isPosition: boolean;
}

interface Titled {
  readonly title: string | undefined;
}

/** What a value of a schema may hold. Schemas without a quantity anywhere inside have no node. */
export type FieldNode = Titled &
  (
    | { readonly type: 'quantity'; readonly facts: QuantityFacts }
    | { readonly type: 'object'; readonly members: readonly (readonly [string, FieldNode])[] }
    | { readonly type: 'list'; readonly entry: FieldNode }
    | { readonly type: 'tuple'; readonly items: readonly (FieldNode | undefined)[] }
    | { readonly type: 'choice'; readonly by: string; readonly branches: ReadonlyMap<unknown, FieldNode> }
  );

let tree: FieldNode | undefined;

/** The tree of any part spec. */
export function partFieldTree(): FieldNode {
  tree ??= nodeOf(partSpecSchema, undefined);
  if (tree === undefined) throw new RangeError('no part has a quantity');
  return tree;
}

type Schema = z.core.$ZodType;

function nodeOf(schema: Schema, titleAbove: string | undefined): FieldNode | undefined {
  const meta = zod.globalRegistry.get(schema);
  const title = meta?.title ?? titleAbove;
  if (meta?.quantity === true) return { type: 'quantity', title, facts: factsOf(schema, meta) };
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case 'optional':
      return nodeOf(def.innerType, title);
    case 'object':
      return objectNode(def.shape, title);
    case 'array': {
      const entry = nodeOf(def.element, undefined);
      return entry && { type: 'list', title, entry };
    }
    case 'tuple': {
      const items = def.items.map((item) => nodeOf(item, undefined));
      return items.some((item) => item !== undefined) ? { type: 'tuple', title, items } : undefined;
    }
    case 'union':
      return 'discriminator' in def && typeof def.discriminator === 'string'
        ? choiceNode(def.options, def.discriminator, title)
        : undefined;
    default:
      return undefined;
  }
}

function objectNode(
  shape: Readonly<Record<string, Schema>>,
  title: string | undefined,
): FieldNode | undefined {
  const members = Object.entries(shape).flatMap(([key, inner]) => {
    const node = nodeOf(inner, undefined);
    return node ? [[key, withFallbackTitle(node, key)] as const] : [];
  });
  return members.length > 0 ? { type: 'object', title, members } : undefined;
}

/** Lists without a title go by their key. */
function withFallbackTitle(node: FieldNode, key: string): FieldNode {
  if (node.type !== 'list' || node.title !== undefined) return node;
  return { ...node, title: key.charAt(0).toUpperCase() + key.slice(1) };
}

function choiceNode(options: readonly Schema[], by: string, title: string | undefined): FieldNode {
  const branches = new Map<unknown, FieldNode>();
  for (const option of options) {
    const node = nodeOf(option, undefined);
    if (!node) continue;
    for (const literal of option._zod.propValues?.[by] ?? []) branches.set(literal, node);
  }
  return { type: 'choice', title, by, branches };
}

function factsOf(schema: Schema, meta: Readonly<Record<string, unknown>>): QuantityFacts {
  const { unit, datum } = meta;
  return {
    unit: typeof unit === 'string' ? (unit as Unit) : undefined,
    datum: typeof datum === 'string' ? datum : undefined,
    isPosition: leastOf(schema) < 0,
  };
}

/** A quantity is a union of the bare number and the long form; the number carries the bounds. */
function leastOf(schema: Schema): number {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  const bare = def.type === 'union' ? def.options[0] : undefined;
  return bare instanceof zod.ZodNumber && bare.minValue !== null ? bare.minValue : 0;
}
