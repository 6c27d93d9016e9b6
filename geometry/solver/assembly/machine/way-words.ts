/** A way that was found by searching, in words a builder can follow. */
import { type Motion, poseAfter } from '../../../space/motion';
import { boundsOfBoxes } from '../../../space/oriented-box';
import { type RigidTransform, transformPoint } from '../../../space/transform';
import { dot, type Vector3 } from '../../../space/vector';
import type { FoundWay } from '../paths/find-way';
import type { Machine } from './machine';
import type { AssemblyUnit } from './unit';

/** `out` is the direction in which the mount lets go; motions lead out of the seat. */
export function wordsOfSearched(
  machine: Pick<Machine, 'scene'>,
  unit: AssemblyUnit,
  { motions, method }: FoundWay,
  out: Vector3,
): string {
  const most = largestTilt(motions);
  if (most.degrees === 0)
    return motions.length > 1 ? `in ${countWord(motions.length)} straight moves` : 'in one straight move';
  if (method === 'swing and leave')
    return `swung aside by ${most.degrees.toFixed(0)} degrees, then turned straight`;
  const tilted = `tilted by up to ${most.degrees.toFixed(0)} degrees`;
  const part = machine.scene.parts[unit.part];
  if (unit.kind !== 'card' || !part) return `${tilted}, then turned down onto its seat`;
  const bounds = boundsOfBoxes(part.model.boxes.map(({ box }) => box));
  const height = (x: number): number =>
    dot(transformPoint(most.pose, transformPoint(part.pose, [x, 0, 0])), out);
  const farFirst = bounds !== undefined && height(bounds.max[0]) < height(0);
  return farFirst
    ? `far end first, ${tilted}, then turned down at the bracket`
    : `bracket hooked in first, ${tilted}, then turned down at the far end`;
}

/** The furthest the body is turned from how it sits, and the pose in which it is. */
function largestTilt(motions: readonly Motion[]): {
  readonly degrees: number;
  readonly pose: RigidTransform;
} {
  let degrees = 0;
  let most = { degrees: 0, pose: poseAfter([]) };
  for (const [k, motion] of motions.entries()) {
    if (motion.kind === 'turn') degrees += motion.degrees;
    if (Math.abs(degrees) > most.degrees + 1e-9)
      most = { degrees: Math.abs(degrees), pose: poseAfter(motions.slice(0, k + 1)) };
  }
  return most;
}

function countWord(count: number): string {
  return ['no', 'one', 'two', 'three', 'four'][count] ?? String(count);
}
