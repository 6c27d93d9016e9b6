/**
 * How far the six walls stand from the board, as seen from the board itself: along its x (down from the top edge), y
 * (forward from the rear edge) and z (out of the component face), mm. Published limits are distances from the board or
 * from what stands in it, so here they become planes; which wall of the enclosure each plane is, the layout says.
 */
import { enclosureSheets } from '../../standards/assembly-practice';
import { boardFormFactors, boardSheet } from '../../standards/board-form-factors';
import { bracketPlateY } from '../../standards/card-bracket';
import { cardOutline, cardPartHeights } from '../../standards/card-envelope';
import { slotCentrelineX, slotConnectorSection, slotPitch } from '../../standards/expansion-slots';
import { lidHeightStack } from '../../standards/processor-sockets';
import { rearPanelInnerFaceY } from '../../standards/rear-aperture';
import { supplyForms } from '../../standards/supply-forms';
import { DEFAULT_FROM_TOP_MM } from '../enclosure/layout';
import type { PublishedLimits } from './limits';
import { assumed, fixed, less, ofStandard, published, type Reckoned, sumOf } from './reckoning';

/** Room nobody published: wide enough to hold what is usual, common practice without a source. */
const UNKNOWN_PLUS_MINUS_MM = 10;
/** Between the card or the board and the floor when nothing is said. */
const USUAL_GAP_MM = 10;
/** Middle of the board of a card on a riser behind the tray: its backplate needs it. Usual, no source. */
export const SEAT_BEHIND_TRAY_MM = 10;
/** Usual room behind a tray, common practice. */
const USUAL_BEHIND_MM = 20;

export const standoff = assumed(enclosureSheets.standoffHeight.value[1], 0.15, 'standoff');
const boardThickness = fixed(boardSheet.thickness.value, 'board thickness');
const lid = ofStandard(lidHeightStack.boardToLidTop, 'socket and processor up to the lid');

/** Standoffs are known well enough not to make the face behind them an assumption. */
const standoffBand: Reckoned = { ...standoff, isAssumed: false };

export interface BoardWalls {
  /** Inner face of the wall with the connectors to inner face of the wall the card points at. */
  readonly along: Reckoned | undefined;
  /** Face the board stands on to the wall its components look at. */
  readonly above: Reckoned | undefined;
  /** Rear face of the tray to the wall behind it. */
  readonly behind: Reckoned | undefined;
  /** Wall beyond the top edge to the top edge of the board. */
  readonly beforeTop: Reckoned;
  /** Top edge of the board to the wall beyond its slots. */
  readonly pastSlots: Reckoned | undefined;
}

export function boardWallsOf(limits: PublishedLimits): BoardWalls {
  const { cardLength, frontFan, cardThickness, behindTray } = limits;
  const onRiser = limits.layout === 'card behind the board on a riser';
  return {
    along: cardLength === undefined ? undefined : alongCard(cardLength, frontFan),
    above: aboveBoard(limits),
    behind: behindTray === undefined ? undefined : published(behindTray, 'room behind the tray'),
    beforeTop: assumed(DEFAULT_FROM_TOP_MM, UNKNOWN_PLUS_MINUS_MM / 2, 'least room above the board'),
    pastSlots: onRiser || cardThickness === undefined ? undefined : pastCard(cardThickness),
  };
}

/** The cooler says it best; without one, a card that stands in the board and nearly meets the same wall. */
function aboveBoard({ layout, coolerHeight, cardHeight }: PublishedLimits): Reckoned | undefined {
  if (coolerHeight !== undefined)
    return sumOf(published(coolerHeight, 'cooler height'), lid, boardThickness, standoffBand);
  if (cardHeight === undefined || layout === 'card behind the board on a riser') return undefined;
  const seat = ofStandard(slotConnectorSection.seatHeight, 'seat of the slot');
  return sumOf(published(cardHeight, 'card height'), seat, boardThickness, standoffBand);
}

