/**
 * An enclosure rebuilt from what makers publish about it. Each wall is put where a published limit says it must be, else
 * where the outer size says, else where it usually is; how it was found stands in the report and, as source and band,
 * in the spec itself, so every verdict that rests on an assumed wall says so.
 */
import { enclosureSheets } from '../../standards/assembly-practice';
import { holeLetters } from '../../standards/mounting-holes';
import { rearPanelInnerFaceY } from '../../standards/rear-aperture';
import type { Dimension } from '../dimension';
import { nominalOr } from '../dimension';
import type { EnclosureSpec, Face } from '../enclosure/fields';
import { enclosureSpecSchema } from '../enclosure/spec';
import { boardWallsOf, hasSupplyUnderBoard, standoff, supplyRoomOf, usualWalls } from './board-walls';
import { furnish } from './furnish';
import type { EnclosureLayoutName, PublishedLimits } from './limits';
import { asDimension, fixed, less, published, type Reckoned, sumOf } from './reckoning';
import { riserPlace } from './riser-place';

export interface FoundFace {
  readonly face: Exclude<Face, 'tray' | 'tray back'>;
  /** Assumed faces are unknown: a usual value stands in. */
  readonly found: 'limit' | 'outer size' | 'standard' | 'assumed';
  /** 'cooler height 165 + socket and processor up to the lid + ...' */
  readonly how: string;
  /** Half-width of its band, mm. */
  readonly plusMinus: number;
  /** Where the outer size says something else: how much more room it leaves, mm. */
  readonly outerSays?: number;
}

export interface EnclosureFromLimits {
  readonly spec: EnclosureSpec;
  readonly faces: readonly FoundFace[];
  /** Why the figures cannot all be true; the spec is then not to be used. */
  readonly problems: readonly string[];
}

export interface Identity {
  readonly maker: string;
  readonly model: string;
}

/** Which wall stands at each end of the board's own axes. */
interface WallsOfLayout {
  readonly connectors: FoundFace['face'];
  readonly tip: FoundFace['face'];
  readonly components: FoundFace['face'];
  readonly behind: FoundFace['face'];
  readonly topEdge: FoundFace['face'];
  readonly slotEdge: FoundFace['face'];
}

const upright: WallsOfLayout = {
  connectors: 'rear',
  tip: 'front',
  components: 'side',
  behind: 'back',
  topEdge: 'top',
  slotEdge: 'floor',
};
const lying: WallsOfLayout = {
  ...upright,
  components: 'top',
  behind: 'floor',
  topEdge: 'back',
  slotEdge: 'side',
};
const layouts: Readonly<Record<EnclosureLayoutName, WallsOfLayout>> = {
  'upright tower': upright,
  'card behind the board on a riser': upright,
  'board lying flat': lying,
  'cube with the board on a shelf': lying,
  'board turned a quarter': {
    ...upright,
    connectors: 'top',
    tip: 'floor',
    topEdge: 'front',
    slotEdge: 'rear',
  },
};

type Outer = 'outerLength' | 'outerHeight' | 'outerWidth';
const outerAlong: Readonly<Record<FoundFace['face'], Outer>> = {
  rear: 'outerLength',
  front: 'outerLength',
  floor: 'outerHeight',
  top: 'outerHeight',
  back: 'outerWidth',
  side: 'outerWidth',
};

/** Lengths of the inside along the board's axes, each with the face that was found by it. */
interface Inside {
  readonly along: Reckoned;
  /** Tray face to the wall the components look at. */
  readonly above: Reckoned;
  readonly behind: Reckoned;
  readonly beforeTop: Reckoned;
  /** Wall beyond the top edge to the wall beyond the slots. */
  readonly across: Reckoned;
  /** The same to what ends the room of a card before the wall does: a supply, its shroud. */
  readonly endOfCard: Reckoned | undefined;
}

export function enclosureFromLimits(limits: PublishedLimits, identity: Identity): EnclosureFromLimits {
  const walls = layouts[limits.layout];
  const faces: FoundFace[] = [
    {
      face: walls.connectors,
      found: 'standard',
      how: 'the rear panel stands a fixed distance behind the board: ATX Specification 2.2, figure 4',
      plusMinus: rearPanelInnerFaceY.plusMinus ?? 0.25,
    },
  ];
  const inside = insideOf(limits, walls, faces);
  const spec = specOf(limits, inside, identity);
  const read = enclosureSpecSchema.safeParse(spec);
  return {
    spec,
    faces,
    problems: read.success ? [] : read.error.issues.map(({ message }) => message),
  };
}

