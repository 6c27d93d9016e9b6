/** M.2 sockets, their sinks and the room their drives want; board frame (`fields.ts`), mm. */
import { transformBox } from '../../space/oriented-box';
import { type Rotation, rotationFromAxes } from '../../space/rotation';
import { type RigidTransform, transformPoint } from '../../space/transform';
import { cross, type Vector3 } from '../../space/vector';
import { m2InsertionTiltDegrees } from '../../standards/board-furniture';
import { m2Module, m2Socket } from '../../standards/m2-modules';
import type { BodyBox, Feature, Mount } from '../body';
import { centredSpan, reservedBox, type Span, solidBox } from '../body-box';
import { nominal } from '../dimension';
import { keptPieces } from '../kept-pieces';
import { m2MountPattern } from '../patterns';
import type { BoardPiece } from './board-piece';
import type { BoardDirection, BoardSpec } from './fields';
import { outlineOf } from './outline';

type M2Spec = NonNullable<BoardSpec['m2']>[number];

/** Top of a drive without a sink of its own, above the board. */
export const M2_DRIVE_TOP_MM =
  m2Socket.studHeight.value + m2Module.boardThickness.value + m2Module.highestPartEitherSide.value;

/** The tallest published host connector. */
const SOCKET_HEIGHT_MM = Math.max(...m2Socket.heights.value);

export function m2SocketsOf(spec: BoardSpec): BoardPiece {
  const { thickness } = outlineOf(spec);
  const sockets = (spec.m2 ?? []).map((m2) => keptSocket(m2, thickness));
  return {
    boxes: sockets.flatMap((socket) => socket.boxes),
    mounts: sockets.map((socket) => socket.mount),
    features: sockets.map((socket) => socket.feature),
  };
}

export function unitTowards(direction: BoardDirection): Vector3 {
  const size = direction.startsWith('-') ? -1 : 1;
  return direction.endsWith('x') ? [size, 0, 0] : [0, size, 0];
}

/**
 * Frame of the drive: x the way it points, z away from the side of the board it lies on, origin at the rear of the
 * connector (where the contact edge ends up) on the lower face of the drive's circuit board.
 */
export function m2Frame(m2: M2Spec, boardThickness: number): RigidTransform {
  const x = unitTowards(m2.towards);
  const z: Vector3 = m2.behind ? [0, 0, -1] : [0, 0, 1];
  const rotation: Rotation = rotationFromAxes(x, cross(z, x), z);
  const surface = m2.behind ? -boardThickness : 0;
  const middle: RigidTransform = {
    rotation,
    translation: [nominal(m2.at[0]), nominal(m2.at[1]), surface],
  };
  return {
    rotation,
    translation: transformPoint(middle, [-m2Socket.depth.value / 2, 0, m2Socket.studHeight.value]),
  };
}

/** Longest drive a socket is laid out for. */
export function longestM2(m2: M2Spec): number {
  return Math.max(...m2.lengths);
}

const keptSocket = keptPieces(oneSocket);

/** The drive's room is plug space, the room in which it is tilted in and screwed down is hand space. */
function oneSocket(m2: M2Spec, boardThickness: number): { boxes: BodyBox[]; mount: Mount; feature: Feature } {
  const id = `m2 ${m2.id}`;
  const frame = m2Frame(m2, boardThickness);
  const surface = -m2Socket.studHeight.value;
  const length = longestM2(m2);
  const y = centredSpan(0, m2Module.width.value);
  const driveX: Span = [m2Socket.depth.value, length];
  const driveTop = surface + M2_DRIVE_TOP_MM;
  const sinkTop = m2.sink === undefined ? driveTop : surface + nominal(m2.sink);
  const tilt = length * Math.sin((m2InsertionTiltDegrees.value * Math.PI) / 180);
  const inFrame: BodyBox[] = [
    solidBox(
      id,
      'm2 socket',
      {
        x: [0, m2Socket.depth.value],
        y: centredSpan(0, m2Socket.width.value),
        z: [surface, surface + SOCKET_HEIGHT_MM],
      },
      { receives: [id], feature: id },
    ),
    ...(m2.sink === undefined
      ? []
      : [solidBox(`sink of ${id}`, 'm2 sink', { x: driveX, y, z: [driveTop, sinkTop] })]),
    reservedBox(
      `drive space of ${id}`,
      'plug space',
      'm2 socket',
      { x: driveX, y, z: [0, driveTop] },
      { feature: id },
    ),
    reservedBox(
      `access to ${id}`,
      'hand space',
      'm2 socket',
      { x: driveX, y, z: [sinkTop, sinkTop + tilt] },
      { feature: id },
    ),
  ];
  return {
    boxes: inFrame.map((body) => ({ ...body, box: transformBox(frame, body.box) })),
    mount: {
      id,
      label: `M.2 socket ${m2.id}`,
      patterns: m2.lengths.map(m2MountPattern),
      frame,
    },
    feature: {
      id,
      kind: 'm2 socket',
      label: `M.2 socket ${m2.id}`,
      use: [`drive space of ${id}`],
      approach: [`access to ${id}`],
      mount: id,
      required: false,
    },
  };
}
