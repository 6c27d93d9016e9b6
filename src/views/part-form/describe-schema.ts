/** Reads a zod schema into a description a form can be drawn from: titles, units, datums, bounds, choices. */
import { z } from 'zod';
import type { FieldFacts } from '../../../geometry';

interface Described {
  readonly facts: FieldFacts;
  readonly optional: boolean;
}

export type ScalarField = Described &
  (
    | { readonly type: 'quantity' }
    | { readonly type: 'number' }
    | { readonly type: 'text'; readonly long: boolean }
    | { readonly type: 'boolean' }
    | { readonly type: 'choice'; readonly options: readonly (string | number)[] }
  );

export type ObjectField = Described & {
  readonly type: 'object';
  readonly fields: readonly (readonly [key: string, field: Field])[];
};
export type ListField = Described & { readonly type: 'list'; readonly item: Field };
export type TupleField = Described & { readonly type: 'tuple'; readonly items: readonly Field[] };
/** Objects told apart by one field: the styles of a cooler, the forms of a drive. */
export type VariantsField = Described & {
  readonly type: 'variants';
  readonly by: string;
  readonly options: readonly ObjectField[];
};
/** A literal: not typed by anyone, but part of the value. */
export type ConstantField = Described & { readonly type: 'constant'; readonly value: string | number };

export type Field = ScalarField | ObjectField | ListField | TupleField | VariantsField | ConstantField;

/** Texts that may be longer than this get a field of several lines. */
const LONG_TEXT = 200;

type Schema = z.core.$ZodType;

/** Throws a TypeError for a kind of schema that specs do not use. */
export function describeSchema(schema: Schema, key = ''): Field {
  let inner = schema;
  let optional = false;
  let meta = metaOf(inner);
  while (inner instanceof z.ZodOptional) {
    optional = true;
    inner = inner.unwrap();
    meta = { ...metaOf(inner), ...meta };
  }
  const facts: FieldFacts = { title: titleFromKey(key), ...meta };
  return describeInner(inner, { facts, optional }, meta.quantity === true);
}

function metaOf(schema: Schema): Partial<FieldFacts> & { readonly quantity?: boolean } {
  const meta: unknown = z.globalRegistry.get(schema);
  return typeof meta === 'object' && meta !== null ? meta : {};
}

function describeInner(schema: Schema, described: Described, quantity: boolean): Field {
  if (quantity) return { ...described, type: 'quantity' };
  if (schema instanceof z.ZodNumber) return { ...described, type: 'number' };
  if (schema instanceof z.ZodBoolean) return { ...described, type: 'boolean' };
  if (schema instanceof z.ZodString)
    return { ...described, type: 'text', long: (schema.maxLength ?? 0) > LONG_TEXT };
  if (schema instanceof z.ZodLiteral) return { ...described, type: 'constant', value: literalValue(schema) };
  if (schema instanceof z.ZodObject)
    return {
      ...described,
      type: 'object',
      fields: Object.entries(schema.shape).map(([key, value]) => [key, describeSchema(value, key)]),
    };
  if (schema instanceof z.ZodArray)
    return { ...described, type: 'list', item: describeSchema(schema.element, '') };
  if (schema instanceof z.ZodTuple)
    return { ...described, type: 'tuple', items: schema.def.items.map((item) => describeSchema(item)) };
  if (schema instanceof z.ZodDiscriminatedUnion) return describeVariants(schema, described);
  if (schema instanceof z.ZodEnum || schema instanceof z.ZodUnion)
    return { ...described, type: 'choice', options: choicesOf(schema) };
  throw new TypeError(`no form for a schema of type ${schema._zod.def.type}`);
}

function describeVariants(schema: z.ZodDiscriminatedUnion, described: Described): VariantsField {
  const options = schema.options
    .map((option) => describeSchema(option))
    .filter((option) => option.type === 'object');
  return { ...described, type: 'variants', by: schema.def.discriminator, options };
}

function choicesOf(schema: Schema): readonly (string | number)[] {
  if (schema instanceof z.ZodEnum) return schema.options;
  if (schema instanceof z.ZodLiteral) return [literalValue(schema)];
  if (schema instanceof z.ZodUnion) return schema.options.flatMap(choicesOf);
  throw new TypeError(`no choice can be made from a schema of type ${schema._zod.def.type}`);
}

function literalValue(schema: z.ZodLiteral): string | number {
  const { value } = schema;
  if (typeof value === 'string' || typeof value === 'number') return value;
  throw new TypeError('a literal of a spec is a text or a number');
}

/** 'bracketSlots' becomes 'Bracket slots'. */
function titleFromKey(key: string): string {
  const words = key.replaceAll(/([A-Z])/g, ' $1').toLowerCase();
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The value of the field that tells a variant apart. */
export function variantValue({ by }: VariantsField, option: ObjectField): string {
  const field = option.fields.find(([key]) => key === by)?.[1];
  return field?.type === 'constant' ? String(field.value) : '';
}
