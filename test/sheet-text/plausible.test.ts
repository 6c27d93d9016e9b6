import { describe, expect, test } from 'vitest';
import { nominal, type PartSpec } from '../../geometry';
import { isPlausible } from '../../geometry/sheet-text/plausible';
import { everyShelfEntry } from '../views/every-shelf-entry';

/** The figures of a spec that a sheet states in the same words. */
function figuresOf(spec: PartSpec): readonly (readonly [path: string, value: number])[] {
  return Object.entries(spec).flatMap(([path, value]: [string, unknown]) => {
    if (typeof value === 'number') return [[path, value] as const];
    const isLong =
      typeof value === 'object' && value !== null && 'value' in value && typeof value.value === 'number';
    return isLong ? [[path, nominal(value as { readonly value: number })] as const] : [];
  });
}

describe('what the reader takes for possible', () => {
  test.each(everyShelfEntry)('includes %s', (_, spec) => {
    // A module's length is one of a closed list, which the reader looks up.
    const isModule = spec.kind === 'drive' && spec.form === 'M.2';
    for (const [path, value] of figuresOf(spec)) {
      if (isModule && path === 'length') continue;
      expect(isPlausible(spec.kind, path, value), `${path} ${value}`).toBe(true);
    }
  });
});
