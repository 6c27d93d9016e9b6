/** The largest or smallest value of a dimension that keeps every wanted gap, what binds there, and what binds next. */
import { partSpecSchema } from '../../parts/part-spec';
import { withDimension } from '../../parts/stated-dimensions/change-dimension';
import { dimensionAt } from '../../parts/stated-dimensions/stated-dimensions';
import type { Plan } from '../../plan/plan-schema';
import { leastFacingGap } from '../../space/facing-gap';
import type { FaceRef } from '../finding';
import { within } from '../part-names';
import { nameOf } from '../stack-up/pair-faces';
import { type PlanStudy, partAt, studyOf } from '../stack-up/plan-study';
import { wantedOf } from './constraints';
import type { Violation } from './first-violation';
import { facesOf, obstacleKey, obstacleOf } from './obstacle';
import {
  type FoundLimit,
  FURTHEST_MM,
  incurableOverlaps,
  LEAST_SIZE_MM,
  type LeaveOut,
  type Sense,
  searchLimit,
} from './search-limit';
import { valueWithTolerance } from './tolerant-limit';
import { type VariedScene, variedScene } from './varied-scene';

/** Something in the way, and how far the dimension can go before it. */
export interface LimitStep {
  /** Value of the dimension, mm. */
  readonly value: number;
  /** 'the front fan'. */
  readonly binds: string;
  /** Id of the part it belongs to. */
  readonly bindingPart: string;
  /** The face of the changing part, or of what it carries, and the face that binds. */
  readonly faces: readonly [FaceRef, FaceRef];
  /** The clearance rule whose wanted gap is kept; absent where the two would overlap. */
  readonly rule?: string;
  readonly wanted: number;
}

export interface Limit {
  readonly part: string;
  readonly path: string;
  readonly title: string;
  readonly datum: string | undefined;
  readonly sense: 'largest' | 'smallest';
  /** As the sheet states it, mm. */
  readonly standing: number;
  /** What binds first, then what binds when that is gone; empty when nothing does within 1 m. */
  readonly steps: readonly LimitStep[];
  /** Value that keeps the wanted gap whatever pieces one gets, mm; absent without a limit, or where none does. */
  readonly withTolerance?: number;
  /** What the part overlaps whichever value the dimension takes, in words. */
  readonly overlapsAnyway?: string;
  /** What it cannot get clear of without running into something else, in words; there are no steps then. */
  readonly neverClear?: string;
  /** Pieces that the dimension does not move and that are too near all the same, in words. */
  readonly staysNear?: string;
  /** The sheet contradicts itself before that: the last value that can be true, and the reason. */
  readonly ownSheet?: OwnLimit;
  readonly sentence: string;
}

export interface OwnLimit {
  readonly value: number;
  readonly reason: string;
}

/** What binds is followed this far: the first, the next behind it, and the one behind that. */
const MOST_STEPS = 3;

/** Throws RangeError when the plan has no such part or the part no such dimension. */
export function limitOf(plan: Plan, part: string, path: string, sense: Limit['sense'] = 'largest'): Limit {
  return limitIn(studyOf(plan), part, path, sense);
}

/** `mostSteps`: how far to follow what binds next; each step costs as much as the first. */
export function limitIn(
  study: PlanStudy,
  id: string,
  path: string,
  sense: Limit['sense'],
  mostSteps = MOST_STEPS,
): Limit {
  const scene = variedScene(study, id, path);
  const sign: Sense = sense === 'largest' ? 1 : -1;
  const all = boundsOf(scene, sign, mostSteps);
  const first = all[0]?.limit.cures ? all[0].limit : undefined;
  const steps = first ? all.filter(({ limit }) => limit.cures).map(stepFrom) : [];
  const { title, datum, nominal } = dimensionAt(partAt(study, scene.part).placed.spec, path);
  const ownSheet = ownLimit(scene, first?.value, sign);
  const tolerant = first && valueWithTolerance(scene, first, sign);
  const staysNear = first && pieceThatStaysNear(first);
  const overlapsAnyway = overlapOf(scene, sign);
  const neverClear = all[0] && !all[0].limit.cures ? stepFrom(all[0]).binds : undefined;
  return {
    part: id,
    path,
    title,
    datum,
    sense,
    standing: nominal,
    steps,
    ...(tolerant === undefined ? {} : { withTolerance: tolerant }),
    ...(overlapsAnyway === undefined ? {} : { overlapsAnyway }),
    ...(neverClear === undefined ? {} : { neverClear }),
    ...(staysNear === undefined ? {} : { staysNear }),
    ...(ownSheet === undefined ? {} : { ownSheet }),
    sentence: sentenceOf(title, sense, steps, { ownSheet, staysNear, overlapsAnyway, neverClear }),
  };
}

/** One limit with all that binds at it. */
interface Bound {
  readonly limit: FoundLimit;
  /** Numbers into `Scene.boxes`, one for each thing that would have to go. */
  readonly obstacles: readonly number[];
}

function boundsOf(scene: VariedScene, sense: Sense, mostSteps: number): readonly Bound[] {
  const found: Bound[] = [];
  const gone = new Set<string>();
  const leaveOut: LeaveOut = (at, constraint, from, to) =>
    gone.size > 0 && gone.has(obstacleKey(at, obstacleOf(at, constraint, from, to)));
  while (found.length < mostSteps) {
    const limit = searchLimit(scene, sense, leaveOut);
    if (!limit || limit.value < LEAST_SIZE_MM) break;
    const obstacles = new Map<string, number>();
    for (const { constraint, from, to } of bindingTogether(limit)) {
      const box = obstacleOf(limit.scene, constraint, from, to);
      const key = obstacleKey(limit.scene, box);
      if (!obstacles.has(key)) obstacles.set(key, box);
    }
    found.push({ limit, obstacles: [...obstacles.values()] });
    for (const key of obstacles.keys()) gone.add(key);
  }
  return found;
}

