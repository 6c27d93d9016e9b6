/** A limit in the cells of a table. */
import type { MountEnvelope } from '../../../geometry';

type Limit = MountEnvelope['limits'][number];

/** Roundoff that must not cost a tenth. */
const ROUNDOFF_TENTHS = 1e-6;

/** To a tenth, downwards, so that what is promised does fit. */
export function atMost(millimetres: number): string {
  return (Math.floor(millimetres * 10 + ROUNDOFF_TENTHS) / 10).toFixed(1);
}

/** The largest nominal value; undefined where nothing binds within 1 m. */
export function largest({ ownSheet, steps }: Limit): number | undefined {
  return ownSheet?.value ?? steps[0]?.value;
}

export function bindingWords({ ownSheet, steps, staysNear }: Limit): string {
  if (ownSheet) return ownSheet.reason;
  const [first] = steps;
  if (!first) return 'nothing binds within 1 m';
  const gap = first.wanted > 0 ? `, ${first.wanted.toFixed(1)} wanted` : '';
  const near = staysNear === undefined ? '' : `; ${staysNear} stays too near`;
  return `${first.binds}${gap}${near}`;
}

/** What one gains by taking away what binds: '367.9: the front upper fan grille'. */
export function behindWords({ ownSheet, steps }: Limit): string {
  if (ownSheet) return '';
  const [first, next] = steps;
  if (!first) return '';
  return next ? `${atMost(next.value)}: ${next.binds}` : 'nothing within 1 m';
}
