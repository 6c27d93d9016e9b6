/** What a change is to put right: a finding, or a clearance smaller than wanted. */
import type { Clearance, Finding, Solution } from '../finding';

export interface Target {
  /** Ids of the parts it is between. */
  readonly parts: readonly string[];
  readonly finding: Finding | undefined;
  readonly clearance: Clearance | undefined;
}

/** By the id of a finding or of a clearance; undefined when the solution has neither. */
export function targetOf(solution: Solution, id: string): Target | undefined {
  const finding = solution.findings.find((candidate) => candidate.id === id);
  const tight = id.startsWith('tight/') ? id.slice('tight/'.length) : id;
  const clearance = solution.clearances.find((candidate) => candidate.id === tight);
  const parts = finding?.parts ?? clearance?.parts;
  return parts && { parts, finding, clearance };
}

export interface Outcome {
  readonly solves: boolean;
  readonly after: number | undefined;
}

/** Roundoff of a gap that is kept exactly, mm. */
const KEPT_MM = 1e-6;

/** How the target stands in another solution. */
export function outcomeIn(solution: Solution, { finding, clearance }: Target): Outcome {
  const still = finding && solution.findings.find(({ id }) => id === finding.id);
  const gap = clearance && solution.clearances.find(({ id }) => id === clearance.id);
  const isTooSmall = gap !== undefined && gap.millimetres < gap.wanted - KEPT_MM;
  return {
    solves: finding ? still === undefined : !isTooSmall,
    after: still?.millimetres ?? gap?.millimetres,
  };
}

/** mm of the target as it stands. */
export function standingOf({ finding, clearance }: Target): number | undefined {
  return finding?.millimetres ?? clearance?.millimetres;
}
