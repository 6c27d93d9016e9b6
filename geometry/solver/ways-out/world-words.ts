/** Directions in the words a builder uses with the enclosure standing before him. */
import { type AxisName, axisOfRotation, type Rotation } from '../../space/rotation';
import { dot, type Vector3 } from '../../space/vector';

const WORDS: Readonly<Record<AxisName, readonly [string, string]>> = {
  x: ['towards the rear', 'towards the front'],
  y: ['down', 'up'],
  z: ['towards the tray', 'towards the side panel'],
};

/** Cosine of the angle up to which a direction is called by its nearest axis. */
const NEARLY = Math.cos(Math.PI / 180);

/** ' towards the front', or nothing for a direction that is none of the six. */
export function sayDirection(enclosureAxes: Rotation, direction: Vector3): string {
  for (const axis of ['x', 'y', 'z'] as const) {
    const along = dot(axisOfRotation(enclosureAxes, axis), direction);
    if (Math.abs(along) >= NEARLY) return ` ${WORDS[axis][along < 0 ? 0 : 1]}`;
  }
  return '';
}
