/** Which boxes of a part a rule means. Looked up once for each model, and once for each part and set of directions. */
import type { PartModel } from '../parts/body';
import type { Scene } from '../plan/scene';
import type { OrientedBox } from '../space/oriented-box';
import { type AxisName, axisOfRotation } from '../space/rotation';
import { CONTACT_TOLERANCE_MM } from '../space/tolerance';
import { dot, type Vector3 } from '../space/vector';
import { type BoxSelector, type ClearanceRule, picksBox } from './clearance-rule';
import { type ExaminedPart, sightOf } from './examined-part';

/** Numbers into `Scene.boxes` of the boxes that the rule measures from or to in these directions. */
export function boxesMeant(
  scene: Scene,
  part: ExaminedPart,
  rule: ClearanceRule,
  side: 'from' | 'to',
  directions: readonly Vector3[],
): readonly number[] {
  const sight = sightOf(part, rule);
  const known = sight[side];
  if (known && sameDirections(known.directions, directions)) return known.boxes;
  const picked = localPicks(part.placed.model, rule, side).map((box) => part.placed.firstBox + box);
  const boxes = narrowed(scene, rule[side], picked, directions, part);
  sight[side] = { directions, boxes };
  return boxes;
}

function sameDirections(a: readonly Vector3[], b: readonly Vector3[]): boolean {
  return (
    a === b ||
    (a.length === b.length &&
      a.every((direction, index) => direction.every((x, axis) => x === b[index]?.[axis])))
  );
}

const byModel = new WeakMap<PartModel, Record<'from' | 'to', Map<ClearanceRule, readonly number[]>>>();

/** Indices into `model.boxes`. */
function localPicks(model: PartModel, rule: ClearanceRule, side: 'from' | 'to'): readonly number[] {
  const sides = byModel.get(model) ?? { from: new Map(), to: new Map() };
  byModel.set(model, sides);
  const known = sides[side].get(rule);
  if (known) return known;
  const picked = model.boxes.flatMap((body, index) => (picksBox(rule[side], body) ? [index] : []));
  sides[side].set(rule, picked);
  return picked;
}

/** Leaves out what the selector does not mean in these directions. */
function narrowed(
  scene: Scene,
  selector: BoxSelector,
  boxes: readonly number[],
  directions: readonly Vector3[],
  part: ExaminedPart,
): readonly number[] {
  if (!selector.across && !selector.standsOut) return boxes;
  return boxes.filter((number) => {
    const box = scene.boxes[number]?.box;
    if (box === undefined) return false;
    if (selector.across && !directions.some((direction) => standsAcross(box, direction))) return false;
    return !selector.standsOut || directions.some((direction) => reachesFurther(scene, box, part, direction));
  });
}

/** Cosine of the angle up to which a sheet still counts as standing across a direction: 30 degrees. */
const ACROSS_COSINE = Math.sqrt(3) / 2;

function standsAcross(box: OrientedBox, direction: Vector3): boolean {
  const thinnest = Math.min(...box.half);
  const axis = box.half.indexOf(thinnest);
  const name: AxisName = axis === 0 ? 'x' : axis === 1 ? 'y' : 'z';
  return Math.abs(dot(axisOfRotation(box.rotation, name), direction)) >= ACROSS_COSINE;
}

function reachesFurther(scene: Scene, box: OrientedBox, part: ExaminedPart, direction: Vector3): boolean {
  const reach = reachOf(box, direction);
  return part.solids.every((number) => {
    const solid = scene.boxes[number]?.box;
    return solid === undefined || reachOf(solid, direction) < reach - CONTACT_TOLERANCE_MM;
  });
}

/** How far a box reaches along a direction, mm from the world origin. */
export function reachOf(box: OrientedBox, direction: Vector3): number {
  const { centre, half, rotation } = box;
  return (
    dot(centre, direction) +
    half[0] * Math.abs(dot(axisOfRotation(rotation, 'x'), direction)) +
    half[1] * Math.abs(dot(axisOfRotation(rotation, 'y'), direction)) +
    half[2] * Math.abs(dot(axisOfRotation(rotation, 'z'), direction))
  );
}
