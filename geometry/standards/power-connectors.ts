/**
 * Power plugs of the 4.2 mm and 3.0 mm pitch families: bodies, what stays outside the header, limits.
 * Sizes in mm: `along` the row of contacts, `across` the rows, `length` in the direction of mating.
 */
import {
  cardElectromechanical,
  commonPractice,
  fromMemory,
  noStandard,
  supplyGuideAtx3,
} from './cited-documents';
import { citing, type Published, type Range } from './published';

const cem = citing(cardElectromechanical);
const guide = citing(supplyGuideAtx3);

export type PowerPlugKind = '2x2' | '2x3' | '2x4' | '2x12' | '16-pin';

export interface PowerPlug {
  readonly pitch: Published<number>;
  readonly along: Published<number>;
  readonly across: Published<number>;
  /** Across the rows, over the latch. */
  readonly acrossOverLatch: Published<number>;
  readonly length: Published<number>;
  /** What stands outside the header once mated. */
  readonly outsideWhenMated: Published<number>;
}

/** Length along the row of a 4.2 mm pitch plug or header with two rows of `pairs` contacts. */
export function fourPointTwoPitchLength(pairs: number): number {
  return 4.2 * (pairs - 1) + 5.4;
}

const sameFamily = { plusMinus: 0.2, note: 'section of the 2x4 plug of the same family' };
const section = {
  pitch: guide(4.2, 'primary', 'page 52'),
  across: cem(11.6, 'primary', 'figures 8-4 to 8-8', { plusMinus: 0.2 }),
  acrossOverLatch: cem(14.4, 'primary', 'figures 8-4 to 8-8', { plusMinus: 0.2 }),
  length: cem(19.6, 'primary', 'figures 8-4 to 8-8', { plusMinus: 0.2 }),
  outsideWhenMated: cem(10.7, 'primary', 'figures 8-4 to 8-8'),
};
const sectionOfFamily = {
  pitch: section.pitch,
  across: cem(11.6, 'derived', 'figures 8-4 to 8-8', sameFamily),
  acrossOverLatch: cem(14.4, 'derived', 'figures 8-4 to 8-8', sameFamily),
  length: cem(19.6, 'derived', 'figures 8-4 to 8-8', sameFamily),
  outsideWhenMated: cem(10.7, 'derived', 'figures 8-4 to 8-8', { note: sameFamily.note }),
};
const byRule = (pairs: number) =>
  citing(noStandard)(fourPointTwoPitchLength(pairs), 'derived', undefined, {
    plusMinus: 0.2,
    note: '4.2 (n - 1) + 5.4; the rule gives the printed 13.8 and 18.0 of the 2x3 and 2x4 plugs',
  });

export const powerPlugs: Readonly<Record<PowerPlugKind, PowerPlug>> = {
  '2x2': { ...sectionOfFamily, along: byRule(2) },
  '2x3': { ...section, along: cem(13.8, 'primary', 'figures 8-4 to 8-8', { plusMinus: 0.2 }) },
  '2x4': { ...section, along: cem(18, 'primary', 'figures 8-4 to 8-8', { plusMinus: 0.2 }) },
  '2x12': { ...sectionOfFamily, along: byRule(12) },
  '16-pin': {
    pitch: guide(3, 'primary', 'page 52'),
    along: fromMemory(20.5, { note: 'no drawing read' }),
    across: fromMemory(8.5, { note: 'no drawing read; side band row included' }),
    acrossOverLatch: fromMemory(11.5, { note: 'no drawing read' }),
    length: fromMemory(22, { note: 'no drawing read' }),
    outsideWhenMated: fromMemory(14, { note: 'no drawing read' }),
  },
};

/** Card-side facts about the auxiliary plugs. */
export const cardPowerHeader = {
  rightAngle2x4Width: cem(18, 'primary', 'figure 8-6'),
  rightAngle2x4Height: cem(11.4, 'primary', 'figure 8-6', { plusMinus: 0.25 }),
  rightAngle2x4Depth: cem(18.1, 'primary', 'figure 8-6', { plusMinus: 0.25 }),
  latchAboveCardMated: cem(14.4, 'primary', 'figures 8-4 to 8-8'),
  latchAboveCardReleased: cem(17, 'primary', 'figures 8-4 to 8-8', { note: 'reference dimension' }),
} as const;

/** Sustained limit of a power path into a card, W and A. */
export const cardPowerLimits = {
  slotWatts: cem(75, 'two sources', undefined, { via: 'two articles', note: 'a x16 graphics slot' }),
  '2x3': { watts: guide(75, 'primary', 'table 3-5'), amperes: guide(6.75, 'primary', 'table 3-5') },
  '2x4': { watts: guide(150, 'primary', 'table 3-5'), amperes: guide(13.5, 'primary', 'table 3-5') },
  '16-pin': { watts: guide(600, 'primary', 'table 3-5'), amperes: guide(55, 'primary', 'table 3-5') },
  sixteenPinGradesWatts: guide([150, 300, 450, 600] as const, 'primary', 'table 3-6', {
    note: 'set by two sense pins; which pin is open for 300 and for 450 could not be verified',
  }),
  amperesPerContact16Pin: guide(9.2, 'primary', 'page 52', {
    note: 'at 30 K rise, all twelve contacts loaded',
  }),
  largestCardWatts: guide(675, 'primary', 'revision 2.1a chapter 3', { note: '600 in the revision before' }),
} as const;

/** How a lead leaves a plug. */
export const leadBends = {
  straightRun16Pin: commonPractice<Range>([30, 35], { note: 'searched for, found in no standard' }),
  wireDiameter16Awg: fromMemory(2.7, { note: 'over the insulation' }),
  wireDiameter18Awg: fromMemory(2.4, { note: 'over the insulation' }),
} as const;
