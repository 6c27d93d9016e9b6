/** Outlines and slot counts of the board form factors, in the board frame (`board-frame.ts`), mm. */
import {
  atxSpecification,
  dtxSpecification,
  flexAtxAddendum,
  microAtxSpecification,
  miniItxAddendum,
  ssiElectronicsBay,
} from './cited-documents';
import { citing, inches, type Published } from './published';

export type BoardForm =
  | 'ATX'
  | 'microATX'
  | 'Mini-ITX'
  | 'FlexATX'
  | 'Mini-DTX'
  | 'DTX'
  | 'SSI-CEB'
  | 'SSI-EEB';

/** Size of a board; microATX and FlexATX are the largest the form allows. */
export interface BoardFormFactor {
  /** Size along x, from top edge to slot-side edge. */
  readonly alongX: Published<number>;
  /** Size along y, from rear edge to front edge. */
  readonly alongY: Published<number>;
  /** Where the top edge lies in the shared frame: 0 but for Mini-ITX. */
  readonly topEdgeX: Published<number>;
  /** Expansion slots the form provides for. */
  readonly slots: Published<number>;
}

const atx = citing(atxSpecification);
const microAtx = citing(microAtxSpecification);
const miniItx = citing(miniItxAddendum);
const flexAtx = citing(flexAtxAddendum);
const dtx = citing(dtxSpecification);
const ssi = citing(ssiElectronicsBay);

const throughArticles = { via: 'two articles' };

export const boardFormFactors: Readonly<Record<BoardForm, BoardFormFactor>> = {
  ATX: {
    alongX: microAtx(inches(12), 'primary', 'table 3', { note: 'named 305 mm' }),
    alongY: microAtx(inches(9.6), 'primary', 'table 3', { note: 'named 244 mm' }),
    topEdgeX: atx(0, 'primary', 'figure 3'),
    slots: atx(7, 'two sources', undefined, throughArticles),
  },
  microATX: {
    alongX: microAtx(inches(9.6), 'primary', 'table 3', { note: 'largest; named 244 mm' }),
    alongY: microAtx(inches(9.6), 'primary', 'table 3', { note: 'largest; named 244 mm' }),
    topEdgeX: microAtx(0, 'primary', 'figure 3'),
    slots: microAtx(4, 'primary', 'section 2.3.1', { note: 'up to four' }),
  },
  'Mini-ITX': {
    alongX: miniItx(170, 'primary', 'table 1', {
      note: 'nominal 6.7 in is 170.18; boards measure 170.00 and set their holes from the slot edge',
    }),
    alongY: miniItx(170, 'primary', 'table 1'),
    topEdgeX: miniItx(inches(6.7) - 170, 'two sources', 'table 1', {
      via: 'two production board drawings',
      note: 'the slot edge stays at 170.18, so a 170.00 board starts 0.18 below the shared corner',
    }),
    slots: miniItx(1, 'two sources', undefined, throughArticles),
  },
  FlexATX: {
    alongX: flexAtx(inches(9), 'two sources', undefined, { ...throughArticles, note: 'largest' }),
    alongY: flexAtx(inches(7.5), 'two sources', undefined, { ...throughArticles, note: 'largest' }),
    topEdgeX: flexAtx(0, 'two sources', undefined, throughArticles),
    slots: flexAtx(3, 'derived', undefined, {
      note: '2, 3 and 4 are all published; 9.0 in of board reaches slot 3, slot 4 lies 5.38 mm from the edge',
    }),
  },
  'Mini-DTX': {
    alongX: dtx(inches(8), 'two sources', undefined, throughArticles),
    alongY: dtx(inches(6.7), 'two sources', undefined, throughArticles),
    topEdgeX: dtx(0, 'derived', undefined, { note: 'shares the microATX corner; drawing not read' }),
    slots: dtx(2, 'two sources', undefined, throughArticles),
  },
  DTX: {
    alongX: dtx(inches(8), 'two sources', undefined, throughArticles),
    alongY: dtx(inches(9.6), 'two sources', undefined, throughArticles),
    topEdgeX: dtx(0, 'derived', undefined, { note: 'shares the microATX corner; drawing not read' }),
    slots: dtx(2, 'two sources', undefined, throughArticles),
  },
  'SSI-CEB': {
    alongX: ssi(inches(12), 'primary', 'figure 2'),
    alongY: ssi(inches(10.5), 'primary', 'figure 2', {
      note: '10.100 in from the first hole row, plus 0.400',
    }),
    topEdgeX: ssi(0, 'primary', 'figure 2'),
    slots: ssi(7, 'derived', 'figure 2', { note: 'same slot side as SSI-EEB' }),
  },
  'SSI-EEB': {
    alongX: ssi(inches(12), 'primary', 'figure 2'),
    alongY: ssi(inches(13), 'primary', 'figure 2'),
    topEdgeX: ssi(0, 'primary', 'figure 2'),
    slots: ssi(7, 'primary', 'figure 2', { note: 'positions, one of them a riser slot' }),
  },
};

/** Board thickness and the smallest microATX seen in practice. */
export const boardSheet = {
  thickness: microAtx(inches(0.062), 'primary', 'page 14; also ATX 2.2 figure 7 note', {
    note: 'a production board measures 1.60',
  }),
  smallestCommonMicroAtx: microAtx(inches(6.75), 'one source', undefined, {
    via: 'one article',
    note: 'practice, along either side; the specification sets only the maximum',
  }),
} as const;

/** Space round an SSI-EEB board that its chassis volume reserves (5.08 past each side, 12.70 past the front). */
export const ssiEebChassisVolume = {
  alongX: ssi(inches(12.4), 'primary', 'figure 16'),
  alongY: ssi(inches(13.5), 'primary', 'figure 16'),
  memoryLatchPastFrontEdge: ssi(inches(0.4), 'primary', 'figure 2'),
} as const;
