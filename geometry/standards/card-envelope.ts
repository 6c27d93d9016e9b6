/**
 * Outline, envelope, bracket and chassis openings of add-in cards, mm.
 *
 * Card frame: `across` is measured from the centreline of the card's slot (the middle of the card's own board)
 * toward larger board x, the way the component side looks; `fromRear` forward from the card's rear edge;
 * `up` from the finger tips away from the motherboard. In the board frame a seated card's finger tips stand
 * `slotConnectorSection.seatHeight` above the component side and its rear edge at `cardRearEdgeY`.
 */
import { cardElectromechanical } from './cited-documents';
import { keyNotchY, slotConnectorSection, slotPitch } from './expansion-slots';
import { citing, type Range } from './published';

const cem = citing(cardElectromechanical);

/** Outline of the card's board. */
export const cardOutline = {
  fullHeight: cem(111.15, 'primary', 'figure 9-1, table 9-1', {
    plusMinus: 0.13,
    note: 'finger tips to top edge',
  }),
  lowProfileHeight: cem(68.9, 'primary', 'table 9-1', {
    note: 'largest; the 2.731 in printed beside it is a misprint of 2.713',
  }),
  fullLength: cem(312, 'primary', 'figure 9-2', { note: 'largest; end zone from 306.92' }),
  threeQuarterLength: cem(254, 'primary', 'figure 9-2', { note: 'largest; end zone from 248.92' }),
  halfLength: cem(167.65, 'primary', 'figure 9-2', { note: 'largest; end zone from 162.57' }),
  recommendedMaximumLength: cem(241.3, 'primary', 'section 9.1', {
    note: 'strongly recommended maximum; not three-quarter length',
  }),
  keyNotchToRearEdge: cem(57.15, 'primary', 'figure 9-1'),
  rearLobeLowerEdgeUp: cem(4.5, 'primary', 'figure 9-1', { note: '111.15 - 106.65' }),
  lowerEdgeUp: cem(12.75, 'primary', 'figures 9-1 and 9-26', { note: '4.50 + 8.25' }),
  boardThickness: cem(1.57, 'primary', 'figure 9-1', { note: 'reference dimension' }),
  /** No part or heat sink in or above the top edge between these, from the rear edge; consumer coolers break it. */
  topEdgeSupportRegion: cem<Range>([75, 205], 'primary', 'figure 9-1 note 9'),
  /** Where a chassis may place a retainer for full-length cards, from the rear edge. */
  retainerFromRear: cem<Range>([326.03, 338.96], 'primary', 'figure 9-3'),
  largestMassKilograms: cem(1.5, 'primary', 'section 9.1'),
} as const;

/** Heights of parts above either surface of the card's board. */
export const cardPartHeights = {
  solderSide: cem(2.67, 'primary', 'figure 9-1'),
  componentSideByWidth: {
    1: cem(14.47, 'primary', 'figure 9-1 table'),
    2: cem(34.8, 'primary', 'figure 9-1 table', { note: '14.47 + 20.32 gives 34.79' }),
    3: cem(55.12, 'primary', 'figure 9-1 table', { note: '14.47 + 2 x 20.32 gives 55.11' }),
  },
} as const;

export type CardWidthInSlots = 1 | 2 | 3;

/** Whole thickness a card of 1, 2 or 3 slots may have: solder side, board and component side. */
export function cardEnvelopeThickness(width: CardWidthInSlots): number {
  return (
    cardPartHeights.solderSide.value +
    cardOutline.boardThickness.value +
    cardPartHeights.componentSideByWidth[width].value
  );
}

/** Where that envelope lies across the slots, from the slot's centreline toward larger board x. */
export function cardEnvelopeAcross(width: CardWidthInSlots): Range {
  const half = cardOutline.boardThickness.value / 2;
  return [-half - cardPartHeights.solderSide.value, half + cardPartHeights.componentSideByWidth[width].value];
}

