/** Tries parts of the shelf in a plan, one after the other, and says how each would sit. */
import {
  addPart,
  createSolver,
  type Finding,
  findMounts,
  type MountCandidate,
  type PartSpec,
  type Placement,
  type Plan,
  placePlan,
  replacePart,
  type Scene,
  type Solution,
} from '../../geometry';
import type { SeatVerdict } from './shelf-request';

/** Free mounts that are tried for one that works, before the first is taken with its faults. */
const MOUNTS_TRIED = 3;
/** Sentences of a kind that are worth sending. */
const MOST_SENTENCES = 3;

type Trial = Pick<SeatVerdict, 'seat' | 'where' | 'placement'> & {
  readonly plan: Plan;
  /** Id of the part on trial in that plan. */
  readonly id: string;
  /** Parts that would lose their mount. */
  readonly loosened: readonly string[];
};

/** Keeps the solved plan and looks again only at what a trial changes. */
export class SeatTrials {
  private readonly solver = createSolver();
  private readonly plan: Plan;
  private readonly scene: Scene;
  /** Ids of what is said about the plan as it is. */
  private readonly knownFindings: ReadonlySet<string>;

  constructor(plan: Plan) {
    this.plan = plan;
    this.scene = placePlan(plan);
    this.knownFindings = new Set(this.solver.solve(this.scene).findings.map(({ id }) => id));
  }

  /** How the part would sit: in the place of `selected` when that is of its kind, else where there is room. */
  judge(spec: PartSpec, selected: string | undefined): SeatVerdict {
    let trials: readonly Trial[];
    try {
      trials = this.trialsOf(spec, selected);
    } catch {
      return { seat: 'unbuildable', where: '', fits: false, faults: [], covers: [] };
    }
    let first: SeatVerdict | undefined;
    for (const trial of trials) {
      const verdict = this.tryOut(trial);
      if (verdict.fits) return verdict;
      first ??= verdict;
    }
    return first ?? { seat: 'none', where: '', fits: false, faults: [], covers: [] };
  }

  private trialsOf(spec: PartSpec, selected: string | undefined): readonly Trial[] {
    if (selected !== undefined && this.plan.parts[selected]?.spec.kind === spec.kind)
      return [this.inPlaceOf(selected, spec)];
    const mounts = findMounts(this.scene, spec);
    const free = distinctMounts(mounts.filter(({ takenBy }) => takenBy === undefined));
    if (free.length > 0)
      return free
        .slice(0, MOUNTS_TRIED)
        .map(({ placement, label }) => this.added(spec, placement, 'mount', label));
    const givesWay = this.partOfKind(spec, mounts);
    if (givesWay !== undefined) return [this.inPlaceOf(givesWay, spec)];
    return spec.kind === 'enclosure' ? [this.added(spec, { at: [0, 0, 0] }, 'free', '')] : [];
  }

  private partOfKind(spec: PartSpec, mounts: readonly MountCandidate[]): string | undefined {
    if (spec.kind === 'enclosure') return this.scene.parts.find(({ kind }) => kind === 'enclosure')?.id;
    return mounts.find(({ takenBy = '' }) => this.plan.parts[takenBy]?.spec.kind === spec.kind)?.takenBy;
  }

  private added(spec: PartSpec, placement: Placement, seat: SeatVerdict['seat'], where: string): Trial {
    const { plan, id } = addPart(this.plan, spec, placement);
    return { seat, where, placement, plan, id, loosened: [] };
  }

  private inPlaceOf(id: string, spec: PartSpec): Trial {
    const { plan, loosened } = replacePart(this.plan, id, spec);
    return { seat: 'replace', where: this.labelOf(id), plan, id, loosened };
  }

  private labelOf(id: string): string {
    return this.scene.parts[this.scene.indexById.get(id) ?? -1]?.label ?? id;
  }

  private tryOut({ plan, id, seat, where, placement, loosened }: Trial): SeatVerdict {
    const solution = this.solver.solve(placePlan(plan));
    const isNew = (finding: Finding) =>
      finding.parts.includes(id) || loosened.length > 0 || !this.knownFindings.has(finding.id);
    const faults = [
      ...loosened.map((part) => `${this.labelOf(part)} would stand without a mount.`),
      ...solution.findings
        .filter(({ weight }) => weight === 'fault')
        .filter(isNew)
        .map(sentenceOf),
    ];
    return {
      seat,
      where,
      ...(placement ? { placement } : {}),
      fits: faults.length === 0,
      ...tightestOf(solution, id),
      faults: faults.slice(0, MOST_SENTENCES),
      covers: solution.findings
        .filter(({ kind }) => kind === 'covered')
        .filter(({ id: finding }) => !this.knownFindings.has(finding))
        .map(sentenceOf)
        .slice(0, MOST_SENTENCES),
    };
  }
}

/** A part that may stand on a mount by two feet is tried there once. */
function distinctMounts(candidates: readonly MountCandidate[]): readonly MountCandidate[] {
  const seen = new Set<string>();
  return candidates.filter(({ placement: { on, mount } }) => {
    const key = `${on}/${mount}`;
    return !seen.has(key) && seen.add(key);
  });
}

const sentenceOf = ({ sentence }: Finding) => sentence;

/** Clearances come tightest first. */
function tightestOf({ clearances }: Solution, id: string): Pick<SeatVerdict, 'tightest'> {
  const found = clearances.find(({ parts }) => parts.includes(id));
  if (!found) return {};
  const { millimetres, wanted, title, towards, from } = found;
  const between = from.part === id ? towards : `${title} ${towards}`;
  return { tightest: { millimetres, wanted, between } };
}
