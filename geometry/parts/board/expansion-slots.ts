/** Expansion slots and the room their cards want; board frame (`fields.ts`), mm. */
import { cardEnvelopeAcross, cardOutline, cardRearEdgeY, seatedCardZ } from '../../standards/card-envelope';
import { slotCentrelineX, slotConnectorSection, slotConnectors } from '../../standards/expansion-slots';
import type { BodyBox, Feature, Mount } from '../body';
import { centredSpan, reservedBox, type Span, solidBox } from '../body-box';
import { patternsOfSlot, slotFrame } from '../slot-frame';
import type { BoardPiece } from './board-piece';
import type { BoardSpec } from './fields';

export function expansionSlotsOf(spec: BoardSpec): BoardPiece {
  const slots = spec.slots.map(expansionSlot);
  return {
    boxes: slots.flatMap((slot) => slot.boxes),
    mounts: slots.map((slot) => slot.mount),
    features: slots.map((slot) => slot.feature),
  };
}

/**
 * The card's own room is the smallest that makes the slot of use: a single-slot card of full height (its bracket has
 * to be, in a full-height opening) and no longer than the connector. It is plug space: what goes in is the card. The
 * room above it, as high again as the card, is hand space, wanted only while a card goes in or comes out.
 */
function expansionSlot({ position, size }: BoardSpec['slots'][number]): {
  boxes: BodyBox[];
  mount: Mount;
  feature: Feature;
} {
  const id = `slot ${position}`;
  const centre = slotCentrelineX(position);
  const connector = slotConnectors[size];
  const [from, to] = cardEnvelopeAcross(1);
  const card = {
    x: [centre + from, centre + to] as Span,
    y: [cardRearEdgeY.value, connector.frontEndY.value] as Span,
  };
  const top = seatedCardZ.fullHeightTopEdge.value;
  return {
    boxes: [
      solidBox(
        id,
        'expansion slot',
        {
          x: centredSpan(centre, slotConnectorSection.width.value),
          y: [connector.rearEndY.value, connector.frontEndY.value],
          z: [0, slotConnectorSection.height.value],
        },
        { receives: [id], feature: id },
      ),
      reservedBox(
        `${id} card space`,
        'plug space',
        'expansion slot',
        { ...card, z: [seatedCardZ.lowerEdge.value, top] },
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
      frame: slotFrame(position),
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
