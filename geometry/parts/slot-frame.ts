/**
 * The frame of an expansion slot: origin at the key notch on the seat of the card's finger tips, axes of the card
 * (x from the bracket along the card, y towards the card's solder side, z away from the board). Millimetres.
 */

import { rotationFromAxes } from '../space/rotation';
import type { RigidTransform } from '../space/transform';
import { keyNotchY, slotCentrelineX, slotConnectorSection } from '../standards/expansion-slots';
import { type SlotSize, slotMountPattern, slotSizeSchema } from './patterns';

/** Card axes in the board frame: along the card is board +y, the solder side looks to board -x. */
const cardAxes = rotationFromAxes([0, 1, 0], [-1, 0, 0], [0, 0, 1]);

/** Slot by position from 1 (nearest the processor), in the board frame. Throws RangeError beyond position 8. */
export function slotFrame(position: number): RigidTransform {
  return {
    rotation: cardAxes,
    translation: [slotCentrelineX(position), keyNotchY.value, slotConnectorSection.seatHeight.value],
  };
}

/** Cards that physically go into a connector: every edge no longer than it. */
export function patternsOfSlot(size: SlotSize): string[] {
  const sizes = slotSizeSchema.options;
  return sizes.slice(0, sizes.indexOf(size) + 1).map(slotMountPattern);
}
