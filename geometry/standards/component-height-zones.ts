/**
 * Published component-height zones as boxes in the board frame (`board-frame.ts`), mm.
 *
 * Each box rises from the component side to the limit. A `board component` limit is what parts on the board
 * may reach; a `chassis clearance` is what the enclosure must leave free. Real boards and coolers ignore area A:
 * these are for a conformance check and never the envelope of a board.
 */
import { type BoardForm, boardFormFactors } from './board-form-factors';
import type { BoardBox } from './board-frame';
import {
  atxSpecification,
  cardElectromechanical,
  microAtxSpecification,
  miniItxAddendum,
  ssiElectronicsBay,
  thinMiniItxGuide,
} from './cited-documents';
import { keyNotchY, slotCentrelineX, slotConnectorSection, slotPitch } from './expansion-slots';
import { citing, inches, type Published, type Range, type Remarks } from './published';

export interface ComponentHeightZone {
  /** Area letter as the document prints it, and which part of it when an area is made of several boxes. */
  readonly area: string;
  readonly limits: 'board component' | 'chassis clearance';
  readonly box: Published<BoardBox>;
}

const atx = citing(atxSpecification);
const microAtx = citing(microAtxSpecification);
const miniItx = citing(miniItxAddendum);
const ssi = citing(ssiElectronicsBay);
const cem = citing(cardElectromechanical);

/** Heights the documents print, apart from the boxes. */
export const componentHeights = {
  areaABoardComponent: atx(inches(2.8), 'primary', 'figure 7'),
  areaAChassisRequired: atx(inches(3), 'primary', 'figure 7; microATX 1.2 table 6'),
  areaAChassisRecommended: atx(inches(3.5), 'primary', 'figure 7 note; microATX 1.2 table 6'),
  areaB: atx(inches(0.6), 'primary', 'figure 7; CEM 3.0 figure 9-20'),
  areaC: atx(inches(1.5), 'primary', 'figure 7', { note: 'changed to match microATX' }),
  thinMiniItx: citing(thinMiniItxGuide)(20, 'primary', 'section 2.5.4.1'),
  ssiEebCardSide: ssi(inches(0.6), 'primary', 'figure 3, table 2'),
  ssiEebCoreSide: ssi(inches(3), 'primary', 'figure 3, table 2'),
  ssiEebTallCore: ssi(inches(6), 'primary', 'figure 3, table 2'),
} as const;

/** What may stand on the solder side, and the space the chassis leaves for it. */
export const secondarySideHeights = {
  inContactSquare: atx(inches(0.01), 'primary', 'section 3.4.2'),
  conductiveLeads: atx(inches(0.098), 'primary', 'section 3.4.2'),
  nonConductivePins: atx(inches(0.12), 'primary', 'section 3.4.2'),
  retentionDevices: atx(inches(0.2), 'primary', 'section 3.4.2'),
  chassisClearSpace: atx(inches(0.25), 'primary', 'section 3.4.2', { note: 'at least' }),
  ssiEeb: ssi(inches(0.118), 'primary'),
} as const;

const slotSideFrom = inches(12) - inches(5.8);
const deepBandFrom = inches(12) - inches(7.5);

function zone(
  area: string,
  limits: ComponentHeightZone['limits'],
  box: Published<BoardBox>,
): ComponentHeightZone {
  return { area, limits, box };
}

/** The areas of ATX 2.2 figure 7, cut off at the board's slot-side edge. */
function atxAreas(slotSideEdge: number, cite: typeof atx, remarks: Remarks): ComponentHeightZone[] {
  const front = inches(9.6);
  const place = (x: Range, y: Range, height: number) =>
    cite<BoardBox>({ x, y, z: [0, height] }, 'derived', 'ATX 2.2 figure 7', remarks);
  const areaA = (limits: ComponentHeightZone['limits'], name: string, height: number) => [
    zone(`A${name}`, limits, place([0, slotSideFrom], [0, inches(6.5)], height)),
    zone(
      `A${name}, deeper band`,
      limits,
      place([deepBandFrom, slotSideFrom], [inches(6.5), inches(7.5)], height),
    ),
  ];
  return [
    ...areaA('board component', '', componentHeights.areaABoardComponent.value),
    ...areaA('chassis clearance', ' required', componentHeights.areaAChassisRequired.value),
    ...areaA('chassis clearance', ' recommended', componentHeights.areaAChassisRecommended.value),
    zone(
      'B',
      'board component',
      place([slotSideFrom, slotSideEdge], [0, front], componentHeights.areaB.value),
    ),
    zone(
      'C',
      'board component',
      place([0, deepBandFrom], [inches(6.5), front], componentHeights.areaC.value),
    ),
    zone(
      'C, beside the deeper band',
      'board component',
      place([deepBandFrom, slotSideFrom], [inches(7.5), front], componentHeights.areaC.value),
    ),
  ];
}

function miniItxAreas(): ComponentHeightZone[] {
  const top = boardFormFactors['Mini-ITX'].topEdgeX.value;
  const slotEdge = top + 170;
  const place = (area: string, x: Range, y: Range, height: number) =>
    zone(
      area,
      'board component',
      miniItx<BoardBox>({ x, y, z: [0, height] }, 'two sources', 'figure 4', { via: 'two transcriptions' }),
    );
  return [
    place('A', [top, slotEdge - 15], [27, 140], 57),
    place('B', [slotEdge - 15, slotEdge], [0, 170], 16),
    place('C', [top, slotEdge - 15], [140, 170], 38),
    place('D', [top, slotEdge - 15], [0, 27], 39),
  ];
}

/** Zones of a form; empty for the forms whose zone figure has not been read (FlexATX, DTX, SSI). */
export function componentHeightZones(form: BoardForm): readonly ComponentHeightZone[] {
  if (form === 'ATX') {
    return atxAreas(inches(12), atx, {
      note: 'from the printed 5.800, 6.500 and 7.500 in, the 7.500 read both ways for the deeper band; C is the rest',
    });
  }
  if (form === 'microATX') {
    return atxAreas(inches(9.6), microAtx, {
      note: 'heights of microATX 1.2 table 6; extents of ATX 2.2 figure 7 in the shared frame, figure not read',
    });
  }
  return form === 'Mini-ITX' ? miniItxAreas() : [];
}

/**
 * What may stand on the board under a card seated in a slot (by number from 1), across one slot pitch:
 * low at the rear, 15.24 further forward, 6.35 right behind the connector. Where boxes overlap the lowest holds.
 */
export function underCardZones(slot: number, boardDepth: number): readonly ComponentHeightZone[] {
  const centre = slotCentrelineX(slot);
  const half = slotPitch.value / 2;
  const across: Range = [centre - half, centre + half];
  const rearEnd = keyNotchY.value - slotConnectorSection.rearEndToKeyNotch.value;
  const place = (area: string, x: Range, y: Range, height: number) =>
    zone(area, 'board component', cem<BoardBox>({ x, y, z: [0, height] }, 'derived', 'figure 9-20'));
  return [
    place('under card, rear', across, [0, 15.25], inches(0.2)),
    place('under card', across, [15.25, boardDepth], inches(0.6)),
    place('behind connector', [centre - 1.25, centre + 1.25], [rearEnd - 10.3, rearEnd], 6.35),
  ];
}
