/**
 * Edits of a plan. Pure: each takes a plan and returns another, sharing what did not change. Seats are given up only
 * where the new part no longer offers them; nothing a person placed is lost without being named.
 */
import type { AdjustmentValues } from '../parts/body';
import type { PartKind, PartSpec } from '../parts/part-spec';
import { degreesOfRotation } from '../space/rotation';
import type { RigidTransform } from '../space/transform';
import { carriedBy, findMounts } from './find-mounts';
import { footFits } from './mounting';
import { modelOf, placePlan } from './place-plan';
import { isSeated, type Placement, type Plan, type PlanPart } from './plan-schema';
import type { Scene } from './scene';

/** A free id for another part of the kind: 'card', 'card-2', ... */
export function nextPartId(plan: Plan, kind: PartKind): string {
  if (plan.parts[kind] === undefined) return kind;
  for (let number = 2; ; number++) {
    const id = `${kind}-${number}`;
    if (plan.parts[id] === undefined) return id;
  }
}

/** Adds a part under a free id and returns that id with the plan. */
export function addPart(
  plan: Plan,
  spec: PartSpec,
  placement: Placement,
  shelf?: string,
): { plan: Plan; id: string } {
  const id = nextPartId(plan, spec.kind);
  return { plan: withPart(plan, id, { spec, placement, ...(shelf === undefined ? {} : { shelf }) }), id };
}

/** The first free mount that takes the part, or free space beside the machine when there is none. */
export function suggestPlacement(scene: Scene, spec: PartSpec): Placement {
  if (spec.kind === 'enclosure') return { at: [0, 0, 0] };
  const free = findMounts(scene, spec).find((candidate) => candidate.takenBy === undefined);
  return free?.placement ?? { at: [0, 0, BESIDE_THE_MACHINE_MM] };
}

/** Far enough from the tray to stand clear of any compact enclosure. */
const BESIDE_THE_MACHINE_MM = 500;

export function movePart(plan: Plan, id: string, placement: Placement): Plan {
  const part = partOf(plan, id);
  return withPart(plan, id, { ...part, placement });
}

/** Takes the part off its mount and leaves it standing exactly where it is. */
export function freePart(plan: Plan, id: string, pose: RigidTransform): Plan {
  return movePart(plan, id, placementAt(pose));
}

/** The free placement that stands at a pose. */
export function placementAt(pose: RigidTransform): Placement {
  const [x, y, z] = pose.translation;
  const rotate = degreesOfRotation(pose.rotation);
  const at: [number, number, number] = [x, y, z];
  return rotate.every((angle) => angle === 0) ? { at } : { at, rotate: [rotate[0], rotate[1], rotate[2]] };
}

/** Sets one adjustment (a fan slid up ...), in mm. */
export function adjustPart(plan: Plan, id: string, adjustment: string, value: number): Plan {
  const part = partOf(plan, id);
  const adjust: AdjustmentValues = { ...part.adjust, [adjustment]: value };
  return withPart(plan, id, { ...part, adjust: { ...adjust } });
}

/** Removes a part and all that is mounted on it. */
export function removePart(plan: Plan, id: string): { plan: Plan; removed: readonly string[] } {
  partOf(plan, id);
  const gone = carriedBy(placePlan(plan), id);
  const parts = Object.fromEntries(Object.entries(plan.parts).filter(([key]) => !gone.has(key)));
  return { plan: { ...plan, parts }, removed: [...gone] };
}

/**
 * Puts another part of the same kind in a part's place. It keeps its seat when a foot still fits; guests keep their
 * mounts when the new part offers them, else move to its next free fitting mount, else stand free where they were.
 * `loosened` names the parts that ended free.
 */
export function replacePart(
  plan: Plan,
  id: string,
  spec: PartSpec,
  shelf?: string,
): { plan: Plan; loosened: readonly string[] } {
  const old = partOf(plan, id);
  if (old.spec.kind !== spec.kind)
    throw new RangeError(`a ${spec.kind} cannot take the place of a ${old.spec.kind}`);
  const before = placePlan(plan);
  const loosened: string[] = [];
  const placement = keptPlacement(before, id, old.placement, spec, loosened);
  let next = withPart(plan, id, { spec, placement, ...(shelf === undefined ? {} : { shelf }) });
  for (const guest of before.parts.filter((part) => part.seat?.on === id)) {
    const result = reseatGuest(next, guest.id, id, guest.pose);
    next = result.plan;
    if (result.loose) loosened.push(guest.id);
  }
  return { plan: next, loosened };
}

function keptPlacement(
  scene: Scene,
  id: string,
  placement: Placement,
  spec: PartSpec,
  loosened: string[],
): Placement {
  if (!isSeated(placement)) return placement;
  const carrierIndex = scene.indexById.get(placement.on);
  const carrier = carrierIndex === undefined ? undefined : scene.parts[carrierIndex];
  const mount = carrier?.model.mounts.find((candidate) => candidate.id === placement.mount);
  const fitting =
    mount && modelOf(spec).feet.filter((candidate) => footFits(mount, candidate, placement.turn));
  // A fan goes on blowing the way it did.
  const foot = fitting?.find((candidate) => candidate.id === placement.foot) ?? fitting?.[0];
  const { foot: _, ...kept } = placement;
  if (foot) return { ...kept, foot: foot.id };
  const elsewhere = findMounts(scene, spec, id).find((candidate) => candidate.takenBy === undefined);
  if (elsewhere) return elsewhere.placement;
  loosened.push(id);
  const index = scene.indexById.get(id);
  const pose = index === undefined ? undefined : scene.parts[index]?.pose;
  return pose ? placementAt(pose) : { at: [0, 0, BESIDE_THE_MACHINE_MM] };
}

function reseatGuest(
  plan: Plan,
  guest: string,
  carrier: string,
  pose: RigidTransform,
): { plan: Plan; loose: boolean } {
  const part = partOf(plan, guest);
  if (!isSeated(part.placement)) return { plan, loose: false };
  const { mount: mountId, turn } = part.placement;
  const mounts = modelOf(partOf(plan, carrier).spec).mounts;
  const same = mounts.find((mount) => mount.id === mountId);
  const feet = modelOf(part.spec, part.adjust).feet;
  if (same && feet.some((foot) => footFits(same, foot, turn))) return { plan, loose: false };
  const other = findMounts(placePlan(plan), part.spec, guest).find(
    (candidate) => candidate.placement.on === carrier && candidate.takenBy === undefined,
  );
  if (other) return { plan: movePart(plan, guest, other.placement), loose: false };
  return { plan: freePart(plan, guest, pose), loose: true };
}

function partOf(plan: Plan, id: string): PlanPart {
  const part = plan.parts[id];
  if (!part) throw new RangeError(`the plan has no part ${id}`);
  return part;
}

function withPart(plan: Plan, id: string, part: PlanPart): Plan {
  return { ...plan, parts: { ...plan.parts, [id]: part } };
}
