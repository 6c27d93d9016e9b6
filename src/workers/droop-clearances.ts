/**
 * A card that sinks takes its underside along: every gap below it is measured again with the tip as low as its weight
 * puts it. The estimate says how far it sinks, the solver what is then left; neither knows the other.
 */
import {
  type CardDroop,
  type Clearance,
  cardDroops,
  compose,
  freePart,
  invert,
  middleValues,
  type Plan,
  placePlan,
  type RigidTransform,
  rotationAbout,
  type Scene,
  solve,
  transformDirection,
} from '../../geometry';
import type { DroopRow } from './estimates-request';

/** A droop smaller than this says nothing about a gap, mm. */
const WORTH_NAMING = 0.05;

/** Wider gaps are not in question, mm. */
const FAR = 60;

export function droopRows(plan: Plan, scene: Scene): readonly DroopRow[] {
  const drooping = cardDroops(scene, middleValues).filter(({ free }) => free > WORTH_NAMING);
  if (drooping.length === 0) return [];
  const placed = solve(scene).clearances;
  return drooping.flatMap((droop) => {
    const { id, label } = droop.card;
    const sunk = clearancesWith(plan, droop, droop.free);
    const propped = clearancesWith(plan, droop, droop.propped);
    return placed.flatMap((clearance): DroopRow[] => {
      const { title, towards, millimetres, wanted } = clearance;
      if (!isBelow(clearance, id) || millimetres > FAR) return [];
      // What stands under the slot itself stays where it is.
      const other = clearance.parts.find((part) => part !== id) ?? '';
      const low = Math.min(millimetres, sunk.get(other) ?? millimetres);
      const held = Math.min(millimetres, propped.get(other) ?? millimetres);
      return [
        {
          card: id,
          label,
          title: `${title} ${towards}`,
          placed: millimetres,
          sunk: low,
          propped: held,
          wanted,
        },
      ];
    });
  });
}

/** Whether the other part of the clearance lies under the card. */
function isBelow({ parts, from, direction }: Clearance, card: string): boolean {
  if (!parts.includes(card)) return false;
  return from.part === card ? direction[1] < -0.9 : direction[1] > 0.9;
}

/**
 * Smallest gap to each part below, with the card turned down about the end of its slot until the tip is `sunk` mm lower.
 * Parts are compared by pair, for seen from a tilted card another part may be the nearest.
 */
function clearancesWith(plan: Plan, droop: CardDroop, sunk: number): ReadonlyMap<string, number> {
  const { id } = droop.card;
  const { clearances } = solve(placePlan(freePart(plan, id, sunkPose(droop, sunk))));
  const smallest = new Map<string, number>();
  for (const clearance of clearances) {
    const other = clearance.parts.find((part) => part !== id);
    if (other === undefined || !isBelow(clearance, id)) continue;
    smallest.set(other, Math.min(clearance.millimetres, smallest.get(other) ?? Number.POSITIVE_INFINITY));
  }
  return smallest;
}

/** A straight card lies lower between slot and tip than a bent one: the gaps are on the safe side. */
function sunkPose({ card: { pose, model }, overhang }: CardDroop, sunk: number): RigidTransform {
  const fingers = model.boxes.find(({ name }) => name === 'contact fingers');
  if (!fingers) return pose;
  const hinge = fingers.box.centre[0] + fingers.box.half[0];
  const down = transformDirection(invert(pose), [0, -1, 0])[1];
  const degrees = (Math.sign(down) * Math.atan2(sunk, overhang) * 180) / Math.PI;
  const still = rotationAbout('z', 0);
  const turned: RigidTransform = { rotation: rotationAbout('z', degrees), translation: [hinge, 0, 0] };
  return compose(pose, compose(turned, { rotation: still, translation: [-hinge, 0, 0] }));
}
