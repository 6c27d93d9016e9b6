/** A setting of a part (a fan slid up, a bracket moved) that frees it. */
import type { Adjustment, BodyBox } from '../../parts/body';
import { modelOf } from '../../plan/place-plan';
import type { Scene } from '../../plan/scene';
import { escapeTravel } from '../../space/escape-travel';
import { transformDirection } from '../../space/transform';
import { length, normalise, subtract, type Vector3 } from '../../space/vector';
import type { ExaminedPart } from '../examined-part';
import { isFreeAt } from './trial';

/** Boxes of the part that follow the setting, and where they go when it grows. */
interface Follower {
  readonly boxes: readonly number[];
  /** In the world; mm of travel for a millimetre of the setting. */
  readonly direction: Vector3;
}

/**
 * 'Raise the front fan by 6 mm.': the least change of one setting after which the part is free of `obstacles` (numbers
 * into `Scene.boxes`) and of everything else. Undefined when no setting does it.
 */
export function sayAdjustment(
  scene: Scene,
  parts: readonly ExaminedPart[],
  part: ExaminedPart,
  obstacles: readonly number[],
): string | undefined {
  for (const adjustment of part.placed.model.adjustments) {
    const now = part.placed.adjust?.[adjustment.id] ?? 0;
    const follower = followerOf(part, adjustment, now);
    if (!follower) continue;
    const needed = escapeTravel(scene.packed, follower.boxes, obstacles, follower.direction, () => false);
    const by = Math.ceil(needed / adjustment.step - 1e-6) * adjustment.step;
    if (by <= 0 || now + by > adjustment.max) continue;
    const model = modelOf(part.placed.spec, { ...part.placed.adjust, [adjustment.id]: now + by });
    if (!isFreeAt(scene, parts, part, model.boxes, part.placed.pose, part.placed.seat)) continue;
    return `${adjustment.label} by ${by} mm.`;
  }
  return undefined;
}

function followerOf(part: ExaminedPart, adjustment: Adjustment, now: number): Follower | undefined {
  if (now + adjustment.step > adjustment.max) return undefined;
  const { spec, adjust, model, pose, firstBox } = part.placed;
  const next = modelOf(spec, { ...adjust, [adjustment.id]: now + adjustment.step });
  const boxes: number[] = [];
  let step: Vector3 | undefined;
  model.boxes.forEach((body, index) => {
    const moved = shiftOf(body, next.boxes[index]);
    if (body.role !== 'solid' || !moved) return;
    boxes.push(firstBox + index);
    step = moved;
  });
  return step ? { boxes, direction: normalise(transformDirection(pose, step)) } : undefined;
}

function shiftOf(before: BodyBox, after: BodyBox | undefined): Vector3 | undefined {
  if (after?.name !== before.name) return undefined;
  const shift = subtract(after.box.centre, before.box.centre);
  return length(shift) > 0 ? shift : undefined;
}
