/**
 * What a form holds while it is being filled in: the texts a person typed, as typed, so that nothing is lost when
 * something is wrong. A draft made from a value and turned back gives an equal value.
 */
import { readNumberEntry } from '../../ui/number-entry';
import { type Field, type ObjectField, type VariantsField, variantValue } from './describe-schema';

/** A dimension under edit. `stated` keeps the long form of one that had it. */
export interface QuantityDraft {
  readonly value: string;
  readonly plusMinus: string;
  readonly source: string | undefined;
  readonly note: string | undefined;
  readonly stated: boolean;
}

export interface ObjectDraft {
  readonly [key: string]: Draft;
}

/** Undefined where an optional group or an untouched tick is absent. */
export type Draft = string | boolean | undefined | QuantityDraft | readonly Draft[] | ObjectDraft;

export function isQuantityDraft(draft: Draft): draft is QuantityDraft {
  return typeof draft === 'object' && 'stated' in draft && typeof draft.stated === 'boolean';
}

export function asObject(draft: Draft): ObjectDraft {
  return typeof draft === 'object' && !Array.isArray(draft) && !isQuantityDraft(draft)
    ? (draft as ObjectDraft)
    : {};
}

export function asList(draft: Draft): readonly Draft[] {
  return Array.isArray(draft) ? draft : [];
}

const BLANK_QUANTITY: QuantityDraft = {
  value: '',
  plusMinus: '',
  source: undefined,
  note: undefined,
  stated: false,
};

export function blankDraft(field: Field): Draft {
  switch (field.type) {
    case 'quantity':
      return BLANK_QUANTITY;
    case 'boolean':
      return field.optional ? undefined : false;
    case 'object':
      return field.optional ? undefined : filledObject(field);
    case 'list':
      return field.optional ? undefined : [];
    case 'tuple':
      return field.optional ? undefined : field.items.map(blankDraft);
    case 'variants':
      return field.options[0] ? filledObject(field.options[0]) : {};
    default:
      return '';
  }
}

/** The group as it is when it is there, whether or not it may be absent. */
export function filledDraft(field: Field): Draft {
  return blankDraft({ ...field, optional: false });
}

function filledObject(field: ObjectField): ObjectDraft {
  return Object.fromEntries(
    field.fields.map(([key, inner]) => [
      key,
      inner.type === 'constant' ? String(inner.value) : blankDraft(inner),
    ]),
  );
}

export function toDraft(field: Field, value: unknown): Draft {
  if (value === undefined) return blankDraft({ ...field, optional: true });
  switch (field.type) {
    case 'quantity':
      return quantityDraft(value);
    case 'boolean':
      return value === true;
    case 'object':
      return objectDraft(field, value);
    case 'variants':
      return objectDraft(optionOf(field, String(entry(value, field.by))), value);
    case 'list':
      return Array.isArray(value) ? value.map((item) => toDraft(field.item, item)) : [];
    case 'tuple':
      return field.items.map((item, index) => toDraft(item, entry(value, String(index))));
    default:
      return String(value);
  }
}

function quantityDraft(value: unknown): QuantityDraft {
  if (typeof value !== 'object') return { ...BLANK_QUANTITY, value: String(value) };
  const text = (key: string) => (entry(value, key) === undefined ? undefined : String(entry(value, key)));
  return {
    value: text('value') ?? '',
    plusMinus: text('plusMinus') ?? '',
    source: text('source'),
    note: text('note'),
    stated: true,
  };
}

function objectDraft(field: ObjectField, value: unknown): ObjectDraft {
  return Object.fromEntries(field.fields.map(([key, inner]) => [key, toDraft(inner, entry(value, key))]));
}

function entry(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[key] : undefined;
}

export function optionOf(field: VariantsField, name: string): ObjectField {
  const option = field.options.find((one) => variantValue(field, one) === name) ?? field.options[0];
  if (!option) throw new TypeError('a choice of variants has at least one');
  return option;
}

/** The value to be judged by the schema. What is no number stays the text it is, and the schema names the field. */
export function toValue(field: Field, draft: Draft): unknown {
  switch (field.type) {
    case 'constant':
      return field.value;
    case 'quantity':
      return quantityValue(field, draft);
    case 'number':
      return numberOrText(draft, field.facts.unit === 'mm');
    case 'boolean':
      return draft;
    case 'choice':
      return draft === '' ? undefined : (field.options.find((option) => String(option) === draft) ?? draft);
    case 'object':
      return draft === undefined ? undefined : objectValue(field, asObject(draft));
    case 'variants':
      return objectValue(optionOf(field, String(asObject(draft)[field.by])), asObject(draft));
    case 'list':
      return draft === undefined ? undefined : asList(draft).map((item) => toValue(field.item, item));
    case 'tuple':
      return draft === undefined
        ? undefined
        : field.items.map((item, index) => toValue(item, asList(draft)[index]));
    default:
      return draft === '' ? undefined : draft;
  }
}

function objectValue(field: ObjectField, draft: ObjectDraft): unknown {
  const entries = field.fields.map(([key, inner]) => [key, toValue(inner, draft[key])] as const);
  return Object.fromEntries(entries.filter(([, value]) => value !== undefined));
}

function quantityValue(field: Field, draft: Draft): unknown {
  if (!isQuantityDraft(draft)) return undefined;
  const { source, note, stated } = draft;
  const isLength = field.facts.unit === 'mm';
  const value = numberOrText(draft.value, isLength);
  const plusMinus = numberOrText(draft.plusMinus, isLength);
  if (value === undefined && plusMinus === undefined && !stated) return undefined;
  // A bare number already means 'sheet': it stays bare until something more is said.
  const isBare = !stated && plusMinus === undefined && (source === undefined || source === 'sheet');
  if (isBare) return value;
  if (value === undefined && plusMinus === undefined) return undefined;
  return {
    value,
    ...(plusMinus === undefined ? {} : { plusMinus }),
    ...(source === undefined ? {} : { source }),
    ...(note === undefined ? {} : { note }),
  };
}

function numberOrText(draft: Draft, isLength: boolean): number | string | undefined {
  if (typeof draft !== 'string' || draft.trim() === '') return undefined;
  const entry = readNumberEntry(draft, isLength);
  return 'value' in entry ? entry.value : draft;
}

/** Another variant, with what both have in common kept as typed. */
export function switchVariant(field: VariantsField, draft: ObjectDraft, name: string): ObjectDraft {
  const before = optionOf(field, String(draft[field.by]));
  const after = optionOf(field, name);
  const typeBefore = new Map(before.fields.map(([key, inner]) => [key, inner.type]));
  const blank = filledObject(after);
  return Object.fromEntries(
    after.fields.map(([key, inner]) => {
      const isShared = inner.type !== 'constant' && typeBefore.get(key) === inner.type;
      return [key, isShared ? draft[key] : blank[key]];
    }),
  );
}
