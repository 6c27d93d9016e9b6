/** The space a body sweeps on a way, as boxes to draw: exact for slides along a box's own axis, ghosts elsewhere. */
import { type Motion, poseOfMotion } from '../../../space/motion';
import { type OrientedBox, transformBox } from '../../../space/oriented-box';
import { type AxisName, axisOfRotation } from '../../../space/rotation';
import { compose, identityTransform } from '../../../space/transform';
import { add, dot, length, normalise, scale } from '../../../space/vector';

/** Angle between the ghosts of a turn, degrees, and distance between those of a slanted slide, mm. */
const GHOST_DEGREES = 3;
const GHOST_MM = 20;

export function sweptBoxes(
  boxes: readonly OrientedBox[],
  motions: readonly Motion[],
): readonly OrientedBox[] {
  const swept: OrientedBox[] = [];
  let pose = identityTransform;
  for (const motion of motions) {
    const start = pose;
    for (const box of boxes) swept.push(...sweptBox(transformBox(start, box), motion));
    pose = compose(poseOfMotion(motion, 1), pose);
  }
  return swept;
}

function sweptBox(box: OrientedBox, motion: Motion): readonly OrientedBox[] {
  if (motion.kind === 'slide') {
    const distance = length(motion.by);
    if (distance === 0) return [box];
    const direction = normalise(motion.by);
    const names: readonly AxisName[] = ['x', 'y', 'z'];
    const along = names.findIndex(
      (name) => Math.abs(dot(axisOfRotation(box.rotation, name), direction)) > 1 - 1e-9,
    );
    if (along >= 0) {
      const [x, y, z] = box.half;
      const half = [x, y, z] as [number, number, number];
      half[along as 0 | 1 | 2] += distance / 2;
      return [{ ...box, centre: add(box.centre, scale(motion.by, 0.5)), half }];
    }
    return ghosts(box, motion, Math.ceil(distance / GHOST_MM));
  }
  return ghosts(box, motion, Math.ceil(Math.abs(motion.degrees) / GHOST_DEGREES));
}

function ghosts(box: OrientedBox, motion: Motion, count: number): readonly OrientedBox[] {
  return Array.from({ length: count + 1 }, (_, k) =>
    transformBox(poseOfMotion(motion, k / Math.max(1, count)), box),
  );
}
