/**
 * Builders' working gaps and allowances, mm unless said otherwise. Most rest on practice alone: they are defaults
 * a person can change, never limits.
 */
import { commonPractice, fromMemory, noStandard, supplyGuide1998 } from './cited-documents';
import { citing, type Range } from './published';

const seen = citing(noStandard);
const workmanship = citing({
  document: 'NASA-STD-8739.4 Crimping, interconnecting cables, harnesses and wiring',
  publisher: 'NASA',
  revision: 'section 7.3.21',
});

/** Air in front of grilles and fans. */
export const breathingSpace = {
  supplyGrille: citing(supplyGuide1998)(12.7, 'primary', 'sections 4.3 and 4.4', {
    note: '0.5 in free at intake and exhaust grilles',
  }),
  /** Share of a fan's frame size to leave free before it. */
  fanShareOfFrame: seen(1 / 3, 'one source', undefined, { via: "one distributor's mounting notes" }),
  cardFansInSmallEnclosures: commonPractice<Range>([10, 15], { note: 'what small enclosures live with' }),
  leadToFanFace: commonPractice(5, { note: 'no lead nearer to blades' }),
} as const;

/** Gaps between parts and the enclosure. */
export const workingGaps = {
  toGlass: commonPractice(3, { note: 'cold, from cooler or card' }),
  coolerToPanel: commonPractice<Range>([3, 5], { note: 'or more' }),
  betweenParts: commonPractice(1, { note: 'between two rigid parts, so that neither rattles nor is forced' }),
  cardTip: commonPractice(3, { note: 'beyond the tip of a card, to swing it in' }),
  cableRoomBehindTray: fromMemory<Range>([15, 25]),
  memoryLiftOverModule: commonPractice(10, { note: 'beyond the module height, to change it in place' }),
  /** Largest screw entry past a fan and panel into a radiator. */
  screwEntryIntoRadiator: commonPractice(5),
} as const;

/** Plug body together with the bend of its lead, from the face the plug leaves. */
export const plugAndBend = {
  modularSupplyPlug: commonPractice<Range>([20, 35], { note: 'beyond the supply body' }),
  cardPowerPlug: seen(35, 'one source', undefined, {
    via: 'one article',
    note: 'beyond a 111 mm card; common practice too',
  }),
  cardEndPowerPlug: seen<Range>([25, 35], 'one source', undefined, {
    via: 'one article',
    note: 'beyond the card tip',
  }),
  angledMainsPlug: commonPractice<Range>([25, 35]),
  rightAngleSataPlug: commonPractice<Range>([20, 25], { note: 'beyond the board edge' }),
  frontUsbPlug: commonPractice<Range>([20, 25], { note: 'upright 20-pin plug above the board' }),
  frontUsbBend: commonPractice<Range>([20, 30], { note: 'above the plug' }),
} as const;

/** Bend radii as multiples of a diameter. */
export const bendFactors = {
  wireShortTerm: workmanship(6, 'one source', undefined, {
    via: 'the workmanship site, book 4, 4.03',
    note: 'of outer diameter',
  }),
  wireLongTerm: workmanship(10, 'one source', undefined, {
    via: 'the workmanship site, book 4, 4.03',
    note: 'of outer diameter',
  }),
  tubeOfBore: seen(6, 'one source', undefined, { via: "one hose maker's guide", note: 'of inside diameter' }),
} as const;

/**
 * Height needed above the face a plug leaves: what stands outside, a straight run, and the bend of the wire,
 * H = outside + straight + R + d / 2 with R = factor x d.
 */
export function plugAndBendHeight(
  outside: number,
  straight: number,
  wireDiameter: number,
  bendFactor: number,
): number {
  return outside + straight + bendFactor * wireDiameter + wireDiameter / 2;
}

/** Leads: spare length and how full a channel may be. */
export const leadPractice = {
  slackShare: commonPractice<Range>([0.05, 0.1]),
  channelFillShare: commonPractice(0.6),
} as const;

/** Room for hands and tools. */
export const handSpace = {
  fingerPrism: commonPractice({ width: 20, depth: 40 } as const),
  driverShaftDiameter: commonPractice<Range>([8, 10]),
  driverHandleDiameter: commonPractice(35),
  driverLength: commonPractice<Range>([150, 250]),
} as const;

/** Sheets of enclosures. */
export const enclosureSheets = {
  steelPanel: fromMemory<Range>([0.6, 1]),
  structuralPlate: seen(1, 'two sources', undefined, {
    via: 'two open drawings',
    note: 'steel; 1.5 for aluminium',
  }),
  glassPanel: fromMemory<Range>([3, 4]),
  standoffHeight: fromMemory<Range>([6.35, 6.5], {
    note: 'common parts; the standard asks for at least 6.35',
  }),
} as const;
