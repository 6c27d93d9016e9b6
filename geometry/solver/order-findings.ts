/** The one order of findings and clearances: by weight and size, then by id, so that equal scenes read the same. */
import type { Clearance, Finding, FindingKind, Weight } from './finding';

const WEIGHTS: Readonly<Record<Weight, number>> = { fault: 0, caution: 1, note: 2 };
const KINDS: Readonly<Record<FindingKind, number>> = {
  seat: 0,
  interference: 1,
  intrusion: 2,
  standoff: 3,
  covered: 4,
  tight: 5,
  tubes: 6,
  zone: 7,
};

/** Faults first; within a weight what is not in its place, then overlaps, then the rest; the deepest first. */
export function byImportance(a: Finding, b: Finding): number {
  return (
    WEIGHTS[a.weight] - WEIGHTS[b.weight] ||
    KINDS[a.kind] - KINDS[b.kind] ||
    (a.millimetres ?? 0) - (b.millimetres ?? 0) ||
    compareText(a.id, b.id)
  );
}

export function byTightness(a: Clearance, b: Clearance): number {
  return a.millimetres - b.millimetres || compareText(a.id, b.id);
}

function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
