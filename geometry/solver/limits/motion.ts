/** How the boxes of a scene move with a dimension. */
import { BOUNDS_STRIDE, type PackedBoxes } from '../../space/packed-boxes';

/** Slower than this is standing still: roundoff over a step. */
export const STILL = 1e-9;

/** Faces at two values of the dimension, `step` apart. */
export interface StraightMotion {
  readonly standing: PackedBoxes;
  readonly stepped: PackedBoxes;
  readonly step: number;
}

/** Class of boxes that change their size, each in its own way. */
export const RESIZED = -1;
/** By box: boxes of one class move alike and keep their distances; those that do not move are 0. */
export function motionClasses({ standing, stepped }: StraightMotion): Int32Array {
  const classes = new Int32Array(standing.count);
  const known = new Map<string, number>();
  for (let box = 0; box < standing.count; box++) {
    const at = box * BOUNDS_STRIDE;
    const by = (k: number): number => (stepped.bounds[at + k] ?? 0) - (standing.bounds[at + k] ?? 0);
    const [x, y, z] = [by(0), by(1), by(2)];
    const keepsSize =
      Math.abs(by(3) - x) < STILL && Math.abs(by(4) - y) < STILL && Math.abs(by(5) - z) < STILL;
    if (!keepsSize) classes[box] = RESIZED;
    else if (Math.abs(x) + Math.abs(y) + Math.abs(z) > STILL) {
      const key = `${x.toFixed(8)} ${y.toFixed(8)} ${z.toFixed(8)}`;
      const found = known.get(key) ?? known.size + 1;
      known.set(key, found);
      classes[box] = found;
    }
  }
  return classes;
}
