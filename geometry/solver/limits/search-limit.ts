/** How far one dimension can go before a constraint breaks. */

import type { PackedBoxes } from '../../space/packed-boxes';
import { partAt } from '../stack-up/plan-study';
import { type BrokenPair, findBroken, keyOfPair } from './broken-constraints';
import { type Constraint, constraintsOn, wantedOf } from './constraints';
import { type Beside, type Violation, violationBeside, violationsOf } from './first-violation';
import { motionClasses, RESIZED, type StraightMotion } from './motion';
import type { VariedScene } from './varied-scene';

/** 1 for the largest value, -1 for the smallest. */
export type Sense = 1 | -1;

/** Nobody asks about limits further off than this, mm. */
export const FURTHEST_MM = 1000;

/** Sizes below this are no sizes, mm. */
export const LEAST_SIZE_MM = 0.01;

export interface FoundLimit {
  /** mm. */
  readonly value: number;
  readonly violation: Violation;
  /** All violations the same stretch foresees, the first first. */
  readonly ahead: readonly Violation[];
  /** False where the value would cure what is broken as things stand, but breaks something else. */
  readonly cures: boolean;
  /** The scene it was found in: that of the plan, or one re-opened where the body is built another way. */
  readonly scene: VariedScene;
}

/** Whether a constraint between boxes is left out of the search. */
export type LeaveOut = (scene: VariedScene, constraint: Constraint, from: number, to: number) => boolean;

/** Steps of this size show how the faces move, mm. */
const STEP_MM = 0.25;
/** A foreseen limit is looked at this far on either side, mm. */
const EITHER_SIDE_MM = 1e-4;
/** Where the foresight fails the search starts again from where it led, so often at most. */
const MOST_STRETCHES = 8;

/**
 * Undefined when nothing binds within reach. The limit is foreseen from how the faces move, which is exact while they
 * move in straight proportion, and then held against the scene on either side of it; where that does not bear it out,
 * it is searched for by halving.
 */
export function searchLimit(scene: VariedScene, sense: Sense, leaveOut: LeaveOut): FoundLimit | undefined {
  const search = new Search(scene, sense, leaveOut);
  let from = scene.standing;
  let here = scene;
  for (let count = 0; count < MOST_STRETCHES; count++) {
    const found = foresee(here, from, sense, leaveOut);
    if (!found || Math.abs(found.value - scene.standing) > FURTHEST_MM) return search.beforeEnd(from);
    if (!search.isKept(found.value - sense * EITHER_SIDE_MM))
      return found.violation.t < 0 ? { ...found, cures: false } : search.between(from, found.value);
    from = found.value + sense * EITHER_SIDE_MM;
    if (!search.isKept(from)) return found;
    // It came to nothing there: the body is built another way by now.
    if (from < LEAST_SIZE_MM) return undefined;
    here = scene.reopenedAt(from);
  }
  return undefined;
}

function foresee(
  scene: VariedScene,
  value: number,
  sense: Sense,
  leaveOut: LeaveOut,
): FoundLimit | undefined {
  const ahead = stretchFrom(scene, value, sense).ahead.filter(
    ({ constraint, from, to }) => !leaveOut(scene, constraint, from, to),
  );
  const [violation] = ahead;
  return violation && { value: value + sense * violation.t, violation, ahead, cures: true, scene };
}

/** Looks at the scene itself, with the dimension at one value after another. */
class Search {
  private readonly scene: VariedScene;
  private readonly sense: Sense;
  private readonly leaveOut: LeaveOut;

  constructor(scene: VariedScene, sense: Sense, leaveOut: LeaveOut) {
    this.scene = scene;
    this.sense = sense;
    this.leaveOut = leaveOut;
  }

  isKept(value: number): boolean {
    return this.brokenAt(value) === undefined;
  }