function insideOf(limits: PublishedLimits, walls: WallsOfLayout, faces: FoundFace[]): Inside {
  const stated = boardWallsOf(limits);
  const usual = usualWalls(limits);
  const sheets = sheetsOf(limits);
  const tray = fixed(enclosureSheets.structuralPlate.value, 'tray');
  const riser = riserPlace(limits);
  const found = (
    face: FoundFace['face'],
    limit: Reckoned | undefined,
    room: Reckoned | undefined,
    standIn: Reckoned,
  ): Reckoned => {
    const value = limit ?? room ?? standIn;
    const kind = value.isAssumed ? 'assumed' : limit ? 'limit' : 'outer size';
    const difference = limit && room ? room.value - limit.value : undefined;
    faces.push({
      face,
      found: kind,
      how: value.how,
      plusMinus: value.plusMinus,
      ...(difference === undefined ? {} : { outerSays: Number(difference.toFixed(2)) }),
    });
    return value;
  };
  /** What the outer size leaves along the axis of a face, the given lengths taken off. */
  const outer = (face: FoundFace['face'], ...taken: readonly Reckoned[]): Reckoned | undefined => {
    const key = outerAlong[face];
    const size = limits[key];
    if (size === undefined) return undefined;
    const name = { outerLength: 'outer length', outerHeight: 'outer height', outerWidth: 'outer width' }[key];
    return less(published(size, name), ...sheets[key], ...taken);
  };
  const along = found(walls.tip, stated.along, outer(walls.tip), usual.along);
  const behindLimit = riser?.behind ?? stated.behind;
  const aboveFirst = stated.above ?? usual.above;
  const behind = found(walls.behind, behindLimit, outer(walls.behind, aboveFirst, tray), usual.behind);
  const above = found(walls.components, stated.above, outer(walls.components, behind, tray), usual.above);
  const beforeTop = found(walls.topEdge, undefined, undefined, stated.beforeTop);
  const pastCard = stated.pastSlots && sumOf(beforeTop, stated.pastSlots);
  const underSupply = hasSupplyUnderBoard(limits);
  const across = found(
    walls.slotEdge,
    riser?.height ?? (underSupply ? undefined : pastCard),
    outer(walls.slotEdge),
    underSupply && pastCard ? sumOf(pastCard, supplyRoomOf(limits)) : sumOf(beforeTop, usual.pastSlots),
  );
  return { along, above, behind, beforeTop, across, endOfCard: underSupply ? pastCard : undefined };
}

/** The sheets on either side along each outer size. */
function sheetsOf(limits: PublishedLimits): Readonly<Record<Outer, readonly Reckoned[]>> {
  const sheet = nominalOr(limits.sheet, enclosureSheets.structuralPlate.value);
  const glass = nominalOr(limits.glass, sheet);
  const two = [fixed(2 * sheet, 'two sheets')];
  return { outerLength: two, outerHeight: two, outerWidth: [fixed(sheet + glass, 'back and side panel')] };
}

function specOf(limits: PublishedLimits, inside: Inside, identity: Identity): EnclosureSpec {
  const { boardForm, slots, sheet, glass } = limits;
  const holes = holeLetters[boardForm].value.required.filter((letter) => letter.length === 1).join('');
  const place = placeOf(limits.layout, inside);
  const base: EnclosureSpec = {
    kind: 'enclosure',
    ...identity,
    interior: place.interior,
    ...(sheet === undefined && glass === undefined
      ? {}
      : {
          walls: {
            ...(sheet === undefined ? {} : { sheet }),
            ...(glass === undefined ? {} : { side: { thickness: glass, material: 'glass' as const } }),
          },
        }),
    board: {
      ...place.board,
      standoff: asDimension(standoff),
      holes,
      slots: limits.layout === 'card behind the board on a riser' ? 0 : slots,
    },
    supplyBays: [],
  };
  return furnish(base, limits, inside.endOfCard);
}

type Place = Pick<EnclosureSpec, 'interior'> & { readonly board: Partial<EnclosureSpec['board']> };

/** Lengths along the board's axes become those of the enclosure; the board is put where its walls leave it. */
function placeOf(layout: EnclosureLayoutName, inside: Inside): Place {
  const { along, above, behind, beforeTop, across } = inside;
  const panel = fixed(-rearPanelInnerFaceY.value, 'rear panel to the board');
  const tray = fixed(enclosureSheets.structuralPlate.value, 'tray');
  const corner = (x: Reckoned, y: Reckoned, z: Dimension): EnclosureSpec['board']['corner'] => [
    asDimension(x),
    asDimension(y),
    z,
  ];
  switch (layout) {
    case 'upright tower':
    case 'card behind the board on a riser':
      return {
        interior: {
          length: asDimension(along),
          height: asDimension(across),
          trayToSide: asDimension(above),
          behindTray: asDimension(behind),
        },
        board: { fromTop: asDimension(beforeTop) },
      };
    case 'board turned a quarter':
      return {
        interior: {
          length: asDimension(across),
          height: asDimension(along),
          trayToSide: asDimension(above),
          behindTray: asDimension(behind),
        },
        board: { corner: corner(less(across, beforeTop), less(along, panel), 0), rotate: [0, 0, -90] },
      };
    case 'board lying flat':
    case 'cube with the board on a shelf': {
      // The inside reaches from one sheet's thickness below z = 0; the top edge stands `beforeTop` from there.
      const deck = sumOf(behind, tray);
      return {
        interior: {
          length: asDimension(along),
          height: asDimension(sumOf(deck, above)),
          trayToSide: asDimension(less(across, tray)),
          behindTray: 0,
        },
        board: {
          corner: corner(panel, deck, asDimension(less(beforeTop, tray))),
          rotate: [-90, 0, 0],
        },
      };
    }
  }
}
