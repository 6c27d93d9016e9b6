/** Fingers on a plug, and the arm behind them. */

import { type OrientedBox, transformBox } from '../../../space/oriented-box';
import { identityRotation, type Rotation, rotationFromAxes } from '../../../space/rotation';
import type { RigidTransform } from '../../../space/transform';
import { add, cross, normalise, scale, type Vector3 } from '../../../space/vector';
import type { HandSize } from '../../../standards/hand-and-tools';
import { barOf, frameAlong, type UseVolume } from './use-volume';

/** A plug at its socket: z of the frame is the way it comes off, origin at the middle of its outer face. */
export interface PlugPlace {
  readonly frame: RigidTransform;
  /** Half sizes across the way off. */
  readonly half: readonly [number, number];
  /** How much of the plug stands out to be held, mm. */
  readonly grip: number;
}

/** How long an arm is followed before it may be anywhere, mm; our choice: past the middle of a compact machine. */
const ARM_LENGTH_MM = 220;
/** Part of a plug that fingers close on, at least, mm. */
const LEAST_GRIP_MM = 8;

/** The ways fingers take a plug: two fingers across it either way, or pushed and pulled from its end alone. */
export function plugGrips(plug: PlugPlace, hand: HandSize, leanDegrees: number): readonly UseVolume[] {
  const grips: UseVolume[] = [];
  const arms = armDirections(plug.frame, leanDegrees);
  for (const [name, fingers, cost] of fingersOn(plug, hand)) {
    for (const [index, arm] of arms.entries()) {
      grips.push({
        name: index === 0 ? name : `${name}, arm leaning`,
        boxes: [...fingers, arm(hand.wrist, hand.fingerDepth)],
        cost: cost + (index === 0 ? 0 : 0.2),
      });
    }
  }
  return [...grips, ...sideGrips(plug, hand)];
}

/** Fingers that come from one side of the plug and close on it across: for plugs that leave along the board. */
function sideGrips(plug: PlugPlace, hand: HandSize): readonly UseVolume[] {
  const { finger, fingerDepth, wrist } = hand;
  const [hx, hy] = plug.half;
  const middle = -Math.max(plug.grip, LEAST_GRIP_MM) / 2;
  const deep = Math.min(finger, Math.max(plug.grip, LEAST_GRIP_MM)) / 2;
  return ([0, 1] as const).flatMap((side) =>
    ([1, -1] as const).map((sense): UseVolume => {
      const [own, other] = side === 0 ? [hx, hy] : [hy, hx];
      const along = (
        from: number,
        to: number,
        halfAcross: number,
        across: number,
        halfDeep: number,
      ): OrientedBox => {
        const centre: Vector3 =
          side === 0
            ? [(sense * (from + to)) / 2, across, middle]
            : [across, (sense * (from + to)) / 2, middle];
        const half: Vector3 =
          side === 0 ? [(to - from) / 2, halfAcross, halfDeep] : [halfAcross, (to - from) / 2, halfDeep];
        return transformBox(plug.frame, { centre, half, rotation: identityRotation });
      };
      const reach = own + fingerDepth;
      return {
        name: 'finger and thumb from the side',
        cost: 0.3,
        boxes: [
          along(-own, reach, finger / 2, other + finger / 2, deep),
          along(-own, reach, finger / 2, -other - finger / 2, deep),
          along(reach, reach + ARM_LENGTH_MM, wrist / 2, 0, wrist / 2),
        ],
      };
    }),
  );
}

type Fingers = readonly [name: string, boxes: readonly OrientedBox[], cost: number];

function fingersOn(plug: PlugPlace, hand: HandSize): readonly Fingers[] {
  const [hx, hy] = plug.half;
  const { finger, fingerDepth } = hand;
  const low = -Math.max(plug.grip, LEAST_GRIP_MM) / 2;
  const box = (x: readonly [number, number], y: readonly [number, number]): OrientedBox =>
    transformBox(plug.frame, {
      centre: [(x[0] + x[1]) / 2, (y[0] + y[1]) / 2, (low + fingerDepth) / 2],
      half: [(x[1] - x[0]) / 2, (y[1] - y[0]) / 2, (fingerDepth - low) / 2],
      rotation: identityRotation,
    });
  const alongX = Math.min(hx, finger / 2);
  const alongY = Math.min(hy, finger / 2);
  const left = box([-hx - finger, -hx], [-alongY, alongY]);
  const right = box([hx, hx + finger], [-alongY, alongY]);
  const near = box([-alongX, alongX], [-hy - finger, -hy]);
  const far = box([-alongX, alongX], [hy, hy + finger]);
  const above = (halfX: number, halfY: number, from: number, to: number): OrientedBox =>
    transformBox(plug.frame, {
      centre: [0, 0, (from + to) / 2],
      half: [halfX, halfY, (to - from) / 2],
      rotation: identityRotation,
    });
  // A fingertip on the plug's end is no wider than the plug; the finger behind it is.
  const over = [
    above(Math.min(hx, finger / 2), Math.min(hy, finger / 2), 0, LEAST_GRIP_MM),
    above(finger / 2, finger / 2, LEAST_GRIP_MM, fingerDepth),
  ];
  return [
    ['finger and thumb, lengthwise', [left, right], 0],
    ['finger and thumb, across', [near, far], 0],
    ['one finger and the latch', [left], 0.4],
    ['one finger and the latch', [right], 0.4],
    ['one finger and the latch', [near], 0.4],
    ['one finger and the latch', [far], 0.4],
    ['pushed from its end', over, 0.6],
  ];
}

/** The wrist straight behind the fingers, then leaning in eight directions. */
function armDirections(
  frame: RigidTransform,
  leanDegrees: number,
): readonly ((wrist: number, depth: number) => OrientedBox)[] {
  const { rotation } = frame;
  const z = column(rotation, 2);
  const arms = [armAlong(frame, z)];
  const lean = Math.tan((leanDegrees * Math.PI) / 180);
  for (let k = 0; k < 8; k++) {
    const around = (k * Math.PI) / 4;
    const side = add(
      scale(column(rotation, 0), Math.cos(around)),
      scale(column(rotation, 1), Math.sin(around)),
    );
    arms.push(armAlong(frame, normalise(add(z, scale(side, lean)))));
  }
  return arms;
}

function armAlong(frame: RigidTransform, direction: Vector3): (wrist: number, depth: number) => OrientedBox {
  const z = column(frame.rotation, 2);
  return (wrist, depth) => {
    const start = add(frame.translation, scale(z, depth));
    return barOf(frameAlong(start, direction, column(frame.rotation, 0)), wrist, wrist / 2, ARM_LENGTH_MM);
  };
}

function column(rotation: Rotation, k: 0 | 1 | 2): Vector3 {
  return [rotation[k], rotation[k + 3] ?? 0, rotation[k + 6] ?? 0];
}

/** The frame of a plug whose outer face has its middle at `middle` and comes off along `out`; `along` its long side. */
export function plugFrame(middle: Vector3, out: Vector3, along: Vector3): RigidTransform {
  const z = normalise(out);
  const x = normalise(along);
  return { rotation: rotationFromAxes(x, cross(z, x), z), translation: middle };
}