  private brokenAt(value: number): (BrokenPair & { readonly in: VariedScene }) | undefined {
    const { sense } = this;
    const { incurable } = stretchFrom(this.scene, this.scene.standing, sense);
    const isRebuilt = this.scene.at(value).isRebuilt;
    const scene = isRebuilt ? this.scene.reopenedAt(value) : this.scene;
    const { motion, movesLike, constraints } = stretchFrom(scene, scene.standing, sense);
    const looked = isRebuilt
      ? { packed: motion.standing, beside: motion.stepped, movesLike, constraints }
      : { packed: scene.at(value).packed, beside: motion.standing, movesLike, constraints };
    const pair = findBroken(
      scene,
      looked,
      (broken) =>
        !incurable.has(keyOfPair(scene, broken)) &&
        !this.leaveOut(scene, broken.constraint, broken.from, broken.to),
    );
    return pair && { ...pair, in: scene };
  }

  /** Nothing was foreseen: turned boxes, and bodies built another way, may still bind. */
  beforeEnd(from: number): FoundLimit | undefined {
    const end = this.scene.standing + this.sense * FURTHEST_MM;
    const last = this.sense > 0 ? end : Math.max(end, LEAST_SIZE_MM);
    const mayBind = hasTurned(this.scene.at(from).packed) || this.scene.at(last).isRebuilt;
    return mayBind && !this.isKept(last) ? this.between(from, last) : undefined;
  }

  /** The first break between two values, the second of which is broken: step by step, then by halving. */
  between(from: number, to: number): FoundLimit | undefined {
    let kept = from;
    let broken = to;
    for (let step = 1; step < STEPS; step++) {
      const value = from + ((to - from) * step) / STEPS;
      if (this.isKept(value)) kept = value;
      else {
        broken = value;
        break;
      }
    }
    for (let k = 0; k < HALVINGS; k++) {
      const middle = (kept + broken) / 2;
      if (this.isKept(middle)) kept = middle;
      else broken = middle;
    }
    const pair = this.brokenAt(broken);
    return pair && this.describe(kept, pair);
  }

  private describe(value: number, pair: BrokenPair & { readonly in: VariedScene }): FoundLimit {
    const { constraint, from, to, in: scene } = pair;
    const same = stretchFrom(scene, value, this.sense).ahead.find(
      (violation) => violation.from === from && violation.to === to && Math.abs(violation.t) < NEAR_MM,
    );
    const wanted = constraint.gap ? wantedOf(scene.study, constraint, to) : 0;
    const violation = same ?? { constraint, from, to, t: 0, wanted, axis: 0, up: true, slope: Number.NaN };
    return { value, violation, ahead: [violation], cures: true, scene };
  }
}

const STEPS = 16;
const HALVINGS = 30;
const NEAR_MM = 1e-3;

function incurablePairs(
  scene: VariedScene,
  { motion, movesLike, constraints, ahead }: Omit<Stretch, 'incurable' | 'beside'>,
): ReadonlyMap<string, BrokenPair> {
  const curable = new Set(ahead.filter(({ t }) => t < 0).map((pair) => keyOfPair(scene, pair)));
  const found = new Map<string, BrokenPair>();
  findBroken(scene, { packed: motion.standing, beside: motion.stepped, movesLike, constraints }, (pair) => {
    const key = keyOfPair(scene, pair);
    if (!curable.has(key)) found.set(key, pair);
    return false;
  });
  return found;
}

/**
 * Solids of the changing part that overlap others as things stand and that no value of the dimension frees. Of an
 * enclosure only those count that the dimension moves: what goes on elsewhere in it is another matter.
 */
