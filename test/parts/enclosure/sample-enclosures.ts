/** Invented enclosures in every layout; enclosure frame, mm. */
import { type EnclosureSpec, enclosureSpecSchema } from '../../../geometry/parts/enclosure/spec';

const identity = { kind: 'enclosure', maker: 'Generic' } as const;

export const microAtxTower: EnclosureSpec = enclosureSpecSchema.parse({
  ...identity,
  model: 'microATX tower',
  interior: { length: 380, height: 380, trayToSide: 175, behindTray: 22 },
  walls: { side: { material: 'glass', thickness: 4 } },
  tray: { cutout: { from: [60, 210], to: [180, 330] }, openings: [{ from: [250, 110], to: [275, 300] }] },
  board: { fromTop: 30, standoff: 6.5, holes: 'BCFHJLMRS', slots: 4 },
  supplyBays: [{ id: 'rear', form: 'ATX', face: 'rear', at: [46, 85] }],
  fanSeats: [
    { id: 'rear', sizes: [92, 120], face: 'rear', at: [290, 115] },
    { id: 'front low', sizes: [120, 140], face: 'front', at: [80, 90] },
    { id: 'front high', sizes: [120, 140], face: 'front', at: [230, 90] },
    { id: 'top', sizes: [120], outside: true, face: 'top', at: [150, 90] },
  ],
  radiatorRails: [{ id: 'front', rows: ['120', '240'], face: 'front', at: [150, 90], turn: 90 }],
  driveSeats: [{ id: 'behind', form: '2.5', face: 'tray back', at: [300, 60] }],
  vents: [{ face: 'floor', from: [20, 10], to: [160, 160], open: 0.5 }],
  shroud: { height: 92, length: 250 },
  feet: { height: 12, width: 25, length: 40, inset: 15 },
  handle: { height: 40, length: 160, width: 30 },
});

export const atxTower: EnclosureSpec = enclosureSpecSchema.parse({
  ...identity,
  model: 'ATX tower',
  interior: { length: 420, height: 460, trayToSide: 180, behindTray: 25 },
  board: { fromTop: 40, standoff: 6.35, holes: 'ABCFGHJKLMRS', slots: 7 },
  supplyBays: [{ id: 'floor', form: 'ATX', face: 'rear', at: [50, 85] }],
});

/** The board lies flat over the supply, components up. */
export const flatCube: EnclosureSpec = enclosureSpecSchema.parse({
  ...identity,
  model: 'Flat cube',
  interior: { length: 260, height: 240, trayToSide: 215, behindTray: 0 },
  board: { corner: [2.1082, 95, 18], rotate: [-90, 0, 0], standoff: 6.5, holes: 'CFHJ', slots: 2 },
  supplyBays: [{ id: 'below', form: 'SFX', face: 'front', at: [45, 100] }],
});

/** Turned over about the long axis: the components face the back panel and the slots lie on top. */
export const upsideDown: EnclosureSpec = enclosureSpecSchema.parse({
  ...identity,
  model: 'Upside down tower',
  interior: { length: 300, height: 320, trayToSide: 190, behindTray: 0 },
  board: { corner: [2.1082, 50, 175], rotate: [180, 0, 0], standoff: 6.5, holes: 'BCFHJLMRS', slots: 4 },
  supplyBays: [],
});

/** Turned by a quarter: the rear connectors look up. */
export const chimney: EnclosureSpec = enclosureSpecSchema.parse({
  ...identity,
  model: 'Chimney',
  interior: { length: 300, height: 320, trayToSide: 170, behindTray: 15 },
  board: { corner: [260, 320 - 2.1082, 0], rotate: [0, 0, -90], standoff: 6.5, holes: 'CFHJ', slots: 2 },
  supplyBays: [],
});

/** The card hangs behind the tray on a riser: its key notch 59.2074 mm before the rear wall's inner face. */
export const sandwich: EnclosureSpec = enclosureSpecSchema.parse({
  ...identity,
  model: 'Sandwich',
  interior: { length: 330, height: 200, trayToSide: 75, behindTray: 150 },
  board: { fromTop: 12, standoff: 6.5, holes: 'CFHJ', slots: 0 },
  riser: { face: 'tray back', at: [59.2074, 60], inset: 20, slots: 3 },
  supplyBays: [{ id: 'front', form: 'SFX', face: 'front', at: [90, -70] }],
});