function alongCard(
  cardLength: NonNullable<PublishedLimits['cardLength']>,
  frontFan: PublishedLimits['frontFan'],
): Reckoned {
  const bracket = fixed(
    bracketPlateY.cardSideFace.value - rearPanelInnerFaceY.value,
    'rear wall to the card-side face of the bracket',
  );
  const length = sumOf(published(cardLength, 'card length'), bracket);
  return frontFan === undefined ? length : sumOf(length, published(frontFan, 'front fan'));
}

/** Top edge of the board to the plane the fans of a card of this thickness reach, first slot. */
function pastCard(cardThickness: NonNullable<PublishedLimits['cardThickness']>): Reckoned {
  const back = cardPartHeights.solderSide.value + cardOutline.boardThickness.value / 2;
  return sumOf(
    published(cardThickness, 'card thickness'),
    fixed(slotCentrelineX(1) - back, 'top edge to the back of a card in the first slot'),
  );
}

/** Finger tips of a card above the face its riser is screwed to, and the card, mm. */
export function belowRiser(
  cardHeight: NonNullable<PublishedLimits['cardHeight']>,
  inset: Reckoned,
): Reckoned {
  return sumOf(published(cardHeight, 'card height'), inset);
}

/** Rear face of the tray to the wall the fans of a card on a riser face. */
export function behindRiserCard(cardThickness: NonNullable<PublishedLimits['cardThickness']>): Reckoned {
  const back = cardPartHeights.solderSide.value + cardOutline.boardThickness.value / 2;
  return less(
    sumOf(
      published(cardThickness, 'card thickness'),
      fixed(SEAT_BEHIND_TRAY_MM, 'riser socket behind the tray'),
    ),
    fixed(back, 'backplate side of the card'),
  );
}

/** In an upright tower the supply stands under the board: what ends the card's room is then not the floor. */
export function hasSupplyUnderBoard({ layout, supply }: PublishedLimits): boolean {
  return layout === 'upright tower' && supply !== undefined;
}

/** From what ends the card's room to the floor, when the supply stands there. */
export function supplyRoomOf({ supply }: PublishedLimits): Reckoned {
  const { height } = supplyForms[supply ?? 'ATX'];
  return assumed(height.value + USUAL_GAP_MM, UNKNOWN_PLUS_MINUS_MM, 'supply with usual room');
}

/** What stands in for a wall nobody published anything about. */
export function usualWalls(limits: PublishedLimits): Readonly<Record<keyof BoardWalls, Reckoned>> {
  const form = boardFormFactors[limits.boardForm];
  const supply = supplyForms[limits.supply ?? 'ATX'];
  const wide = UNKNOWN_PLUS_MINUS_MM;
  const lastSlot = slotCentrelineX(Math.max(1, Math.min(limits.slots, 8))) + cardOutline.boardThickness.value;
  const underBoard = hasSupplyUnderBoard(limits) ? supply.height.value : 0;
  return {
    along: assumed(
      form.alongY.value - rearPanelInnerFaceY.value + 5 * wide,
      5 * wide,
      'board depth and usual room before it',
    ),
    above: assumed(
      enclosureSheets.standoffHeight.value[1] +
        boardSheet.thickness.value +
        slotConnectorSection.seatHeight.value +
        120,
      3 * wide,
      'a full-height bracket over the board',
    ),
    behind:
      limits.layout === 'card behind the board on a riser'
        ? assumed(
            SEAT_BEHIND_TRAY_MM + limits.slots * slotPitch.value,
            wide,
            'riser socket and the slots of the card',
          )
        : assumed(USUAL_BEHIND_MM, wide, 'usual room behind a tray'),
    beforeTop: assumed(DEFAULT_FROM_TOP_MM, wide / 2, 'least room above the board'),
    pastSlots: assumed(
      Math.max(form.alongX.value, lastSlot) + USUAL_GAP_MM + underBoard,
      2 * wide,
      underBoard > 0 ? 'board, supply under it and usual room' : 'board and usual room',
    ),
  };
}
