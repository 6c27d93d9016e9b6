/** Expansion slots and the room their cards want; board frame (`fields.ts`), mm. */
import { cardEnvelopeAcross, cardOutline, cardRearEdgeY, seatedCardZ } from '../../standards/card-envelope';
import { keyNotchY, slotConnectorSection, slotConnectors } from '../../standards/expansion-slots';
import type { BodyBox, Feature, Mount } from '../body';
import { centredSpan, reservedBox, type Span, solidBox } from '../body-box';
import { nominalOr } from '../dimension';
import { keptPieces } from '../kept-pieces';
import { patternsOfSlot, publishedSlotPlace, type SlotPlace, slotFrame } from '../slot-frame';
import type { BoardPiece } from './board-piece';
import type { BoardSpec } from './fields';

export function expansionSlotsOf({ slots, slotPlace }: BoardSpec): BoardPiece {
  return keptSlots(slots, slotPlace);
}

const keptSlots = keptPieces((all: BoardSpec['slots'], slotPlace: BoardSpec['slotPlace']): BoardPiece => {
  const place = slotPlaceOf(slotPlace);
  const slots = all.map((slot) => expansionSlot(slot, place));
  return {
    boxes: slots.flatMap((slot) => slot.boxes),
    mounts: slots.map((slot) => slot.mount),
    features: slots.map((slot) => slot.feature),
  };
});

function slotPlaceOf(slotPlace: BoardSpec['slotPlace']): SlotPlace {
  const { seat, holeBToSlot1, holeRowToKeyNotch } = publishedSlotPlace;
  return {
    seat: nominalOr(slotPlace?.seat, seat),
    holeBToSlot1: nominalOr(slotPlace?.holeBToSlot1, holeBToSlot1),
    holeRowToKeyNotch: nominalOr(slotPlace?.holeRowToKeyNotch, holeRowToKeyNotch),
  };
}

/**
 * The card's own room is the smallest that makes the slot of use: a single-slot card of full height (its bracket has
 * to be, in a full-height opening) and no longer than the connector. It is plug space: what goes in is the card. The
 * room above it, as high again as the card, is hand space, wanted only while a card goes in or comes out.
 */
function expansionSlot(
  { position, size }: BoardSpec['slots'][number],
  place: SlotPlace,
): {
  boxes: BodyBox[];
  mount: Mount;
  feature: Feature;
} {
  const id = `slot ${position}`;
  const frame = slotFrame(position, place);
  const [centre, key, seat] = frame.translation;
  const [forward, up] = [key - keyNotchY.value, seat - slotConnectorSection.seatHeight.value];
  const connector = slotConnectors[size];
  const [from, to] = cardEnvelopeAcross(1);
  const card = {
    x: [centre + from, centre + to] as Span,
    y: [cardRearEdgeY.value + forward, connector.frontEndY.value + forward] as Span,
  };
  const top = seatedCardZ.fullHeightTopEdge.value + up;
  return {
    boxes: [
      solidBox(
        id,
        'expansion slot',
        {
          x: centredSpan(centre, slotConnectorSection.width.value),
          y: [connector.rearEndY.value + forward, connector.frontEndY.value + forward],
          z: [0, slotConnectorSection.height.value],
        },
        { receives: [id], feature: id },
      ),
      reservedBox(
        `${id} card space`,
        'plug space',
        'expansion slot',
        { ...card, z: [seatedCardZ.lowerEdge.value + up, top] },
        { feature: id },
      ),
      reservedBox(
        `${id} lift`,
        'hand space',
        'expansion slot',
        { ...card, z: [top, top + cardOutline.fullHeight.value] },
        { feature: id },
      ),
    ],
    mount: {
      id,
      label: `Slot ${position} (${size})`,
      patterns: patternsOfSlot(size),
      frame,
    },
    feature: {
      id,
      kind: 'expansion slot',
      label: `Slot ${position} (${size})`,
      use: [`${id} card space`],
      approach: [`${id} lift`],
      mount: id,
      required: false,
    },
  };
}