/** Faces in one plane bind together, mm. */
const ONE_PLANE_MM = 1e-6;

function bindingTogether({ violation, ahead }: FoundLimit): readonly Violation[] {
  return [violation, ...ahead.filter(({ t }) => Math.abs(t - violation.t) < ONE_PLANE_MM)];
}

function stepFrom({ limit: { scene, value, violation }, obstacles }: Bound): LimitStep {
  const { constraint, wanted } = violation;
  const faces = facesOf(scene, violation);
  const rule = constraint.gap?.rule.id;
  const names = new Set(obstacles.map((box) => within(nameOf(scene.study, box))));
  return {
    value,
    binds: [...names].join(' and '),
    bindingPart: faces[1].part,
    faces,
    ...(rule === undefined ? {} : { rule }),
    wanted,
  };
}

/** What the part overlaps whichever value the dimension takes. */
function overlapOf(scene: VariedScene, sense: Sense): string | undefined {
  const [pair] = incurableOverlaps(scene, sense);
  return pair && within(nameOf(scene.study, obstacleOf(scene, pair.constraint, pair.from, pair.to)));
}

/** Another box of the same part that keeps too small a gap to the binding one whatever the dimension. */
function pieceThatStaysNear({ scene, value, violation }: FoundLimit): string | undefined {
  const { constraint, t } = violation;
  if (t >= 0 || !constraint.gap) return undefined;
  const { packed } = scene.at(value);
  for (const from of constraint.fromBoxes) {
    for (const to of constraint.toBoxes) {
      const gap = leastFacingGap(packed, [from], [to], constraint.gap.directions)?.gap;
      if (gap === undefined || gap >= wantedOf(scene.study, constraint, to) - NEAR_MM) continue;
      return within(nameOf(scene.study, obstacleOf(scene, constraint, from, to) === to ? from : to));
    }
  }
  return undefined;
}

/** Roundoff of a gap that is kept exactly, mm. */
const NEAR_MM = 1e-6;

/** Where the sheet starts to contradict itself on the way to the limit, found by halving to a hundredth of a mm. */
function ownLimit(scene: VariedScene, limit: number | undefined, sense: Sense): OwnLimit | undefined {
  const { spec } = partAt(scene.study, scene.part).placed;
  const refusal = (value: number): string | undefined => {
    const read = partSpecSchema.safeParse(withDimension(spec, scene.path, value));
    return read.success ? undefined : (read.error.issues[0]?.message ?? 'the sheet cannot be true');
  };
  const end = Math.max(limit ?? scene.standing + sense * FURTHEST_MM, LEAST_SIZE_MM);
  if (refusal(scene.standing) !== undefined) return undefined;
  let reason = refusal(end);
  if (reason === undefined) return undefined;
  let [good, bad] = [scene.standing, end];
  while (Math.abs(bad - good) > OWN_LIMIT_MM) {
    const middle = (good + bad) / 2;
    const refused = refusal(middle);
    if (refused === undefined) good = middle;
    else [bad, reason] = [middle, refused];
  }
  return { value: good, reason };
}

const OWN_LIMIT_MM = 0.01;

interface Caveats {
  readonly ownSheet: OwnLimit | undefined;
  readonly staysNear: string | undefined;
  readonly overlapsAnyway: string | undefined;
  readonly neverClear: string | undefined;
}

function sentenceOf(
  title: string,
  sense: Limit['sense'],
  steps: readonly LimitStep[],
  { ownSheet, staysNear, overlapsAnyway, neverClear }: Caveats,
): string {
  const most = sense === 'largest' ? 'at most' : 'at least';
  const but =
    (staysNear === undefined ? '' : ` But ${staysNear} stays too near.`) +
    (overlapsAnyway === undefined ? '' : ` But it overlaps ${overlapsAnyway} whatever this size.`);
  if (neverClear !== undefined) return `${title}: no value gets clear of ${neverClear}.${but}`;
  if (ownSheet) return `${title} ${most} ${rounded(ownSheet.value, sense)} mm: ${ownSheet.reason}.${but}`;
  const [first, ...behind] = steps;
  if (!first)
    return `${title}: nothing binds ${sense === 'largest' ? 'within 1 m' : 'down to nothing'}.${but}`;
  const next = behind.map((step, index) => {
    const way = index === 0 ? 'without that' : 'and without that';
    return `; ${way} ${rounded(step.value, sense)} mm, then ${step.binds}`;
  });
  const kept = first.rule && first.wanted > 0 ? ` keeps the ${first.wanted.toFixed(1)} mm wanted` : ' fits';
  const binds = first.binds.includes(' and ') ? 'bind' : 'binds';
  return `${title} ${most} ${rounded(first.value, sense)} mm${kept}; ${first.binds} ${binds}${next.join('')}.${but}`;
}

/** To a tenth on the safe side, so that what is promised does fit. */
function rounded(value: number, sense: Limit['sense']): string {
  const tenths = value * 10;
  const safe = sense === 'largest' ? Math.floor(tenths + 1e-6) : Math.ceil(tenths - 1e-6);
  return (safe / 10).toFixed(1);
}
