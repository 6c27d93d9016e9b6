/** Directions of a rule in the world. */
import { type AxisName, axisOfRotation, type Rotation } from '../space/rotation';
import { negate, type Vector3 } from '../space/vector';
import type { ClearanceRule } from './clearance-rule';
import { type ExaminedPart, sightOf } from './examined-part';

/** Unit directions in the world; none when the frame of the rule does not exist. The same list for the same part. */
export function directionsOf(rule: ClearanceRule, from: ExaminedPart): readonly Vector3[] {
  const sight = sightOf(from, rule);
  if (sight.directions) return sight.directions;
  const axes = axesOf(rule, from);
  sight.directions = axes === undefined ? [] : rule.directions.map((name) => along(axes, name));
  return sight.directions;
}

function axesOf(rule: ClearanceRule, from: ExaminedPart): Rotation | undefined {
  if (rule.frame === 'own') return from.placed.pose.rotation;
  return rule.frame === 'board' ? from.boardAxes : from.enclosureAxes;
}

function along(axes: Rotation, name: ClearanceRule['directions'][number]): Vector3 {
  const axis = axisOfRotation(axes, name.slice(1) as AxisName);
  return name.startsWith('-') ? negate(axis) : axis;
}
