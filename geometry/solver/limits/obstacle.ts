/** Which of two boxes stands in the way of a changing part, and what goes away when it is left out. */
import { faceTowards } from '../../space/separation';
import { scale, type Vector3 } from '../../space/vector';
import type { FaceRef } from '../finding';
import { partAt } from '../stack-up/plan-study';
import type { Constraint } from './constraints';
import type { Violation } from './first-violation';
import type { VariedScene } from './varied-scene';

/** Number into `Scene.boxes` of the box of the two that does not belong to the changing part or what it carries. */
export function obstacleOf(scene: VariedScene, constraint: Constraint, from: number, to: number): number {
  const { fromPart, toPart } = constraint;
  if (toPart === scene.part) return from;
  if (fromPart === scene.part) return to;
  return scene.changing.has(fromPart) ? to : from;
}

/** What would be taken away: a whole part, or one wall or block of the enclosure. */
export function obstacleKey({ study }: VariedScene, box: number): string {
  const entry = study.scene.boxes[box];
  if (!entry) throw new RangeError(`no box has number ${box}`);
  const { placed } = partAt(study, entry.part);
  if (placed.kind !== 'enclosure') return placed.id;
  const { element, name } = entry.body;
  return `${placed.id}/${element === 'cage' ? name : element}`;
}

/** The face of the changing side, then the face that binds; without face names where turned boxes meet. */
export function facesOf(scene: VariedScene, violation: Violation): readonly [FaceRef, FaceRef] {
  const { constraint, from, to, axis, up, slope } = violation;
  const isTurned = Number.isNaN(slope);
  const direction = scale(UNITS[axis], up ? 1 : -1);
  const first = refOf(scene, from, isTurned ? undefined : direction, 1);
  const second = refOf(scene, to, isTurned ? undefined : direction, -1);
  return obstacleOf(scene, constraint, from, to) === to ? [first, second] : [second, first];
}

const UNITS: Readonly<Record<0 | 1 | 2, Vector3>> = { 0: [1, 0, 0], 1: [0, 1, 0], 2: [0, 0, 1] };

function refOf({ study }: VariedScene, box: number, direction: Vector3 | undefined, sense: 1 | -1): FaceRef {
  const entry = study.scene.boxes[box];
  if (!entry) throw new RangeError(`no box has number ${box}`);
  const ref = { part: partAt(study, entry.part).placed.id, box: entry.body.name };
  return direction ? { ...ref, face: faceTowards(entry.box, direction, sense) } : ref;
}
