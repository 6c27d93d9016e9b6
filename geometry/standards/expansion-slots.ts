/** Expansion slots in the board frame (`board-frame.ts`), mm. Slot 1 is the slot nearest the processor. */
import { cardElectromechanical } from './cited-documents';
import { holePositions } from './mounting-holes';
import { citing, inches, type Published } from './published';

const cem = citing(cardElectromechanical);

export const slotPitch = cem(inches(0.8), 'primary', 'figure 9-20; also SSI EEB 2011 figure 2');

/** From hole B to the centreline of slot 1, toward the top edge. */
export const holeBToSlot1 = cem(inches(1.862), 'primary', 'figure 9-20', {
  plusMinus: 0.25,
  note: 'measured 47.295 on an open microATX board; 1.57 nearer the top edge than hole C, not on it',
});

/** From hole row A, B, C to the key notch of the connectors (datum A), forward. */
export const holeRowToKeyNotch = cem(inches(1.848), 'primary', 'figure 9-20', {
  plusMinus: 0.25,
  note: 'measured 46.94 on an open microATX board',
});

/** Key-notch centre of every slot, y. */
export const keyNotchY = cem(holePositions.B.value.y + holeRowToKeyNotch.value, 'derived', 'figure 9-20', {
  note: '0.400 in + 1.848 in',
});

/**
 * Centreline of a slot, x, by its number from 1. Slots are numbered along the chassis openings; a board may
 * leave positions empty. Throws RangeError unless the number is a whole number from 1 to 8.
 */
export function slotCentrelineX(slot: number): number {
  if (!Number.isInteger(slot) || slot < 1 || slot > 8) throw new RangeError(`no such slot position: ${slot}`);
  return holePositions.B.value.x - holeBToSlot1.value + (slot - 1) * slotPitch.value;
}

export type SlotWidth = 'x1' | 'x4' | 'x8' | 'x16';

/** A slot connector lying along y about its slot's centreline. */
export interface SlotConnector {
  readonly length: Published<number>;
  /** From the key post to the far locating post, forward. */
  readonly keyToFarPost: Published<number>;
  /** Where the body begins and ends along y. */
  readonly rearEndY: Published<number>;
  readonly frontEndY: Published<number>;
}

const rearEndToKey = 14.5;
const rearEndY = keyNotchY.value - rearEndToKey;

function slotConnector(length: number, keyToFarPost: number): SlotConnector {
  const arithmetic = { note: 'key notch - 14.50, + length' };
  return {
    length: cem(length, 'primary', 'figure 6-1', { plusMinus: 0.23 }),
    keyToFarPost: cem(keyToFarPost, 'primary', 'figure 6-1'),
    rearEndY: cem(rearEndY, 'derived', 'figures 6-1 and 9-20', arithmetic),
    frontEndY: cem(rearEndY + length, 'derived', 'figures 6-1 and 9-20', arithmetic),
  };
}

export const slotConnectors: Readonly<Record<SlotWidth, SlotConnector>> = {
  x1: slotConnector(25, 9.15),
  x4: slotConnector(39, 23.15),
  x8: slotConnector(56, 40.15),
  x16: slotConnector(89, 73.15),
};

/** Section of a slot connector and where it seats a card; the same for every width. */
export const slotConnectorSection = {
  width: cem(7.5, 'primary', 'figure 6-1', { note: 'largest; a part model has 7.4' }),
  height: cem(11.25, 'primary', 'figure 6-1', { note: 'largest; a part model has 11.0' }),
  rearEndToKeyNotch: cem(rearEndToKey, 'primary', 'figure 6-1', { note: 'reference dimension' }),
  /** Finger tips of a seated card above the board's component side, z. */
  seatHeight: cem(3.4, 'primary', 'figure 6-1', { plusMinus: 0.15 }),
} as const;

/** Conventional PCI (5 V) connector datum from hole row A, B, C, forward. */
export const holeRowToConventionalPci = cem(inches(3.7), 'primary', 'figure 9-20');
