/**
 * The frame of an expansion slot: origin at the key notch on the seat of the card's finger tips, axes of the card
 * (x from the bracket along the card, y towards the card's solder side, z away from the board). Millimetres.
 */

import { rotationFromAxes } from '../space/rotation';
import type { RigidTransform } from '../space/transform';
import {
  holeBToSlot1,
  holeRowToKeyNotch,
  keyNotchY,
  slotCentrelineX,
  slotConnectorSection,
} from '../standards/expansion-slots';
import { type SlotSize, slotMountPattern, slotSizeSchema } from './patterns';

/** Card axes in the board frame: along the card is board +y, the solder side looks to board -x. */
const cardAxes = rotationFromAxes([0, 1, 0], [-1, 0, 0], [0, 0, 1]);

/** Where the slots of a board stand, mm: what the published drawing fixes, with a band of its own. */
export interface SlotPlace {
  /** Board surface to the finger tips of a seated card. */
  readonly seat: number;
  /** Hole B to the centreline of slot 1, towards the top edge. */
  readonly holeBToSlot1: number;
  /** Hole row A, B, C to the key notch, forward. */
  readonly holeRowToKeyNotch: number;
}

export const publishedSlotPlace: SlotPlace = {
  seat: slotConnectorSection.seatHeight.value,
  holeBToSlot1: holeBToSlot1.value,
  holeRowToKeyNotch: holeRowToKeyNotch.value,
};

/** Slot by position from 1 (nearest the processor), in the board frame. Throws RangeError beyond position 8. */
export function slotFrame(position: number, place: SlotPlace = publishedSlotPlace): RigidTransform {
  return {
    rotation: cardAxes,
    translation: [
      slotCentrelineX(position) + publishedSlotPlace.holeBToSlot1 - place.holeBToSlot1,
      keyNotchY.value + place.holeRowToKeyNotch - publishedSlotPlace.holeRowToKeyNotch,
      place.seat,
    ],
  };
}

/** Cards that physically go into a connector: every edge no longer than it. */
export function patternsOfSlot(size: SlotSize): string[] {
  const sizes = slotSizeSchema.options;
  return sizes.slice(0, sizes.indexOf(size) + 1).map(slotMountPattern);
}
