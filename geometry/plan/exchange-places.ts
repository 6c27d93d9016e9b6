/** Two seated parts changing places in one step: memory between its sockets, fans of one size, drives. */
import { movePart } from './edit-plan';
import { findMounts } from './find-mounts';
import { isSeated, type Plan, type SeatedPlacement } from './plan-schema';
import type { Scene } from './scene';

/**
 * Seats a part where another sits, and that other where the part sat. The other keeps its foot and its turn where the
 * mount allows them. undefined when the part stands free, or when the other does not fit the mount it would get.
 */
export function exchangePlaces(
  scene: Scene,
  plan: Plan,
  id: string,
  to: SeatedPlacement,
  occupant: string,
): Plan | undefined {
  const home = plan.parts[id]?.placement;
  const other = plan.parts[occupant];
  if (!home || !isSeated(home) || !other || occupant === id) return undefined;
  const before = isSeated(other.placement) ? other.placement : undefined;
  const seats = findMounts(scene, other.spec, occupant, other.adjust)
    .map(({ placement }) => placement)
    .filter(({ on, mount }) => on === home.on && mount === home.mount);
  const seat = seats.find(({ foot }) => foot === before?.foot) ?? seats[0];
  return seat && movePart(movePart(plan, occupant, seat), id, to);
}
