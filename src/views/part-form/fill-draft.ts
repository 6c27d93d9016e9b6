/**
 * Fills a draft from outside the form: figures read from a pasted sheet, or worked out by another tool. What has no
 * place in this kind of part is handed back, never dropped in silence.
 */
import type { DimensionSource } from '../../../geometry';
import { type Field, type ListField, variantValue } from './describe-schema';
import { asList, asObject, type Draft, filledDraft, isQuantityDraft, optionOf, switchVariant } from './draft';

/** One figure for one field. */
export interface FilledValue {
  /** 'length', 'power.0.type', 'offset.1': names and places as in the spec. */
  readonly path: string;
  readonly value: number | string | boolean;
  readonly plusMinus?: number | undefined;
  readonly source?: DimensionSource | undefined;
  readonly note?: string | undefined;
}

export interface FilledDraft {
  readonly draft: Draft;
  /** Paths that this kind of part has no field for. */
  readonly unplaced: readonly string[];
}

/** Later values win. Groups and lists that were not there yet are begun; entries of lists must come in order. */
export function fillDraft(field: Field, draft: Draft, values: readonly FilledValue[]): FilledDraft {
  let next = draft;
  const unplaced: string[] = [];
  for (const value of values) {
    const filled = filledAt(field, next, value.path.split('.'), value);
    if (filled === undefined) unplaced.push(value.path);
    else next = filled.draft;
  }
  return { draft: next, unplaced };
}

type Filled = { readonly draft: Draft } | undefined;

function filledAt(field: Field, draft: Draft, path: readonly string[], value: FilledValue): Filled {
  const [key, ...rest] = path;
  if (key === undefined) return leafOf(field, draft, value);
  const begun = draft === undefined ? filledDraft(field) : draft;
  switch (field.type) {
    case 'variants': {
      const values = asObject(begun);
      if (key === field.by && rest.length === 0) {
        const known = field.options.some((option) => variantValue(field, option) === value.value);
        return known ? { draft: switchVariant(field, values, String(value.value)) } : undefined;
      }
      return filledAt(optionOf(field, String(values[field.by])), begun, path, value);
    }
    case 'object': {
      const values = asObject(begun);
      const inner = field.fields.find(([name]) => name === key)?.[1];
      const filled = inner && filledAt(inner, values[key], rest, value);
      return filled && { draft: { ...values, [key]: filled.draft } };
    }
    case 'list':
    case 'tuple': {
      const items = asList(begun);
      const index = /^\d+$/.test(key) ? Number(key) : -1;
      const inner = field.type === 'list' ? field.item : field.items[index];
      if (!inner || index < 0 || index > items.length) return undefined;
      const filled = filledAt(inner, items[index] ?? filledDraft(inner), rest, value);
      return filled && { draft: items.toSpliced(index, 1, filled.draft) };
    }
    default:
      return undefined;
  }
}

function leafOf(field: Field, draft: Draft, { value, plusMinus, source, note }: FilledValue): Filled {
  switch (field.type) {
    case 'quantity':
      if (typeof value === 'boolean') return undefined;
      return {
        draft: {
          value: String(value),
          plusMinus: plusMinus === undefined ? '' : String(plusMinus),
          source: source ?? (isQuantityDraft(draft) ? draft.source : undefined),
          note,
          stated: plusMinus !== undefined || source !== undefined || note !== undefined,
        },
      };
    case 'boolean':
      return typeof value === 'boolean' ? { draft: value } : undefined;
    case 'choice':
      return field.options.some((option) => String(option) === String(value))
        ? { draft: String(value) }
        : undefined;
    // A list takes a number: how many entries it is to have.
    case 'list':
      return isLength(value) ? { draft: resized(field, draft, value) } : undefined;
    case 'number':
    case 'text':
      return typeof value === 'boolean' ? undefined : { draft: String(value) };
    default:
      return undefined;
  }
}

const MOST_ENTRIES = 40;

function isLength(value: FilledValue['value']): value is number {
  return typeof value === 'number' && Number.isInteger(value) && value >= 0 && value <= MOST_ENTRIES;
}

/** The entries there are, cut or filled up with blank ones. */
function resized(field: ListField, draft: Draft, length: number): Draft {
  const items = asList(draft);
  return Array.from({ length }, (_, index) =>
    index < items.length ? items[index] : filledDraft(field.item),
  );
}
