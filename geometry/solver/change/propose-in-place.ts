/** Things that can be done to a part where it is: adjust it, turn it, mount it by another side, move it. */

import { adjustPart, movePart, placementAt } from '../../plan/edit-plan';
import { footFits } from '../../plan/mounting';
import { isSeated, type Plan } from '../../plan/plan-schema';
import type { PlacedPart, Scene } from '../../plan/scene';
import { add, length, scale, type Vector3 } from '../../space/vector';
import type { Proposal } from './change';
import type { Target } from './target';

/** Every step of every adjustment away from where it stands, the nearest first. */
export function adjustments(plan: Plan, part: PlacedPart): readonly (readonly Proposal[])[] {
  return part.model.adjustments.flatMap((adjustment) => {
    const standing = plan.parts[part.id]?.adjust?.[adjustment.id] ?? 0;
    return ([1, -1] as const).map((sense) => {
      const room = sense > 0 ? adjustment.max - standing : standing - adjustment.min;
      const count = Math.floor(room / adjustment.step + 1e-9);
      return Array.from({ length: count }, (_, index): Proposal => {
        const value = standing + sense * adjustment.step * (index + 1);
        const by = Math.abs(value - standing);
        return {
          kind: 'adjust',
          part: part.id,
          title: `${adjustment.label}: ${value} mm instead of ${standing} mm`,
          plan: adjustPart(plan, part.id, adjustment.id, value),
          size: by,
        };
      });
    });
  });
}

/** The other turns that its mount allows, and its other feet on the same mount. */
export function turnsAndSides(scene: Scene, plan: Plan, part: PlacedPart): readonly Proposal[] {
  const placement = plan.parts[part.id]?.placement;
  const { seat } = part;
  if (!seat || !placement || !isSeated(placement)) return [];
  const carrier = scene.parts[scene.indexById.get(seat.on) ?? -1];
  const mount = carrier?.model.mounts.find(({ id }) => id === seat.mount);
  if (!mount) return [];
  const proposals: Proposal[] = [];
  for (const foot of part.model.feet) {
    for (const turn of mount.turns ?? [0]) {
      const isOther = foot.id !== seat.foot;
      if ((!isOther && turn === seat.turn) || !footFits(mount, foot, turn)) continue;
      const degrees = (((turn - seat.turn) % 360) + 360) % 360;
      proposals.push({
        kind: isOther ? 'mount by another side' : 'turn',
        part: part.id,
        title: isOther
          ? `Mount ${part.label} by the side '${foot.label}'${degrees === 0 ? '' : `, turned by ${degrees}°`}`
          : `Turn ${part.label} by ${degrees}°`,
        plan: movePart(plan, part.id, { ...placement, foot: foot.id, turn }),
        size: degrees,
      });
    }
  }
  return proposals;
}

/** A part that stands free goes just as far as it must, along the shortest way out or along the gap. */
export function moves(plan: Plan, part: PlacedPart, target: Target): readonly Proposal[] {
  const placement = plan.parts[part.id]?.placement;
  if (!placement || isSeated(placement)) return [];
  return waysFor(part.id, target).map((way) => ({
    kind: 'move',
    part: part.id,
    title: `Move ${part.label} by ${length(way).toFixed(1)} mm`,
    plan: movePart(plan, part.id, {
      ...placementAt(part.pose),
      at: mutable(add(part.pose.translation, way)),
    }),
    size: length(way),
  }));
}

/** A hair more than it takes, so that touching is behind it, mm. */
const CLEAR_MM = 1e-5;

function waysFor(id: string, { finding, clearance, parts }: Target): readonly Vector3[] {
  const ways: Vector3[] = [];
  if (finding?.escape) {
    const by = finding.escape.distance + CLEAR_MM;
    ways.push(scale(finding.escape.direction, parts[0] === id ? by : -by));
  }
  if (clearance) {
    const lacking = clearance.wanted - clearance.millimetres + CLEAR_MM;
    ways.push(scale(clearance.direction, clearance.parts[0] === id ? -lacking : lacking));
  }
  return ways;
}

function mutable([x, y, z]: Vector3): [number, number, number] {
  return [x, y, z];
}
