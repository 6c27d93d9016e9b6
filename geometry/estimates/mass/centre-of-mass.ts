/** Masses at points: any unit of mass, any unit of length. */
import { add, scale, type Vector3, zeroVector } from '../../space/vector';

export interface PointMass {
  readonly mass: number;
  readonly at: Vector3;
}

/** Sum of the masses and their centre; undefined for no mass at all. */
export function centreOfMass(points: readonly PointMass[]): { mass: number; at: Vector3 } | undefined {
  const mass = points.reduce((sum, point) => sum + point.mass, 0);
  if (!(mass > 0)) return undefined;
  const moment = points.reduce((sum, point) => add(sum, scale(point.at, point.mass)), zeroVector);
  return { mass, at: scale(moment, 1 / mass) };
}
