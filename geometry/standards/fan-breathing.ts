/**
 * Free space a fan wants before its intake, mm: the gap at which the curtain round the edge of the fan, pi D g, has
 * the area of the annulus the blades sweep, pi (D^2 - d^2) / 4. Any nearer and the curtain is the bottleneck.
 */
import { fromMemory, noStandard } from './cited-documents';
import { citing } from './published';

/** How much of a fan is blades; for fans whose sheet gives only the frame. */
export const fanProportions = {
  sweptOfFrame: fromMemory(0.94, { note: 'a 120 mm frame carries blades about 113 mm across' }),
  hubOfSwept: citing(noStandard)(35 / 95, 'derived', undefined, {
    note: 'a card fan 95 mm across with a 35 mm hub; wants about 20 mm',
  }),
} as const;

/** The gap of equal area for blades `swept` mm across round a hub of `hub` mm: (D^2 - d^2) / (4 D). */
export function equalAreaGap(swept: number, hub: number): number {
  return (swept * swept - hub * hub) / (4 * swept);
}

/** The same for blades of a given diameter with a hub of the usual share. */
export function breathingGapOfBlades(swept: number): number {
  return equalAreaGap(swept, fanProportions.hubOfSwept.value * swept);
}

/** Diameter the blades of a frame sweep when the sheet does not say. */
export function sweptDiameterOfFrame(frame: number): number {
  return fanProportions.sweptOfFrame.value * frame;
}
