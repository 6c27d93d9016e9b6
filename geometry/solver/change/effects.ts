/** What else a change does: findings that come and go, clearances that grow and shrink. */
import type { Clearance, Finding, Solution } from '../finding';
import type { Effects, FindingChange, MarginChange } from './change';

/** Clearances closer than this are the same, mm. */
const SAME_MM = 1e-6;

export function effectsOf(before: Solution, after: Solution): Effects {
  return {
    fixed: missing(before.findings, after.findings),
    caused: missing(after.findings, before.findings),
    margins: marginsOf(before.clearances, after.clearances),
  };
}

function missing(some: readonly Finding[], others: readonly Finding[]): readonly FindingChange[] {
  const known = new Set(others.map(({ id }) => id));
  return some
    .filter(({ id }) => !known.has(id))
    .map(({ id, weight, parts, sentence }) => ({ id, weight, parts, sentence }));
}

/** Tightest after the change first; those that are gone last. */
function marginsOf(before: readonly Clearance[], after: readonly Clearance[]): readonly MarginChange[] {
  const was = new Map(before.map((clearance) => [clearance.id, clearance]));
  const is = new Map(after.map((clearance) => [clearance.id, clearance]));
  return [...new Set([...is.keys(), ...was.keys()])].flatMap((id) => {
    const [old, now] = [was.get(id), is.get(id)];
    const shown = now ?? old;
    if (!shown || (old && now && Math.abs(old.millimetres - now.millimetres) < SAME_MM)) return [];
    return [
      {
        id,
        title: `${shown.title} ${shown.towards}`,
        before: old?.millimetres,
        after: now?.millimetres,
        wanted: shown.wanted,
      },
    ];
  });
}
