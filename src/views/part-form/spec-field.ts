/** The form of a kind of part, read from the schema of all parts, and the words for what is wrong in it. */
import { z } from 'zod';
import { describeIssues, type PartKind, type PartSpec, partSpecSchema } from '../../../geometry';
import { readNumberEntry } from '../../ui/number-entry';
import { describeSchema, type Field } from './describe-schema';
import { asObject, type Draft, isQuantityDraft, optionOf, toValue } from './draft';

export interface FieldFault {
  /** 'fans.0.thickness' */
  readonly path: string;
  /** 'Fans 1, Thickness' */
  readonly title: string;
  readonly message: string;
}

export type FormResult =
  | { readonly ok: true; readonly spec: PartSpec }
  | { readonly ok: false; readonly faults: readonly FieldFault[] };

const fields = new Map<PartKind, Field>();

export function specField(kind: PartKind): Field {
  const known = fields.get(kind);
  if (known) return known;
  const schema = partSpecSchema.options.find((option) => kindsOf(option).includes(kind));
  if (!schema) throw new TypeError(`no schema for a ${kind}`);
  const field = describeSchema(schema);
  fields.set(kind, field);
  return field;
}

function kindsOf(schema: z.core.$ZodType): readonly unknown[] {
  if (schema instanceof z.ZodDiscriminatedUnion) return schema.options.flatMap(kindsOf);
  if (!(schema instanceof z.ZodObject)) return [];
  const kind: unknown = schema.shape.kind;
  return kind instanceof z.ZodLiteral ? [kind.value] : [];
}

/** Judges a draft by the schema. */
export function readForm(field: Field, draft: Draft): FormResult {
  const value = toValue(field, draft);
  const parsed = partSpecSchema.safeParse(value, { reportInput: true });
  if (parsed.success) return { ok: true, spec: parsed.data };
  const faults = describeIssues(parsed.error.issues, value).map(({ path, message }) => ({
    path,
    title: fieldTitle(field, draft, path.split('.')),
    message: entryFault(field, draft, path.split('.')) ?? message,
  }));
  return { ok: false, faults };
}

/** What the reader of numbers says about the text at a path, where it could not read it. */
function entryFault(field: Field, draft: Draft, path: readonly string[]): string | undefined {
  const [key, ...rest] = path;
  if (key !== undefined && field.type !== 'quantity') {
    const step = stepInto(field, draft, key);
    return step && entryFault(step.field, step.draft, rest);
  }
  if (field.type !== 'quantity' && field.type !== 'number') return undefined;
  const text = isQuantityDraft(draft) ? draft[key === 'plusMinus' ? 'plusMinus' : 'value'] : draft;
  if (typeof text !== 'string' || text.trim() === '') return undefined;
  const entry = readNumberEntry(text, field.facts.unit === 'mm');
  return 'fault' in entry ? entry.fault : undefined;
}

/** The titles along a path, as the form shows them. */
function fieldTitle(field: Field, draft: Draft, path: readonly string[]): string {
  const [key, ...rest] = path;
  if (key === undefined || key === '') return '';
  const step = stepInto(field, draft, key);
  if (!step) return '';
  const deeper = fieldTitle(step.field, step.draft, rest);
  return [step.title, deeper].filter(Boolean).join(', ');
}

function stepInto(
  field: Field,
  draft: Draft,
  key: string,
): { readonly field: Field; readonly draft: Draft; readonly title: string } | undefined {
  if (field.type === 'variants')
    return stepInto(optionOf(field, String(asObject(draft)[field.by])), draft, key);
  if (field.type === 'object') {
    const inner = field.fields.find(([name]) => name === key)?.[1];
    return inner && { field: inner, draft: asObject(draft)[key], title: inner.facts.title };
  }
  const index = Number(key);
  const item = field.type === 'list' ? field.item : field.type === 'tuple' ? field.items[index] : undefined;
  if (!item) return undefined;
  const title = field.type === 'list' ? String(index + 1) : item.facts.title || String(index + 1);
  return { field: item, draft: Array.isArray(draft) ? draft[index] : undefined, title };
}