/**
 * Fewest slots a card of a measured whole thickness takes without reaching into a neighbour's envelope.
 * Printed slot counts are looser: a card of 61 mm is sold as three slots wide.
 */
export function slotsTaken(thickness: number): number {
  const beyondFirst = (thickness - cardEnvelopeThickness(1)) / slotPitch.value;
  return Math.max(1, Math.ceil(beyondFirst - 1e-9) + 1);
}

/** Rear edge of a seated card, y in the board frame. */
export const cardRearEdgeY = cem(
  keyNotchY.value - cardOutline.keyNotchToRearEdge.value,
  'derived',
  'figures 9-1 and 9-20',
  {
    note: 'key notch - 57.15',
  },
);

/** Wing plane of the bracket and its overall height: what ties the bracket to the finger tips. */
export const wingPlane = {
  fullHeightAboveFingerTips: cem(104.86, 'primary', 'figure 9-3', { plusMinus: 0.52 }),
  lowProfileAboveFingerTips: cem(68.1, 'two sources', 'figure 9-9', {
    via: 'two transcriptions',
    note: 'one reads 68.09, one 68.11',
  }),
  fullOverallHeight: cem(120.02, 'primary', 'figure 9-5', {
    note: '120.11 for the three-slot bracket (figure 9-15)',
  }),
} as const;

const seat = slotConnectorSection.seatHeight.value;
const wingZ = seat + wingPlane.fullHeightAboveFingerTips.value;

/** Heights of a seated card above the board's component side, z in the board frame. */
export const seatedCardZ = {
  fingerTips: slotConnectorSection.seatHeight,
  rearLobeLowerEdge: cem(7.9, 'primary', 'figure 9-26', { note: 'reference dimension' }),
  lowerEdge: cem(16.15, 'primary', 'figure 9-26', { note: 'reference dimension' }),
  fullHeightTopEdge: cem(114.55, 'primary', 'figure 9-26'),
  lowProfileTopEdge: cem(72.3, 'primary', 'figure 9-26'),
  fullHeightWing: cem(wingZ, 'derived', 'figures 6-1 and 9-3', {
    plusMinus: 0.52,
    note: '104.86 + 3.40',
  }),
  lowProfileWing: cem(seat + wingPlane.lowProfileAboveFingerTips.value, 'derived', 'figures 6-1 and 9-9', {
    note: '68.10 + 3.40',
  }),
  fullHeightTongueTip: cem(wingZ - wingPlane.fullOverallHeight.value, 'derived', 'figures 9-3 and 9-5', {
    note: '3.40 + 104.86 - 120.02: below the board surface',
  }),
} as const;

// Middle of the plate's window: 0.35 from the component-side surface and 12.06 wide (figure 9-5).
const windowMiddle = cardOutline.boardThickness.value / 2 + 0.35 + 12.06 / 2;

/** What a card asks of the rear wall of an enclosure; `across` from the slot's centreline. */
export const chassisSlotOpening = {
  across: cem<Range>(
    [windowMiddle - 13.25 / 2, windowMiddle + 13.25 / 2],
    'derived',
    'figures 9-5 and 9-22',
    {
      note: 'least opening, taken as centred on the window of the plate; the offset itself was not read',
    },
  ),
  fullHeight: cem(100.71, 'primary', 'figure 9-22', { note: 'least height of the opening' }),
  width: cem(13.25, 'primary', 'figures 9-22 and 9-23', { note: 'least width' }),
  lowProfileHeight: cem(65.34, 'primary', 'figure 9-23', { note: 'least height of the opening' }),
  fullHeightZ: cem<Range>([seat - 0.67, wingZ - 4.82], 'derived', 'figure 9-22', {
    note: '0.67 below the finger tips to 4.82 below the wing plane',
  }),
  connectorProtrusion: cem(7, 'primary', 'figure 9-3', { note: 'largest, outside the plate' }),
  cableKeepOutWidth: cem<Range>([17.25, 20], 'primary', 'figure 9-24'),
} as const;
