/** Circuit board, rear connectors, regulator sinks, processor socket and coin cell; board frame (`fields.ts`), mm. */
import { translationBy } from '../../space/transform';
import { handSpace } from '../../standards/assembly-practice';
import { coinCellHolder, socketOutlines } from '../../standards/board-furniture';
import { lidHeightStack } from '../../standards/processor-sockets';
import { connectorFacesY, rearAperture, rearApertureBox } from '../../standards/rear-aperture';
import type { BodyBox } from '../body';
import { centredSpan, reservedBox, type Span, solidBox } from '../body-box';
import { nominal, nominalOr } from '../dimension';
import { socketMountPattern } from '../patterns';
import type { BoardPiece } from './board-piece';
import type { BoardSpec } from './fields';
import { outlineOf } from './outline';

export const DEFAULT_REAR_CONNECTOR_DEPTH_MM = 22;

export function circuitBoardOf(spec: BoardSpec): BoardPiece {
  const { x, y, thickness } = outlineOf(spec);
  return { boxes: [solidBox('circuit board', 'circuit board', { x, y, z: [-thickness, 0] })] };
}

/**
 * Blocks of rear connectors, faces flush with the published line behind the board's edge. When the sheet is silent:
 * the published connector zone, taken as lying in the middle of the aperture.
 */
export function rearConnectorsOf(spec: BoardSpec): BoardPiece {
  const face = connectorFacesY.value;
  const blocks = spec.rearConnectors?.map((block) => ({
    x: [nominal(block.from), nominal(block.to)] as const,
    height: nominal(block.height),
    depth: nominalOr(block.depth, DEFAULT_REAR_CONNECTOR_DEPTH_MM),
  })) ?? [defaultConnectorBlock()];
  return {
    boxes: blocks.map(({ x, height, depth }, i) =>
      solidBox(`rear connectors ${i + 1}`, 'rear connectors', { x, y: [face, face + depth], z: [0, height] }),
    ),
  };
}

function defaultConnectorBlock(): { x: Span; height: number; depth: number } {
  const { x, z } = rearApertureBox.value;
  const { width, height, connectorZoneWidth, connectorZoneHeight } = rearAperture;
  return {
    x: centredSpan((x[0] + x[1]) / 2, Math.min(connectorZoneWidth.value, width.value)),
    height: z[1] - (height.value - connectorZoneHeight.value) / 2,
    depth: DEFAULT_REAR_CONNECTOR_DEPTH_MM,
  };
}

export function regulatorSinksOf(spec: BoardSpec): BoardPiece {
  return {
    boxes: (spec.sinks ?? []).map((sink) =>
      solidBox(`regulator sink ${sink.id}`, 'regulator sink', {
        x: [nominal(sink.from[0]), nominal(sink.to[0])],
        y: [nominal(sink.from[1]), nominal(sink.to[1])],
        z: [0, nominal(sink.height)],
      }),
    ),
  };
}

export const processorMountId = 'processor';

/** The socket up to its seating plane; the processor stands on that plane and carries the cooler. */
export function processorSocketOf(spec: BoardSpec): BoardPiece {
  const { pattern, at, seat } = spec.socket;
  const [x, y] = [nominal(at[0]), nominal(at[1])];
  const height = nominalOr(seat, lidHeightStack.socketSeatingPlane.value);
  const outline = socketOutlines[pattern];
  const socket = solidBox(
    'processor socket',
    'processor socket',
    {
      x: centredSpan(x, outline.alongX.value),
      y: centredSpan(y, outline.alongY.value),
      z: [0, height],
    },
    { receives: [processorMountId] },
  );
  return {
    boxes: [socket],
    mounts: [
      {
        id: processorMountId,
        label: 'Processor socket',
        patterns: [socketMountPattern(pattern)],
        frame: translationBy([x, y, height]),
      },
    ],
  };
}

/** The coin cell lies flat; a finger must reach it from above to tip it out. */
export function coinCellOf(spec: BoardSpec): BoardPiece {
  if (!spec.coinCell) return { boxes: [] };
  const feature = 'coin cell';
  const top = coinCellHolder.height.value;
  const footprint = {
    x: centredSpan(nominal(spec.coinCell[0]), coinCellHolder.side.value),
    y: centredSpan(nominal(spec.coinCell[1]), coinCellHolder.side.value),
  };
  const lift: Span = [top, top + coinCellHolder.lift.value];
  const finger: Span = [lift[1], lift[1] + handSpace.fingerPrism.value.depth];
  const boxes: BodyBox[] = [
    solidBox('coin cell', 'coin cell', { ...footprint, z: [0, top] }, { feature }),
    reservedBox('lift of the coin cell', 'hand space', 'coin cell', { ...footprint, z: lift }, { feature }),
    reservedBox(
      'reach to the coin cell',
      'hand space',
      'coin cell',
      { ...footprint, z: finger },
      { feature },
    ),
  ];
  return {
    boxes,
    features: [
      {
        id: feature,
        kind: 'coin cell',
        label: 'Coin cell',
        use: [],
        approach: ['lift of the coin cell', 'reach to the coin cell'],
        required: false,
      },
    ],
  };
}
