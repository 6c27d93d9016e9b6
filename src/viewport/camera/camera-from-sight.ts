import { Camera } from 'three';
import { add, type Bounds, dot, scale, subtract } from '../../../geometry';
import { eyeDistance, pictureAxes, type ScreenSize, type Sight } from './sight';

/** Room kept in front of and behind the scene, so that labels and ghosts are never cut off; mm. */
const DEPTH_MARGIN_MM = 120;

/** Where a parallel camera stands; any place in front of the scene draws the same. */
const PARALLEL_EYE_MM = 4000;

/**
 * One camera for both kinds of picture: its matrices are written from the sight, so that changing from perspective to
 * parallel projection exchanges no object. Near and far planes are drawn close round the scene for a fine depth
 * buffer.
 */
export class SightCamera extends Camera {
  constructor() {
    super();
    this.matrixAutoUpdate = false;
  }

  follow(sight: Sight, screen: ScreenSize, bounds: Bounds): void {
    const axes = pictureAxes(sight);
    const distance = eyeDistance(sight);
    const parallel = !Number.isFinite(distance);
    const stand = parallel ? PARALLEL_EYE_MM : distance;
    const eye = add(sight.target, scale(axes.towardsEye, stand));
    const { right, up, towardsEye } = axes;
    // biome-ignore format: a matrix is read by its rows
    this.matrix.set(
      right[0], up[0], towardsEye[0], eye[0],
      right[1], up[1], towardsEye[1], eye[1],
      right[2], up[2], towardsEye[2], eye[2],
      0, 0, 0, 1,
    );
    this.matrixWorldNeedsUpdate = true;
    this.updateMatrixWorld(true);

    const centre = scale(add(bounds.min, bounds.max), 0.5);
    const radius = Math.hypot(...subtract(bounds.max, bounds.min)) / 2 + DEPTH_MARGIN_MM;
    const depth = dot(subtract(eye, centre), axes.towardsEye);
    const far = Math.max(depth + radius, 2);
    const near = parallel ? depth - radius : Math.max(depth - radius, stand * 0.02, 1);
    const halfHeight = sight.height / 2;
    const halfWidth = (halfHeight * screen.width) / Math.max(1, screen.height);
    if (parallel) {
      this.projectionMatrix.makeOrthographic(-halfWidth, halfWidth, halfHeight, -halfHeight, near, far);
    } else {
      const shrink = near / stand;
      this.projectionMatrix.makePerspective(
        -halfWidth * shrink,
        halfWidth * shrink,
        halfHeight * shrink,
        -halfHeight * shrink,
        near,
        far,
      );
    }
    this.projectionMatrixInverse.copy(this.projectionMatrix).invert();
  }
}
