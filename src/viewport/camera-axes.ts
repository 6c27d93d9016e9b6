import type { Vector3 } from '../../geometry';
import { pictureAxes, type Sight } from './camera/sight';
import { standardViews } from './camera/standard-views';
import { currentViewport } from './viewport-session';

/** World axes, as unit vectors, that run nearest to right, up and towards the eye on the screen. */
export interface CameraAxes {
  readonly right: Vector3;
  readonly up: Vector3;
  readonly towardsEye: Vector3;
}

/** For nudging with the arrow keys. Without a viewport, as seen from the side panel. */
export function cameraAxes(): CameraAxes {
  const sight = currentViewport()?.sight;
  return nearestAxes(sight ?? { ...standardViews.side, target: [0, 0, 0], height: 1 });
}

/** The three are always different axes: right is chosen first, then up, and what is left points at the eye. */
export function nearestAxes(sight: Sight): CameraAxes {
  const axes = pictureAxes(sight);
  const right = nearest(axes.right, []);
  const up = nearest(axes.up, [right.axis]);
  const towardsEye = nearest(axes.towardsEye, [right.axis, up.axis]);
  return { right: right.unit, up: up.unit, towardsEye: towardsEye.unit };
}

function nearest(direction: Vector3, taken: readonly number[]): { axis: number; unit: Vector3 } {
  const free = [0, 1, 2].filter((axis) => !taken.includes(axis));
  const size = (axis: number) => Math.abs(direction[axis as 0 | 1 | 2]);
  const axis = free.reduce((best, other) => (size(other) > size(best) + 1e-9 ? other : best));
  const unit: [number, number, number] = [0, 0, 0];
  unit[axis] = direction[axis as 0 | 1 | 2] < 0 ? -1 : 1;
  return { axis, unit };
}
