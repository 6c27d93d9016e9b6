/** Memory slots, counted away from the processor; board frame (`fields.ts`), mm. */
import { transformBox } from '../../space/oriented-box';
import { rotationAbout } from '../../space/rotation';
import type { RigidTransform } from '../../space/transform';
import { workingGaps } from '../../standards/assembly-practice';
import { uprightSoDimmSocket } from '../../standards/board-furniture';
import { dimm, dimmSocket, soDimm } from '../../standards/memory';
import type { BodyBox, Feature, Mount } from '../body';
import { centredSpan, type Extent, reservedBox, type Span, solidBox } from '../body-box';
import { nominal, nominalOr } from '../dimension';
import { keptPieces } from '../kept-pieces';
import { type ModuleForm, memoryMountPattern } from '../patterns';
import type { BoardPiece } from './board-piece';
import type { BoardSpec } from './fields';

interface SlotShape {
  readonly module: { readonly length: number; readonly height: number };
  readonly socket: { readonly length: number; readonly width: number; readonly height: number };
  readonly latchHeight: number;
}

const shapes: Readonly<Record<ModuleForm, SlotShape>> = {
  DIMM: {
    module: { length: dimm.length.value, height: dimm.height.value },
    socket: {
      length: dimmSocket.length.value,
      width: dimmSocket.width.value,
      height: dimmSocket.height.value,
    },
    latchHeight: dimmSocket.latchHeight.value,
  },
  'SO-DIMM': {
    module: { length: soDimm.length.value, height: soDimm.height.value },
    socket: {
      length: uprightSoDimmSocket.length.value,
      width: uprightSoDimmSocket.width.value,
      height: uprightSoDimmSocket.height.value,
    },
    latchHeight: uprightSoDimmSocket.height.value,
  },
};

/** Slots as boxes with end latches; small-outline modules are taken as standing upright too. */
export function memorySlotsOf({ memory, socket }: BoardSpec): BoardPiece {
  return keptSlots(memory, socket);
}

const keptSlots = keptPieces((memory: BoardSpec['memory'], socket: BoardSpec['socket']): BoardPiece => {
  const slots = memoryFrames({ memory, socket }).map((frame, i) => memorySlot(memory.form, frame, i + 1));
  return {
    boxes: slots.flatMap((slot) => slot.boxes),
    mounts: slots.map((slot) => slot.mount),
    features: slots.map((slot) => slot.feature),
  };
});

/** Module frames on their seats: x along the slot, z away from the board. */
export function memoryFrames(spec: Pick<BoardSpec, 'memory' | 'socket'>): RigidTransform[] {
  const { at, count, along = 'x', pitch } = spec.memory;
  const [x, y] = [nominal(at[0]), nominal(at[1])];
  const [socketX, socketY] = [nominal(spec.socket.at[0]), nominal(spec.socket.at[1])];
  const away = along === 'x' ? (y < socketY ? -1 : 1) : x < socketX ? -1 : 1;
  const step = away * nominalOr(pitch, dimmSocket.pitch.value);
  const rotation = rotationAbout('z', along === 'x' ? 0 : 90);
  const seat = dimmSocket.seatHeight.value;
  return Array.from({ length: count }, (_, i) => ({
    rotation,
    translation: along === 'x' ? [x, y + i * step, seat] : [x + i * step, y, seat],
  }));
}

function memorySlot(
  form: ModuleForm,
  frame: RigidTransform,
  number: number,
): { boxes: BodyBox[]; mount: Mount; feature: Feature } {
  const { module, socket, latchHeight } = shapes[form];
  const id = `memory ${number}`;
  const board = -dimmSocket.seatHeight.value;
  const y = centredSpan(0, socket.width);
  const thick = { x: centredSpan(0, module.length), y: centredSpan(0, dimm.thickness.value) };
  const receives = { receives: [id], feature: id };
  const top = module.height;
  const lift = top + workingGaps.memoryLiftOverModule.value;
  const latch = (x: Span): Extent => ({ x, y, z: [board + socket.height, board + latchHeight] });
  const [left, right] = centredSpan(0, socket.length);
  const inFrame: BodyBox[] = [
    solidBox(
      `${id} slot`,
      'memory slot',
      { x: [left, right], y, z: [board, board + socket.height] },
      receives,
    ),
    ...(latchHeight > socket.height
      ? [
          solidBox(`${id} latch 1`, 'memory slot', latch([left, -module.length / 2]), receives),
          solidBox(`${id} latch 2`, 'memory slot', latch([module.length / 2, right]), receives),
        ]
      : []),
    reservedBox(
      `${id} module space`,
      'plug space',
      'memory slot',
      { ...thick, z: [board + socket.height, top] },
      { feature: id },
    ),
    reservedBox(
      `${id} lift`,
      'hand space',
      'memory slot',
      { ...thick, z: [top, top + lift] },
      { feature: id },
    ),
  ];
  return {
    boxes: inFrame.map((body) => ({ ...body, box: transformBox(frame, body.box) })),
    mount: { id, label: `Memory ${number}`, patterns: [memoryMountPattern(form)], frame, turns: [0, 180] },
    feature: {
      id,
      kind: 'memory slot',
      label: `Memory slot ${number}`,
      use: [`${id} module space`],
      approach: [`${id} lift`],
      mount: id,
      required: false,
    },
  };
}
