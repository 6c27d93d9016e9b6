/** Both ends of a riser for a card that does not stand in the board; frames in `fields.ts`, mm. */
import { identityTransform } from '../../space/transform';
import { slotConnectorSection, slotConnectors } from '../../standards/expansion-slots';
import { riserBoard } from '../../standards/riser-practice';
import type { PartModel } from '../body';
import { centredSpan, reservedBox, type Span, solidBox } from '../body-box';
import { nominalOr } from '../dimension';
import { riserMountPattern, slotMountPattern } from '../patterns';
import { patternsOfSlot } from '../slot-frame';
import type { RiserPlugSpec, RiserSocketSpec } from './fields';

const connectorX: Span = [
  -slotConnectorSection.rearEndToKeyNotch.value,
  slotConnectors.x16.length.value - slotConnectorSection.rearEndToKeyNotch.value,
];
const seat = slotConnectorSection.seatHeight.value;
const connectorTop = slotConnectorSection.height.value - seat;

/** A x16 connector on a small circuit board; it hangs on a riser seat of an enclosure by the seat of the card. */
export function buildRiserSocket(spec: RiserSocketSpec): PartModel {
  const depth = nominalOr(spec.boardHeight, riserBoard.socketDepth.value);
  const mount = 'slot 1';
  return {
    boxes: [
      solidBox(
        'slot',
        'expansion slot',
        { x: connectorX, y: centredSpan(0, slotConnectorSection.width.value), z: [-seat, connectorTop] },
        { receives: [mount] },
      ),
      solidBox('riser board', 'riser', {
        x: [connectorX[0] - riserBoard.pastConnector.value, connectorX[1] + riserBoard.pastConnector.value],
        y: centredSpan(0, riserBoard.width.value),
        z: [-seat - depth, -seat],
      }),
    ],
    mounts: [
      { id: mount, label: 'Riser slot (x16)', patterns: patternsOfSlot('x16'), frame: identityTransform },
    ],
    feet: [{ id: 'socket', label: 'Socket', pattern: riserMountPattern, frame: identityTransform }],
    features: [],
    adjustments: [],
  };
}

/** The end that stands in the board's slot: contact edge, a low board on top of the connector, the ribbon's bend. */
export function buildRiserPlug(spec: RiserPlugSpec): PartModel {
  const top = connectorTop + nominalOr(spec.height, riserBoard.plugHeight.value);
  const bend = nominalOr(spec.bend, riserBoard.ribbonBend.value);
  const y = centredSpan(0, slotConnectorSection.width.value);
  return {
    boxes: [
      solidBox(
        'contact edge',
        'riser',
        { x: connectorX, y: centredSpan(0, riserBoard.edgeThickness.value), z: [0, connectorTop] },
        { engages: true },
      ),
      solidBox('plug', 'riser', { x: connectorX, y, z: [connectorTop, top] }),
      reservedBox('bend of the ribbon', 'bend space', 'riser', { x: connectorX, y, z: [top, top + bend] }),
    ],
    mounts: [],
    feet: [{ id: 'plug', label: 'Plug', pattern: slotMountPattern('x16'), frame: identityTransform }],
    features: [],
    adjustments: [],
  };
}
