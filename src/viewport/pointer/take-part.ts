/** Taking a part up: from its place in the machine, or from the shelf. */
import {
  addPart,
  exchangePlaces,
  freePart,
  modelOf,
  movePart,
  type PartSpec,
  type Plan,
  placementAt,
  type RigidTransform,
  replacePart,
  type Scene,
  subtract,
  transformDirection,
  type Vector3,
} from '../../../geometry';
import { planStore } from '../../store/plan-store';
import { solutionStore } from '../../store/solution-store';
import { millimetresPerPixel, type Pixel, rayThrough } from '../camera/sight';
import type { ViewportSession } from '../viewport-session';
import { facingPlane, meetPlane } from './drag-plane';
import { mountOptions, solidBounds } from './mount-options';
import { MOUNT_REACH_PX } from './nearest-place';
import { type HeldPart, PartInHand } from './part-in-hand';

/** Parts that stand on others can be dragged; the enclosure that carries all stays where it is. */
export function canBeTaken(scene: Scene, id: string): boolean {
  const part = scene.parts[scene.indexById.get(id) ?? -1];
  return part !== undefined && part.kind !== 'enclosure';
}

/** A mount that is taken counts when the part there fits the mount this one leaves: the two change places. */
export function takeFromMachine(
  session: ViewportSession,
  id: string,
  grabbed: Vector3,
): PartInHand | undefined {
  const { scene } = solutionStore.getState();
  const { plan } = planStore.getState();
  const part = scene.parts[scene.indexById.get(id) ?? -1];
  const stated = plan.parts[id];
  if (!part || !stated || !canBeTaken(scene, id)) return undefined;
  const held: HeldPart = {
    spec: part.spec,
    model: part.model,
    pose: part.pose,
    options: mountOptions(
      scene,
      { ...part, foot: part.seat?.foot, adjust: stated.adjust },
      (occupant, to) => exchangePlaces(scene, plan, id, to, occupant) !== undefined,
    ),
    ...(part.seat ? { home: `${part.seat.on}/${part.seat.mount}` } : {}),
    reach: MOUNT_REACH_PX,
    seated: ({ candidate: { placement, takenBy } }) =>
      (takenBy !== undefined && exchangePlaces(scene, plan, id, placement, takenBy)) ||
      movePart(plan, id, placement),
    free: (pose) => freePart(plan, id, pose),
  };
  return new PartInHand(session, held, grabbed);
}

/** The part appears under the pointer. A mount taken by a part of its kind takes it in exchange. */
export function takeFromShelf(
  session: ViewportSession,
  spec: PartSpec,
  shelf: string | undefined,
  pixel: Pixel,
): { readonly hand: PartInHand; readonly free: boolean } | undefined {
  const { scene } = solutionStore.getState();
  const { plan } = planStore.getState();
  const { sight, screen } = session;
  const at = meetPlane(rayThrough(sight, screen, pixel), facingPlane(sight, session.middle()));
  if (!at || !(millimetresPerPixel(sight, screen) > 0)) return undefined;
  const kindOf = (id: string) => scene.parts[scene.indexById.get(id) ?? -1]?.kind;
  const model = modelOf(spec);
  const options = mountOptions(scene, { spec, model }, (occupant) => kindOf(occupant) === spec.kind);
  const rotation = options[0]?.candidate.pose.rotation ?? ([1, 0, 0, 0, 1, 0, 0, 0, 1] as const);
  const centre = transformDirection({ rotation, translation: [0, 0, 0] }, solidBounds(model).centre);
  const pose: RigidTransform = { rotation, translation: subtract(at, centre) };
  const enclosure =
    spec.kind === 'enclosure' ? scene.parts.find((part) => part.kind === 'enclosure') : undefined;
  const held: HeldPart = {
    spec,
    model,
    pose,
    options,
    reach: Number.POSITIVE_INFINITY,
    seated: ({ candidate }) =>
      candidate.takenBy === undefined
        ? addPart(plan, spec, candidate.placement, shelf).plan
        : replacePart(plan, candidate.takenBy, spec, shelf).plan,
    free: (place) =>
      enclosure ? replaced(plan, enclosure.id, spec, shelf) : standing(plan, spec, place, shelf),
  };
  return { hand: new PartInHand(session, held, at), free: options.length === 0 };
}

const replaced = (plan: Plan, id: string, spec: PartSpec, shelf: string | undefined): Plan =>
  replacePart(plan, id, spec, shelf).plan;

const standing = (plan: Plan, spec: PartSpec, pose: RigidTransform, shelf: string | undefined): Plan =>
  addPart(plan, spec, placementAt(pose), shelf).plan;
