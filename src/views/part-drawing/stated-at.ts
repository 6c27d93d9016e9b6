import type { Dimension, PartSpec } from '../../../geometry';

/** What the sheet says at a dotted path; undefined where it is silent. */
export function statedAt(spec: PartSpec, path: string): Dimension | undefined {
  let value: unknown = spec;
  for (const key of path.split('.')) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Readonly<Record<string, unknown>>)[key];
  }
  if (typeof value === 'number') return value;
  const isStated = typeof value === 'object' && value !== null && 'value' in value;
  // The spec has been read by its schema: an object with a value is a stated dimension.
  return isStated ? (value as Dimension) : undefined;
}
