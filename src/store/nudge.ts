/** Moving a part by small steps, on its mount or in space. */
import {
  compose,
  freePart,
  invert,
  isSeated,
  movePart,
  type Plan,
  type Scene,
  transformDirection,
  type Vector3,
} from '../../geometry';
import { continueStep, editPlan, planStore } from './plan-store';
import type { StandardView } from './view-store';

/** Nudges of one part that follow each other this quickly are one step of undo. */
const ONE_STEP_MS = 1000;

/** Sums of tenths leave noise in the last bits; a millionth of a millimetre is below every tolerance. */
function tidy(value: number): number {
  return Number(value.toFixed(6)) || 0;
}

/** The plan with a part moved by `delta` (mm, world axes). Seated parts shift on their mount. */
export function nudgePart(plan: Plan, scene: Scene, id: string, delta: Vector3): Plan {
  const part = plan.parts[id];
  const placed = scene.parts[scene.indexById.get(id) ?? -1];
  if (!part || !placed) return plan;
  const { placement } = part;
  if (!isSeated(placement)) {
    const at = placement.at.map((value, axis) => tidy(value + (delta[axis] ?? 0)));
    return movePart(plan, id, { ...placement, at: [at[0] ?? 0, at[1] ?? 0, at[2] ?? 0] });
  }
  const carrier = scene.parts[scene.indexById.get(placement.on) ?? -1];
  const mount = carrier?.model.mounts.find((candidate) => candidate.id === placement.mount);
  // Without its mount the part stands where it was drawn, and moves from there.
  if (!carrier || !mount) return nudgePart(freePart(plan, id, placed.pose), scene, id, delta);
  const onMount = transformDirection(invert(compose(carrier.pose, mount.frame)), delta);
  const [x, y, z] = (placement.shift ?? [0, 0, 0]).map((value, axis) => tidy(value + (onMount[axis] ?? 0)));
  const { shift: _, ...seat } = placement;
  const shift: [number, number, number] = [x ?? 0, y ?? 0, z ?? 0];
  return movePart(plan, id, shift.every((value) => value === 0) ? seat : { ...seat, shift });
}

let last: { readonly part: string; readonly plan: Plan; readonly time: number } | undefined;

/** Nudges the part in the open plan. A run of nudges is one step. */
export function nudgeOpenPlan(scene: Scene, id: string, delta: Vector3, now = performance.now()): void {
  const { plan } = planStore.getState();
  const goesOn = last?.part === id && last.plan === plan && now - last.time < ONE_STEP_MS;
  const edit = (before: Plan) => nudgePart(before, scene, id, delta);
  if (goesOn) continueStep(edit);
  else editPlan(edit);
  last = { part: id, plan: planStore.getState().plan, time: now };
}

export type ScreenDirection = 'left' | 'right' | 'up' | 'down' | 'nearer' | 'farther';

/** World axes that point right, up and towards the eye in each standard view. */
const SCREEN_AXES: Readonly<Record<StandardView, readonly [Vector3, Vector3, Vector3]>> = {
  'three-quarter': [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  side: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  back: [
    [-1, 0, 0],
    [0, 1, 0],
    [0, 0, -1],
  ],
  front: [
    [0, 0, -1],
    [0, 1, 0],
    [1, 0, 0],
  ],
  rear: [
    [0, 0, 1],
    [0, 1, 0],
    [-1, 0, 0],
  ],
  top: [
    [1, 0, 0],
    [0, 0, -1],
    [0, 1, 0],
  ],
  floor: [
    [1, 0, 0],
    [0, 0, 1],
    [0, -1, 0],
  ],
};

/** The world direction that an arrow key means in a standard view, times `millimetres`. */
export function screenStep(view: StandardView, direction: ScreenDirection, millimetres: number): Vector3 {
  const [right, up, near] = SCREEN_AXES[view];
  const axis =
    direction === 'left' || direction === 'right'
      ? right
      : direction === 'up' || direction === 'down'
        ? up
        : near;
  const sign = direction === 'right' || direction === 'up' || direction === 'nearer' ? 1 : -1;
  const along = (index: 0 | 1 | 2) => axis[index] * sign * millimetres || 0;
  return [along(0), along(1), along(2)];
}
