import { bracketAcross, bracketPlateY, bracketSizes, bracketZ } from '../../standards/card-bracket';
import { seatedCardZ } from '../../standards/card-envelope';
import { slotPitch } from '../../standards/expansion-slots';
import type { BodyBox } from '../body';
import { type Span, solidBox } from '../body-box';

/** Published ranges run toward the component side; y of the card frame runs the other way. */
const across = ([from, to]: Span): Span => [-to, -from];

/** Heights above the finger tips. */
function levels(lowProfile: boolean) {
  const wing = lowProfile
    ? bracketSizes.lowProfileWingAboveFingerTips.value
    : bracketZ.wing.value - seatedCardZ.fingerTips.value;
  const toBend = lowProfile ? bracketSizes.lowProfileWingToTongueBend : bracketSizes.fullWingToTongueBend;
  const overall = lowProfile ? bracketSizes.lowProfileOverallHeight : bracketSizes.fullOverallHeight;
  return { wing, bend: wing - toBend.value, tip: wing - overall.value };
}

/**
 * The bracket of a card in the card's frame: one plate over all its slots, a tongue in each slot's well, and the wing
 * for the screws. The wing is drawn on top of the published wing plane, so that it rests on a ledge at that height.
 */
export function buildBracket(slots: number, lowProfile: boolean): readonly BodyBox[] {
  const { wing, bend, tip } = levels(lowProfile);
  const more = (slots - 1) * slotPitch.value;
  const sheet = bracketPlateY.cardSideFace.value - bracketPlateY.outerFace.value;
  const depth = lowProfile ? bracketSizes.lowProfileWingDepth.value : bracketSizes.wingDepth.value;
  const x: Span = [-sheet, 0];
  const plate = bracketAcross.plate.value;
  const wings = bracketAcross.wing.value;
  const tongue = bracketAcross.tongue.value;
  const material = { material: 'steel' } as const;
  const tongues = Array.from({ length: slots }, (_, slot) => {
    const shift = slot * slotPitch.value;
    const y = across([tongue[0] + shift, tongue[1] + shift]);
    return solidBox(`bracket tongue ${slot + 1}`, 'card bracket', { x, y, z: [tip, bend] }, material);
  });
  return [
    solidBox(
      'bracket plate',
      'card bracket',
      { x, y: across([plate[0], plate[1] + more]), z: [bend, wing] },
      material,
    ),
    solidBox(
      'bracket wing',
      'card bracket',
      {
        x: [-depth, 0],
        y: across([wings[0], wings[1] + more]),
        z: [wing, wing + bracketSizes.sheetThickness.value],
      },
      material,
    ),
    ...tongues,
  ];
}
