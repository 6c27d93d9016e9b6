/** What changed between two answers: a fan added, turned round or slowed, another part, another room. */
import type { Estimate, EstimateUnit, Standing } from './estimate';

export interface EstimateChange {
  readonly id: string;
  readonly title: string;
  readonly unit: EstimateUnit;
  readonly before: number | undefined;
  readonly after: number | undefined;
  readonly standingBefore: Standing | undefined;
  readonly standingAfter: Standing | undefined;
}

/** Smaller changes than this share of the larger figure are none. */
const WORTH_NAMING = 1e-6;

/** Estimates that are new, gone, or not what they were, in the order of `after`, then what is gone. */
export function compareEstimates(
  before: readonly Estimate[],
  after: readonly Estimate[],
): readonly EstimateChange[] {
  const old = new Map(before.map((estimate) => [estimate.id, estimate]));
  const kept = new Set(after.map(({ id }) => id));
  const changed = after.flatMap((estimate) => {
    const earlier = old.get(estimate.id);
    return isSame(earlier, estimate) ? [] : [changeOf(estimate, earlier, estimate)];
  });
  const gone = before.filter(({ id }) => !kept.has(id)).map((one) => changeOf(one, one, undefined));
  return [...changed, ...gone];
}

function isSame(before: Estimate | undefined, after: Estimate): boolean {
  if (before === undefined || before.standing !== after.standing) return false;
  if (before.value === undefined || after.value === undefined) return before.value === after.value;
  return (
    Math.abs(before.value - after.value) <=
    WORTH_NAMING * Math.max(Math.abs(before.value), Math.abs(after.value))
  );
}

function changeOf(
  { id, title, unit }: Estimate,
  before: Estimate | undefined,
  after: Estimate | undefined,
): EstimateChange {
  return {
    id,
    title,
    unit,
    before: before?.value,
    after: after?.value,
    standingBefore: before?.standing,
    standingAfter: after?.standing,
  };
}
