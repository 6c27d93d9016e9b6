/** Ways to put a finding or a small gap right, found by trying them on the model. */
import { withStatement } from '../../parts/stated-dimensions/change-dimension';
import { placePlan } from '../../plan/place-plan';
import type { Plan } from '../../plan/plan-schema';
import type { Solution } from '../finding';
import { lowerFirst } from '../part-names';
import { createSolver, type Solver } from '../solve';
import { studyOf } from '../stack-up/plan-study';
import { worthMeasuring } from '../stack-up/worth-measuring';
import { type Change, changeKinds, type FindingChange, type Proposal, type ShelfPart } from './change';
import { effectsOf } from './effects';
import { isCarrier, leavingOut, otherMounts, swaps } from './propose-elsewhere';
import { adjustments, moves, turnsAndSides } from './propose-in-place';
import { outcomeIn, standingOf, type Target, targetOf } from './target';

/** More ways than this are no help; of one kind with one part fewer still, so that others are seen too. */
const MOST_CHANGES = 12;
const MOST_ALIKE = 3;
/** Of each part so many from the shelf are tried, the most alike first, until enough of them put it right. */
const MOST_SWAPS = 10;
/** With so many ways that put it right and break nothing, no enclosure or board is tried. */
const ENOUGH_WAYS = 3;

/**
 * Changes that solve what is asked, or at least better it, ranked: those that solve before those that do not, then
 * those that cause least, then the least disturbing (of swaps the part most alike), then those that also fix most.
 * `id` is that of a finding or of a clearance of the plan; there are no ways for an id the plan does not have.
 */
export function waysToChange(plan: Plan, id: string, shelf: readonly ShelfPart[] = []): readonly Change[] {
  const study = studyOf(plan);
  const before = study.solution;
  const target = targetOf(before, id);
  if (!target) return [];
  const trials = new Trials(plan, before, target);
  const parts = target.parts.flatMap(
    (part) => study.scene.parts[study.scene.indexById.get(part) ?? -1] ?? [],
  );
  const changes: Change[] = parts.flatMap((part) => [
    ...adjustments(plan, part).flatMap((steps) => trials.firstThatSolves(steps) ?? []),
    ...trials.all(turnsAndSides(study.scene, plan, part)),
    ...trials.all(moves(plan, part, target)),
    ...trials.all(otherMounts(study.scene, plan, part)),
    ...trials.all(leavingOut(plan, part)),
    ...(isCarrier(part) ? [] : trials.someOf(swaps(plan, part, shelf))),
  ]);
  if (changes.filter(isClean).length < ENOUGH_WAYS) {
    for (const part of parts.filter(isCarrier)) changes.push(...trials.someOf(swaps(plan, part, shelf)));
  }
  const ranked = changes.filter((change) => change.solves || isBetter(change)).sort(byMerit);
  return withMeasuring(varied(ranked).slice(0, MOST_CHANGES), measuring(plan, target));
}

/** Puts it right and breaks nothing. */
function isClean({ solves, effects }: Change): boolean {
  return solves && countOf(effects.caused, 'fault') === 0;
}

/** A reading disturbs less than another part. */
function withMeasuring(ranked: readonly Change[], readings: readonly Change[]): readonly Change[] {
  const swap = ranked.findIndex(({ kind }) => changeKinds.indexOf(kind) > changeKinds.indexOf('measure'));
  const at = swap < 0 ? ranked.length : swap;
  return [...ranked.slice(0, at), ...readings, ...ranked.slice(at)];
}

function varied(ranked: readonly Change[]): readonly Change[] {
  const counts = new Map<string, number>();
  return ranked.filter(({ kind, part }) => {
    const key = `${kind}/${part}`;
    const count = (counts.get(key) ?? 0) + 1;
    counts.set(key, count);
    return count <= MOST_ALIKE;
  });
}

class Trials {
  private readonly before: Solution;
  private readonly target: Target;
  private readonly solver: Solver = createSolver();

  constructor(plan: Plan, before: Solution, target: Target) {
    this.before = before;
    this.target = target;
    this.solver.solve(placePlan(plan));
  }

  all(proposals: readonly Proposal[]): readonly Change[] {
    return proposals.map((proposal) => this.tried(proposal));
  }

