/**
 * The bracket of an add-in card, mm, in the card frame of `card-envelope.ts`: `across` from the slot's
 * centreline toward larger board x, z above the board's component side for a seated card, y in the board frame.
 */

import { cardOutline, cardRearEdgeY, seatedCardZ, wingPlane } from './card-envelope';
import { cardElectromechanical } from './cited-documents';
import { keyNotchY } from './expansion-slots';
import { citing, type Range } from './published';

const cem = citing(cardElectromechanical);

const half = cardOutline.boardThickness.value / 2;
const solderSideEdge = -half - 1.27;
const wing = seatedCardZ.fullHeightWing.value;

/** Sizes as drawn. */
export const bracketSizes = {
  fullOverallHeight: wingPlane.fullOverallHeight,
  fullWingToTongueBend: cem(112.75, 'primary', 'figure 9-5'),
  lowProfileOverallHeight: cem(79.2, 'primary', 'figure 9-9'),
  lowProfileWingToTongueBend: cem(71.46, 'primary', 'figure 9-9'),
  plateWidth: cem(18.42, 'primary', 'figure 9-5', { plusMinus: 0.25 }),
  overallWidthByWidth: {
    1: cem(21.59, 'primary', 'figure 9-5'),
    2: cem(41.91, 'primary', 'figure 9-13'),
    3: cem(63.23, 'primary', 'figure 9-15', {
      note: '41.91 + 20.32 would be 62.23, and the printed 2.489 in is 63.22: a whole millimetre more',
    }),
  },
  wingDepth: cem(11.43, 'primary', 'figure 9-5'),
  lowProfileWingDepth: cem(11.84, 'primary', 'figure 9-9'),
  sheetThickness: cem(0.86, 'primary', 'figure 9-5 note 1', { plusMinus: 0.08 }),
  screwHoleDiameter: cem(4.42, 'primary', 'figure 9-5'),
  tongueWidth: cem(10.19, 'primary', 'figure 9-5', { note: '4.11 to 14.30 from the solder-side plate edge' }),
  windowWidth: cem(12.06, 'primary', 'figure 9-5', { note: 'reference dimension' }),
  windowHeight: cem(89.9, 'primary', 'figure 9-5', { note: 'plus 5.08 of keep-out at each end' }),
  lowProfileWindowHeight: cem(54.53, 'primary', 'figure 9-9'),
  wingToWindowTop: cem(10.16, 'primary', 'figure 9-5', { note: 'reference dimension' }),
  lowProfileWingToWindowTop: cem(9.04, 'primary', 'figure 9-9'),
  wingAboveFingerTips: wingPlane.fullHeightAboveFingerTips,
  lowProfileWingAboveFingerTips: wingPlane.lowProfileAboveFingerTips,
  screwHoleToPlateOuterFace: cem(5.08, 'primary', 'figure 9-5'),
  lowProfileScrewHoleToPlate: cem(6.35, 'primary', 'figure 9-9'),
} as const;

/** The plate along y in the board frame. */
export const bracketPlateY = {
  cardSideFace: cem(cardRearEdgeY.value - 1.04, 'derived', 'figure 9-3', {
    note: 'card rear edge - 1.04 (ref)',
  }),
  outerFace: cem(keyNotchY.value - 59.05, 'derived', 'figures 9-3 and 9-20', {
    plusMinus: 0.4,
    note: 'key notch - 59.05; the rear panel inner face lies 0.16 further back, so the documents leave that gap',
  }),
} as const;

/** Card-side face of the bracket to the key notch of the card's edge connector, along the card. */
export const bracketFaceToKeyNotch = cem(
  keyNotchY.value - bracketPlateY.cardSideFace.value,
  'derived',
  'figures 9-1 and 9-3',
  { plusMinus: 0.4, note: '57.15 + 1.04; the tolerance is that of 59.05 to the outer face' },
);

const componentSideEdge = solderSideEdge + bracketSizes.plateWidth.value;

/** Full-height bracket across the slots, from the slot's centreline toward larger board x. */
export const bracketAcross = {
  plate: cem<Range>([solderSideEdge, componentSideEdge], 'derived', 'figure 9-5', {
    note: '1.27 past the solder-side surface, 18.42 wide',
  }),
  wing: cem<Range>([solderSideEdge - 3.17, componentSideEdge - 2.54], 'derived', 'figure 9-5', {
    note: 'from 3.17 past the solder-side plate edge to 2.54 inside the other',
  }),
  window: cem<Range>([half + 0.35, half + 0.35 + bracketSizes.windowWidth.value], 'derived', 'figure 9-5', {
    note: '0.35 from the component-side surface, 12.06 wide',
  }),
  tongue: cem<Range>([solderSideEdge + 4.11, solderSideEdge + 14.3], 'derived', 'figure 9-5'),
  screwHole: cem(half - 2.84, 'derived', 'figure 9-3', {
    note: '2.84 (ref) from the component-side surface: at the solder-side plate edge',
  }),
} as const;

const windowTop = wing - bracketSizes.wingToWindowTop.value;

/** Full-height bracket of a seated card above the board's component side. */
export const bracketZ = {
  wing: seatedCardZ.fullHeightWing,
  tongueTip: seatedCardZ.fullHeightTongueTip,
  tongueBend: cem(wing - bracketSizes.fullWingToTongueBend.value, 'derived', 'figures 9-3 and 9-5', {
    note: 'wing plane - 112.75',
  }),
  window: cem<Range>([windowTop - bracketSizes.windowHeight.value, windowTop], 'derived', 'figure 9-5', {
    note: '10.16 below the wing plane, 89.90 high',
  }),
} as const;
