/**
 * Headers and connectors on boards, and the plugs that go into them, mm.
 *
 * `along` runs with the rows of contacts, `across` over them, heights are above the board's component side.
 * `bendSpace` is what the leads want beyond the plug; `pullTravel` is how far the plug moves to come free.
 * The board standards fix none of their places.
 */
import {
  cardElectromechanical,
  commonPractice,
  fromMemory,
  noStandard,
  thinMiniItxGuide,
} from './cited-documents';
import { fourPointTwoPitchLength, powerPlugs } from './power-connectors';
import { citing, type Published } from './published';

export type BoardConnectorKind =
  | 'main power 24-pin'
  | 'processor power 2x4'
  | 'processor power 2x2'
  | 'fan 4-pin'
  | 'USB 3 20-pin'
  | 'USB-C internal'
  | 'USB 2 10-pin'
  | 'front panel 10-pin'
  | 'audio 10-pin'
  | 'SATA vertical'
  | 'SATA right-angle'
  | 'lighting 4-pin'
  | 'lighting 3-pin';

export interface ConnectorBody {
  readonly along: Published<number>;
  readonly across: Published<number>;
}

export interface BoardConnector {
  readonly header: ConnectorBody & { readonly height: Published<number> };
  /** `beyond` is the far end of the mated plug: above the board, or forward of the header for right-angle ones. */
  readonly plug: ConnectorBody & { readonly beyond: Published<number> };
  readonly leaves: 'up' | 'sideways';
  readonly bendSpace: Published<number>;
  readonly pullTravel: Published<number>;
}

const cem = citing(cardElectromechanical);
const seen = citing(noStandard);

const powerHeaderHeight = 13.1;

function powerHeader(pairs: number, kind: '2x2' | '2x4' | '2x12', bend: number): BoardConnector {
  const plug = powerPlugs[kind];
  const along =
    kind === '2x4'
      ? cem(18, 'primary', 'figure 8-6', { note: 'the right-angle header; the length rule agrees' })
      : seen(fourPointTwoPitchLength(pairs), kind === '2x12' ? 'two sources' : 'derived', undefined, {
          via: 'a land pattern and a board model',
          note: "4.2 (n - 1) + 5.4; a maker's model of the 24-pin header is 52.0",
        });
  return {
    header: {
      along,
      across: seen(11, 'one source', undefined, {
        via: 'one land pattern',
        note: '9.60 without the latch ramp',
      }),
      height: seen(powerHeaderHeight, 'two sources', undefined, {
        via: "a maker's model and a footprint",
        note: '12.8 to 13.1',
      }),
    },
    plug: {
      along: plug.along,
      across: plug.acrossOverLatch,
      beyond: seen(powerHeaderHeight + 10.7, 'derived', undefined, {
        note: 'header 13.1 + 10.7 left outside (CEM 3.0)',
      }),
    },
    leaves: 'up',
    bendSpace: fromMemory(bend, { note: 'the 24-pin plug with its wires takes 30 to 35 above the board' }),
    pullTravel: cem(19.6 - 10.7, 'derived', 'figures 8-4 to 8-8', { note: 'plug 19.6 less 10.7 outside' }),
  };
}

/** Unshrouded rows of 2.54 mm pitch pins with a crimp housing on top. */
function pinHeader(columns: number, rows: number): BoardConnector {
  return {
    header: {
      along: fromMemory(2.54 * columns),
      across: fromMemory(2.54 * rows),
      height: fromMemory(8.5, { note: 'base 2.5 and pins 6' }),
    },
    plug: {
      along: fromMemory(2.54 * columns + 0.3),
      across: fromMemory(2.54 * rows + 0.3),
      beyond: fromMemory(17, { note: 'base 2.5 and housing 14.5' }),
    },
    leaves: 'up',
    bendSpace: fromMemory(8),
    pullTravel: fromMemory(6),
  };
}

const model = { via: 'one part model' };

export const boardConnectors: Readonly<Record<BoardConnectorKind, BoardConnector>> = {
  'main power 24-pin': powerHeader(12, '2x12', 11),
  'processor power 2x4': powerHeader(4, '2x4', 10),
  'processor power 2x2': powerHeader(2, '2x2', 8),
  'fan 4-pin': {
    header: {
      along: seen(11.6, 'one source', undefined, model),
      across: seen(4.3, 'one source', undefined, model),
      height: seen(7, 'one source', undefined, {
        ...model,
        note: 'the friction-lock tab is remembered to reach 11.4',
      }),
    },
    plug: { along: fromMemory(10.2), across: fromMemory(6), beyond: fromMemory(14) },
    leaves: 'up',
    bendSpace: fromMemory(8),
    pullTravel: fromMemory(8),
  },
  'USB 3 20-pin': {
    header: {
      along: fromMemory(26, { note: 'pitch 2.00, 2 x 10; outer drawing not read' }),
      across: fromMemory(8.5),
      height: fromMemory(10),
    },
    plug: {
      along: fromMemory(26),
      across: fromMemory(9),
      beyond: commonPractice(25, {
        note: '20 to 25; typical plugs exceed 20 (Thin Mini-ITX guide, 2.5.4.1)',
      }),
    },
    leaves: 'up',
    bendSpace: commonPractice(25, { note: '20 to 30: the lead is stiff' }),
    pullTravel: fromMemory(8),
  },
  'USB-C internal': {
    header: { along: fromMemory(14.5), across: fromMemory(7.5), height: fromMemory(13) },
    plug: {
      along: fromMemory(14),
      across: fromMemory(7.5),
      beyond: commonPractice(25, { note: '20 to 25' }),
    },
    leaves: 'up',
    bendSpace: commonPractice(25, { note: '20 to 30: the lead is stiff' }),
    pullTravel: fromMemory(6),
  },
  'USB 2 10-pin': pinHeader(5, 2),
  'front panel 10-pin': pinHeader(5, 2),
  'audio 10-pin': pinHeader(5, 2),
  'SATA vertical': {
    header: {
      along: seen(16, 'one source', undefined, model),
      across: seen(4, 'one source', undefined, model),
      height: seen(8, 'one source', undefined, model),
    },
    plug: { along: fromMemory(15), across: fromMemory(5), beyond: fromMemory(24) },
    leaves: 'up',
    bendSpace: fromMemory(15),
    pullTravel: fromMemory(6),
  },
  'SATA right-angle': {
    header: {
      along: fromMemory(16, { note: 'a stack of two ports; drawing not read' }),
      across: fromMemory(12, { note: 'depth behind the mating face' }),
      height: fromMemory(14.5, { note: 'two ports high' }),
    },
    plug: {
      along: fromMemory(15),
      across: fromMemory(5),
      beyond: commonPractice(25, { note: '20 to 25 past the edge' }),
    },
    leaves: 'sideways',
    bendSpace: fromMemory(15),
    pullTravel: fromMemory(6),
  },
  'lighting 4-pin': pinHeader(4, 1),
  // Three pins on four positions: one is left out as the key.
  'lighting 3-pin': pinHeader(4, 1),
};

/** The published floor under the height of an upright USB 3 plug. */
export const usb3PlugExceeds = citing(thinMiniItxGuide)(20, 'primary', 'section 2.5.4.1', {
  note: 'typical plugs exceed it',
});
