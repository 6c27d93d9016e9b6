/** Gaps wanted by default, mm, each with its reason and the row of the standards it rests on. */
import { breathingSpace, workingGaps } from '../../standards/assembly-practice';
import type { WantedGap } from '../clearance-rule';

export const panel: WantedGap = {
  millimetres: workingGaps.coolerToPanel.value[0],
  toGlass: workingGaps.toGlass.value,
  reason: 'panels bow and parts stand a little higher than their sheets say',
  basis: workingGaps.coolerToPanel,
};
export const apart: WantedGap = {
  millimetres: workingGaps.betweenParts.value,
  reason: 'so that nothing rattles or has to be forced',
  basis: workingGaps.betweenParts,
};
export const tip: WantedGap = {
  millimetres: workingGaps.cardTip.value,
  reason: 'room to swing the card in',
  basis: workingGaps.cardTip,
};
export const leads: WantedGap = {
  millimetres: 0,
  reason: 'plug and bend already hold the room the leads need',
};
export const cardAir: WantedGap = {
  millimetres: breathingSpace.cardFansInSmallEnclosures.value[0],
  lacking: { element: 'fan', millimetres: workingGaps.betweenParts.value },
  reason: 'air for the fans of the card',
  basis: breathingSpace.cardFansInSmallEnclosures,
};
export const rearSide: WantedGap = {
  millimetres: workingGaps.betweenParts.value,
  reason: 'so that nothing presses on the panel',
  basis: workingGaps.betweenParts,
};