export function incurableOverlaps(scene: VariedScene, sense: Sense): readonly BrokenPair[] {
  const { motion, ahead, incurable } = stretchFrom(scene, scene.standing, sense);
  const { parts, boxes } = scene.study.scene;
  const isOverlap = ({ constraint, from, to }: BrokenPair): boolean =>
    constraint.gap === undefined &&
    (constraint.fromPart === scene.part || constraint.toPart === scene.part) &&
    [from, to].every((box) => boxes[box]?.body.role === 'solid');
  if (parts[scene.part]?.kind === 'enclosure') return [...incurable.values()].filter(isOverlap);
  const curable = new Set(ahead.filter(({ t }) => t < 0).map((pair) => keyOfPair(scene, pair)));
  const { firstBox, model } = partAt(scene.study, scene.part).placed;
  // As if the whole part moved against all others.
  const movesLike = new Int32Array(motion.standing.count);
  movesLike.fill(RESIZED, firstBox, firstBox + model.boxes.length);
  const constraints = constraintsOn(scene.study, movesLike);
  const found: BrokenPair[] = [];
  findBroken(scene, { packed: motion.standing, beside: motion.stepped, movesLike, constraints }, (pair) => {
    if (isOverlap(pair) && !curable.has(keyOfPair(scene, pair))) found.push(pair);
    return false;
  });
  return found;
}

/** Gaps ahead between boxes that stand a little past each other; t counts from where the dimension stands. */
export function violationsBeside(scene: VariedScene, sense: Sense): readonly Violation[] {
  const { motion, beside } = stretchFrom(scene, scene.standing, sense);
  return beside.flatMap((pair) => violationBeside(scene.study, pair, motion) ?? []);
}

function hasTurned({ aligned }: PackedBoxes): boolean {
  return aligned.some((is) => is !== 1);
}

interface Stretch {
  readonly motion: StraightMotion;
  readonly movesLike: Int32Array;
  readonly constraints: readonly Constraint[];
  /** The first first. */
  readonly ahead: readonly Violation[];
  readonly beside: readonly Beside[];
  /** Pairs that are broken at its start and that no value of this dimension cures, by their key. */
  readonly incurable: ReadonlyMap<string, BrokenPair>;
}

const stretches = new WeakMap<VariedScene, Map<string, Stretch>>();

/** What lies ahead of a value if all faces go on as they move there; looked for once. */
function stretchFrom(scene: VariedScene, value: number, sense: Sense): Stretch {
  const ofScene = stretches.get(scene) ?? new Map<string, Stretch>();
  stretches.set(scene, ofScene);
  const key = `${value}/${sense}`;
  const known = ofScene.get(key);
  if (known) return known;
  const motion = motionFrom(scene, value, sense);
  const movesLike = motionClasses(motion);
  let found: Ahead | undefined;
  let incurable: ReadonlyMap<string, BrokenPair> | undefined;
  const constraints = constraintsOn(scene.study, movesLike);
  const made: Stretch = {
    motion,
    movesLike,
    constraints,
    get ahead() {
      found ??= lookAhead(scene, made, value, sense);
      return found.ahead;
    },
    get beside() {
      found ??= lookAhead(scene, made, value, sense);
      return found.beside;
    },
    get incurable() {
      incurable ??= incurablePairs(scene, made);
      return incurable;
    },
  };
  ofScene.set(key, made);
  return made;
}

type Ahead = Pick<Stretch, 'ahead' | 'beside'>;

function lookAhead(
  scene: VariedScene,
  { motion, movesLike, constraints }: Pick<Stretch, 'motion' | 'movesLike' | 'constraints'>,
  value: number,
  sense: Sense,
): Ahead {
  const beside: Beside[] = [];
  const ahead = constraints
    .flatMap((constraint) => violationsOf(scene.study, constraint, motion, movesLike, beside))
    // What no size at all would cure is not this dimension's to cure.
    .filter(({ t }) => value + sense * t >= LEAST_SIZE_MM)
    .sort((a, b) => a.t - b.t);
  return { ahead, beside };
}

function motionFrom(scene: VariedScene, value: number, sense: Sense): StraightMotion {
  return {
    standing: scene.at(value).packed,
    stepped: scene.at(value + sense * STEP_MM).packed,
    step: STEP_MM,
  };
}
