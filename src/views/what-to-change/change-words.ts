/** What a change does, in words. */
import type { Change, FindingChange, MarginChange } from '../../../geometry';
import { formatMillimetres } from '../../ui/numbers';

/** '2.7 → 3.4 mm'; undefined where the change has no number. */
export function gapWords({ before, after, solves }: Change): string | undefined {
  if (before === undefined) return undefined;
  const from = formatMillimetres(before);
  if (after === undefined) return solves ? `was ${from} mm` : undefined;
  return `${from} → ${formatMillimetres(after)} mm`;
}

/** A margin that a person would want to hear of: it shrinks, and what is left is less than wanted or not much more. */
export function isWorthSaying({ before, after, wanted }: MarginChange): boolean {
  if (after === undefined) return false;
  return (before === undefined || after < before) && after < wanted + COMFORTABLE_MM;
}

/** With so much more than wanted nobody minds, mm. */
const COMFORTABLE_MM = 10;

/** 'Cooler to rear fan 43.1 → 41.0' */
export function marginWords({ title, before, after }: MarginChange): string {
  const from = before === undefined ? 'new' : formatMillimetres(before);
  const to = after === undefined ? 'gone' : formatMillimetres(after);
  return `${title}: ${from} → ${to} mm`;
}

/** So many findings that go as well are told one by one. */
const TOLD = 2;

/** Findings that go besides the one asked about: faults and cautions in words, all others as a number. */
export function alsoGone(
  fixed: readonly FindingChange[],
  target: string,
): { readonly told: readonly FindingChange[]; readonly more: number } {
  const others = fixed.filter(({ id }) => id !== target && id !== `tight/${target}`);
  const told = others.filter(({ weight }) => weight !== 'note').slice(0, TOLD);
  return { told, more: others.length - told.length };
}
