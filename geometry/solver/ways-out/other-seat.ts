/** Another mount, or another turn on the same one, on which a part would be free. */
import type { Foot, Mount } from '../../parts/body';
import { footFits, seatPose } from '../../plan/mounting';
import type { Scene } from '../../plan/scene';
import type { ExaminedPart } from '../examined-part';
import { lowerFirst, within } from '../part-names';
import { isFreeAt } from './trial';

/** 'Move the card to slot 3.' or 'Turn the supply by 180 degrees.'; undefined when no other seat is free. */
export function sayOtherSeat(
  scene: Scene,
  parts: readonly ExaminedPart[],
  part: ExaminedPart,
): string | undefined {
  const { seat } = part.placed;
  if (!seat || parts.some((other) => other.placed.seat?.on === part.placed.id)) return undefined;
  const taken = new Set(
    parts.flatMap(({ placed }) => (placed.seat ? [`${placed.seat.on}/${placed.seat.mount}`] : [])),
  );
  for (const carrier of carriersInOrder(parts, part)) {
    for (const mount of carrier.placed.model.mounts) {
      const isOwn = carrier.placed.id === seat.on && mount.id === seat.mount;
      if (!isOwn && taken.has(`${carrier.placed.id}/${mount.id}`)) continue;
      const way = freeFoot(scene, parts, part, carrier, mount, isOwn);
      if (way === undefined) continue;
      const degrees = (((way.turn - seat.turn) % 360) + 360) % 360;
      if (!isOwn)
        return `Move ${within(part.name)} to ${lowerFirst(mount.label)} of ${within(carrier.name)}.`;
      if (degrees === 0)
        return `Mount ${within(part.name)} by its other side (${lowerFirst(way.foot.label)}).`;
      return `Turn ${within(part.name)} by ${degrees} degrees.`;
    }
  }
  return undefined;
}

/** The carrier it has now first, then the others in the order of the plan. */
function carriersInOrder(parts: readonly ExaminedPart[], part: ExaminedPart): readonly ExaminedPart[] {
  const own = parts.filter((other) => other.placed.id === part.placed.seat?.on);
  return [...own, ...parts.filter((other) => other !== part && !own.includes(other))];
}

function freeFoot(
  scene: Scene,
  parts: readonly ExaminedPart[],
  part: ExaminedPart,
  carrier: ExaminedPart,
  mount: Mount,
  isOwn: boolean,
): { foot: Foot; turn: number } | undefined {
  const { model, seat } = part.placed;
  for (const foot of model.feet) {
    for (const turn of mount.turns ?? [0]) {
      if (isOwn && turn === seat?.turn && foot.id === seat.foot) continue;
      if (!footFits(mount, foot, turn)) continue;
      const pose = seatPose(carrier.placed.pose, mount, foot, turn);
      const trial = { on: carrier.placed.id, mount: mount.id };
      if (isFreeAt(scene, parts, part, model.boxes, pose, trial)) return { foot, turn };
    }
  }
  return undefined;
}
