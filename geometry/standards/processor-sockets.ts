/**
 * Cooler hole patterns round processor sockets, named by their size in mm, and the height of the lid above the
 * board. Directions as in the board frame (`board-frame.ts`); the origin is the centre of the socket.
 */
import type { BoardPoint } from './board-frame';
import { fromMemory, noStandard } from './cited-documents';
import { type CitedDocument, citing, type Published } from './published';

export type SocketPattern = 'square-75' | 'square-78' | 'square-80' | 'rectangle-54x90';

export interface SocketHoles {
  readonly holes: Published<readonly BoardPoint[]>;
  readonly holeDiameter: Published<number>;
  /** Top of the seated processor's lid above the board's component side. */
  readonly lidHeight: Published<number>;
  /** Side of the square a cooler base may use round the socket centre. */
  readonly keepIn: Published<number>;
}

const designGuide = {
  document: 'LGA1155 Socket Thermal/Mechanical Specifications and Design Guidelines',
  publisher: 'Intel',
} satisfies CitedDocument;
const keepInDrawing = {
  document: 'Thermal/Mechanical Specifications, drawing E21319 (LGA1156 and LGA1155 ATX keep-ins)',
  publisher: 'Intel',
  revision: 'L',
} satisfies CitedDocument;

const guide = citing(designGuide);
const drawing = citing(keepInDrawing);
const articles = citing(noStandard);

/** Corners of a rectangle of `alongX` by `alongY` about the socket centre. */
function corners(alongX: number, alongY: number): readonly BoardPoint[] {
  const x = alongX / 2;
  const y = alongY / 2;
  return [
    { x: -x, y: -y },
    { x: -x, y },
    { x, y },
    { x, y: -y },
  ];
}

const holeOfSameFamily = drawing(4.03, 'derived', undefined, {
  note: 'the printed hole of the 75 mm pattern',
});
const keepInOfSameFamily = drawing(95, 'derived', undefined, {
  note: 'the printed keep-in of the 75 mm pattern',
});

export const socketPatterns: Readonly<Record<SocketPattern, SocketHoles>> = {
  'square-75': {
    holes: drawing(corners(75, 75), 'primary'),
    holeDiameter: drawing(4.03, 'primary', undefined, { plusMinus: 0.05, note: '+0.05 -0.03' }),
    lidHeight: guide(7.781, 'primary', 'table 5-2', {
      plusMinus: 0.335,
      note: 'spread stated as root sum of squares',
    }),
    keepIn: drawing(95, 'primary'),
  },
  'square-78': {
    holes: articles(corners(78, 78), 'two sources', undefined, { via: 'three articles' }),
    holeDiameter: holeOfSameFamily,
    lidHeight: articles(7, 'one source', undefined, {
      plusMinus: 0.5,
      via: 'one article',
      note: 'printed as 6.5 to 7.5; a later socket stands 0.1 higher',
    }),
    keepIn: keepInOfSameFamily,
  },
  'square-80': {
    holes: articles(corners(80, 80), 'two sources', undefined, { via: 'a socket table and an article' }),
    holeDiameter: fromMemory(4, { note: 'threaded studs on some sockets' }),
    lidHeight: fromMemory(8, { plusMinus: 1 }),
    keepIn: fromMemory(95),
  },
  'rectangle-54x90': {
    holes: articles(corners(90, 54), 'two sources', undefined, {
      via: 'a socket table and one transcription',
      note: '90 along x, parallel to the memory in the usual layout: that direction has one source',
    }),
    holeDiameter: fromMemory(4, { note: 'bracket screws into a back plate' }),
    lidHeight: articles(7.5, 'one source', undefined, {
      plusMinus: 0.5,
      via: 'one article',
      note: 'printed as 7 to 8; two open drawings use 7.35 without a source',
    }),
    keepIn: fromMemory(100, { note: 'along x, over the usual bracket' }),
  },
};

/** The published stack under the lid of the 75 mm pattern: each with its own tolerance. */
export const lidHeightStack = {
  socketSeatingPlane: guide(3.4, 'primary', 'table 5-2', { plusMinus: 0.2 }),
  packageLandsToLidTop: guide(4.381, 'primary', 'table 5-2', { plusMinus: 0.269 }),
  boardToLidTop: guide(7.781, 'primary', 'table 5-2 note 2', { plusMinus: 0.335 }),
} as const;

/** Further rows on sockets and coolers. */
export const coolerRoom = {
  noRouteRing: drawing(6, 'primary'),
  socketCentreScatterMiniItx: articles(5, 'one source', undefined, {
    via: 'one article',
    note: 'plus or minus, between boards',
  }),
  socketCentreScatterOther: articles(15, 'one source', undefined, {
    via: 'one article',
    note: 'plus or minus, between boards',
  }),
  centreOfGravityAboveLid: articles(25.4, 'one source', undefined, {
    via: 'one article',
    note: 'largest, 78 mm pattern',
  }),
} as const;
