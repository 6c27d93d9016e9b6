/** Which constraints are broken with a dimension at some value, looked at in the scene itself. */
import { facingGap } from '../../space/facing-gap';
import type { PackedBoxes } from '../../space/packed-boxes';
import { interiorsOverlap } from '../../space/separation';
import { type Constraint, wantedOf } from './constraints';
import { RESIZED } from './motion';
import type { VariedScene } from './varied-scene';

/** Roundoff of a gap that is kept exactly, mm. */
const KEPT_MM = 1e-6;

/** Two boxes that break a constraint. */
export interface BrokenPair {
  readonly constraint: Constraint;
  readonly from: number;
  readonly to: number;
}

/** The same in every scene of a plan: pieces of a wall go by the wall. */
export function keyOfPair(scene: VariedScene, { constraint: { gap }, from, to }: BrokenPair): string {
  return `${gap?.rule.id ?? 'overlap'}/${nameOfBox(scene, from)}/${nameOfBox(scene, to)}`;
}

function nameOfBox({ study }: VariedScene, box: number): string {
  const entry = study.scene.boxes[box];
  const part = entry && study.scene.parts[entry.part];
  if (!entry || !part) throw new RangeError(`no box has number ${box}`);
  const { element, name } = entry.body;
  return `${part.id}:${part.kind === 'enclosure' && element !== 'cage' ? element : name}`;
}

/** Boxes at a value of the dimension, and at another one to tell the gaps that change with it. */
export interface Looked {
  readonly packed: PackedBoxes;
  readonly beside: PackedBoxes;
  readonly movesLike: Int32Array;
  readonly constraints: readonly Constraint[];
}

/**
 * Goes through the pairs that break a constraint until `stop` says so, and returns that one. A named gap counts only
 * where the dimension changes it.
 */
export function findBroken(
  scene: VariedScene,
  { packed, beside, movesLike, constraints }: Looked,
  stop: (pair: BrokenPair) => boolean,
): BrokenPair | undefined {
  for (const constraint of constraints) {
    for (const from of constraint.fromBoxes) {
      for (const to of constraint.toBoxes) {
        if (movesLike[from] === movesLike[to] && movesLike[from] !== RESIZED) continue;
        if (!isBroken(scene, packed, beside, constraint, from, to)) continue;
        const pair = { constraint, from, to };
        if (stop(pair)) return pair;
      }
    }
  }
  return undefined;
}

function isBroken(
  scene: VariedScene,
  packed: PackedBoxes,
  beside: PackedBoxes,
  constraint: Constraint,
  from: number,
  to: number,
): boolean {
  if (!constraint.gap) return interiorsOverlap(packed, from, to);
  let widest = Number.NEGATIVE_INFINITY;
  let elsewhere = Number.NEGATIVE_INFINITY;
  for (const direction of constraint.gap.directions) {
    const gap = facingGap(packed, from, to, direction);
    if (gap <= widest) continue;
    widest = gap;
    elsewhere = facingGap(beside, from, to, direction);
  }
  // Coming to face each other is not yet a change of the gap.
  if (widest === Number.NEGATIVE_INFINITY || elsewhere === Number.NEGATIVE_INFINITY) return false;
  if (Math.abs(widest - elsewhere) < KEPT_MM) return false;
  return widest < wantedOf(scene.study, constraint, to) - KEPT_MM;
}
