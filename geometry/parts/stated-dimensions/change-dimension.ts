/** The same spec with one dimension changed. */
import { type Dimension, withValue } from '../dimension';
import type { PartSpec } from '../part-spec';

/**
 * A new spec in which the dimension has the value, mm; band and source are kept, and an empty field becomes explicit.
 * The result is not held against the schema: values far off, and contradictions, are the caller's to refuse.
 * Throws RangeError when the path does not lead to a field.
 */
export function withDimension(spec: PartSpec, path: string, value: number): PartSpec {
  return changed(spec, path, (before) => (before === undefined ? value : withValue(before, value)));
}

/** The same with the whole statement replaced: value, band and source. */
export function withStatement(spec: PartSpec, path: string, dimension: Dimension): PartSpec {
  return changed(spec, path, () => dimension);
}

/** Several values at once. */
export function withDimensions(spec: PartSpec, values: ReadonlyMap<string, number>): PartSpec {
  let next = spec;
  for (const [path, value] of values) next = withDimension(next, path, value);
  return next;
}

type Change = (before: Dimension | undefined) => Dimension;

function changed(spec: PartSpec, path: string, change: Change): PartSpec {
  // The clone has the shape of the spec: only a leaf that already takes a dimension is set.
  return replaced(spec, path.split('.'), path, change) as PartSpec;
}

function replaced(value: unknown, steps: readonly string[], path: string, change: Change): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return change(asDimension(value, path));
  if (Array.isArray(value)) {
    const index = Number(step);
    if (!(index in value)) throw new RangeError(`nothing stands at ${path}`);
    return value.map((entry: unknown, at) => (at === index ? replaced(entry, rest, path, change) : entry));
  }
  if (value !== undefined && (typeof value !== 'object' || value === null))
    throw new RangeError(`${path} does not lead to a dimension`);
  const members = (value ?? {}) as Readonly<Record<string, unknown>>;
  return { ...members, [step]: replaced(members[step], rest, path, change) };
}

function asDimension(value: unknown, path: string): Dimension | undefined {
  if (value === undefined || typeof value === 'number') return value;
  if (typeof value === 'object' && value !== null && 'value' in value && typeof value.value === 'number')
    return value as Dimension;
  throw new RangeError(`${path} does not lead to a dimension`);
}