  /** From the first on, until enough of them put it right or so many have been tried. */
  someOf(proposals: Iterable<Proposal>): readonly Change[] {
    const changes: Change[] = [];
    let clean = 0;
    for (const proposal of proposals) {
      const change = this.tried(proposal);
      changes.push(change);
      if (isClean(change)) clean++;
      if (clean === MOST_ALIKE || changes.length === MOST_SWAPS) break;
    }
    return changes;
  }

  /** The first of ever larger steps that solves, by halving; the best of them when none does. */
  firstThatSolves(steps: readonly Proposal[]): Change | undefined {
    const last = steps.at(-1);
    if (!last) return undefined;
    let best = this.tried(last);
    let [low, high] = [-1, steps.length - 1];
    while (best.solves && high - low > 1) {
      const middle = (low + high) >> 1;
      const proposal = steps[middle];
      const change = proposal && this.tried(proposal);
      if (change?.solves) [best, high] = [change, middle];
      else low = middle;
    }
    return best;
  }

  private tried({ kind, part, title, plan, size }: Proposal): Change {
    const solution = this.solver.solve(placePlan(plan));
    const { solves, after } = outcomeIn(solution, this.target);
    const effects = effectsOf(this.before, solution);
    return {
      id: `${kind}/${part}/${title}`,
      kind,
      part,
      title,
      size,
      plan,
      solves: solves && !effects.caused.some((caused) => isAsBad(caused, this.target)),
      before: standingOf(this.target),
      after,
      effects,
    };
  }
}

/** A fault, or no less than the target, between the very parts it is about. */
function isAsBad({ weight, parts }: FindingChange, target: Target): boolean {
  const isBetween = parts.every((part) => target.parts.includes(part));
  return isBetween && (weight === 'fault' || weight === target.finding?.weight);
}

function isBetter({ before, after }: Change): boolean {
  return before !== undefined && after !== undefined && after > before + BETTER_MM;
}

/** Less is no improvement, mm. */
const BETTER_MM = 1e-3;

function byMerit(a: Change, b: Change): number {
  return (
    Number(b.solves) - Number(a.solves) ||
    countOf(a.effects.caused, 'fault') - countOf(b.effects.caused, 'fault') ||
    countOf(a.effects.caused, 'caution') - countOf(b.effects.caused, 'caution') ||
    changeKinds.indexOf(a.kind) - changeKinds.indexOf(b.kind) ||
    a.size - b.size ||
    countOf(b.effects.fixed, 'fault') - countOf(a.effects.fixed, 'fault') ||
    countOf(b.effects.fixed, 'caution') - countOf(a.effects.fixed, 'caution') ||
    (b.after ?? 0) - (a.after ?? 0)
  );
}

function countOf(changes: Change['effects']['fixed'], weight: 'fault' | 'caution'): number {
  return changes.filter((change) => change.weight === weight).length;
}

/** Readings less likely to decide are not worth the caliper. */
const WORTH_CHANCE = 0.1;

/** Readings change no part, only what is known; they solve nothing by themselves. */
function measuring(plan: Plan, { clearance }: Target): readonly Change[] {
  const worth = clearance && worthMeasuring(plan, clearance.id);
  const last = worth?.measurements.at(-1);
  if (!worth || !last || last.chanceDecided < WORTH_CHANCE) return [];
  const parts = { ...plan.parts };
  for (const { part, path, nominal, measuredPlusMinus } of worth.measurements) {
    const entry = parts[part];
    if (!entry) continue;
    const reading = { value: nominal, plusMinus: measuredPlusMinus, source: 'measured' } as const;
    parts[part] = { ...entry, spec: withStatement(entry.spec, path, reading) };
  }
  const names = worth.measurements.map(({ partLabel, title }) => `${lowerFirst(title)} of ${partLabel}`);
  return [
    {
      id: `measure/${clearance.id}`,
      kind: 'measure',
      part: worth.measurements[0]?.part ?? last.part,
      title: `Measure ${names.join(', ')}: that leaves ±${last.leaves.toFixed(2)} mm`,
      plan: { ...plan, parts },
      size: worth.measurements.length,
      solves: false,
      before: clearance.millimetres,
      after: clearance.millimetres,
      effects: { fixed: [], caused: [], margins: [] },
    },
  ];
}
