/** What a unit needs free at the moment it goes in or comes out: drivers on its screws, fingers on its plug or clips. */
import type { Scene } from '../../../plan/scene';
import { boundsOfBoxes, type OrientedBox, transformBox } from '../../../space/oriented-box';
import { axisOfRotation, identityRotation } from '../../../space/rotation';
import type { RigidTransform } from '../../../space/transform';
import { add, dot, scale, subtract, type Vector3 } from '../../../space/vector';
import {
  armLeanDegrees,
  drivers,
  type HandPreset,
  type HandSize,
  hands,
  latchStick,
} from '../../../standards/hand-and-tools';
import { plugFrame, plugGrips } from '../reach/plug-grips';
import { barOf, driverVolume, frameAlong, type UseVolume } from '../reach/use-volume';
import { type Fastener, fastenersOf } from './fasteners';
import { seatOf } from './seat-frame';
import type { AssemblyUnit } from './unit';

/** One place a tool or hand has to get to, with the ways to do it. */
export interface Need {
  readonly name: string;
  readonly volumes: readonly UseVolume[];
  /** Only while it is taken out: a latch that closes by itself. */
  readonly onlyTakingOut?: true;
  readonly fastener?: Fastener;
  /** Boxes of the scene that are no obstacle: the sheet a screw goes through, the socket of a plug. */
  readonly ignores: (box: number) => boolean;
}

export function needsOf(scene: Scene, unit: AssemblyUnit, preset: HandPreset): readonly Need[] {
  const hand = hands[preset].value;
  const screws = fastenersOf(scene, unit).map((fastener) => screwNeed(scene, unit, fastener, hand));
  if (unit.kind === 'plug') return [plugNeed(scene, unit, hand)];
  if (unit.kind === 'memory') return clipNeeds(scene, unit, hand);
  if (unit.kind === 'card') return [...screws, ...latchNeed(scene, unit, hand)];
  return screws;
}

/** How far along its axis from the head a screw passes through sheets that are no obstacle to its driver, mm. */
const THROUGH_SHEETS_MM = 12;

function screwNeed(scene: Scene, unit: AssemblyUnit, fastener: Fastener, hand: HandSize): Need {
  const carrier = carrierOf(scene, unit);
  return {
    name: fastener.name,
    fastener,
    volumes: fastener.drivers.map((name, k) => {
      const driver = drivers[name].value;
      return driverVolume(driver, hand, fastener.at, fastener.axis, 0.3 * k);
    }),
    ignores: (box) => {
      const owner = scene.boxes[box]?.part;
      if (owner !== unit.part && owner !== carrier) return false;
      const body = scene.boxes[box]?.box;
      return body !== undefined && isPierced(body, fastener);
    },
  };
}

function carrierOf(scene: Scene, unit: AssemblyUnit): number | undefined {
  const part = scene.parts[unit.part];
  return part === undefined ? undefined : seatOf(scene, part)?.carrier;
}

/** Sheet this near to the axis lies under the head of the screw, mm; our choice. */
const HEAD_RADIUS_MM = 4;

/** Whether the screw with its head, from a little behind it to a little before it, goes through a box. */
function isPierced(box: OrientedBox, { at, axis }: Fastener): boolean {
  for (let along = -THROUGH_SHEETS_MM; along <= THROUGH_SHEETS_MM; along += 0.25) {
    const from = subtract(add(at, scale(axis, along)), box.centre);
    const inside = (['x', 'y', 'z'] as const).every(
      (name, k) =>
        Math.abs(dot(from, axisOfRotation(box.rotation, name))) <=
        (box.half[k as 0 | 1 | 2] ?? 0) + HEAD_RADIUS_MM,
    );
    if (inside) return true;
  }
  return false;
}

function plugNeed(scene: Scene, unit: AssemblyUnit, hand: HandSize): Need {
  const box = unit.boxes[0] === undefined ? undefined : scene.boxes[unit.boxes[0]]?.box;
  const out = unit.plug?.out ?? [0, 0, 1];
  const own = (other: number): boolean => unit.boxes.includes(other);
  if (!box) return { name: 'its plug', volumes: [], ignores: own };
  const across = (['x', 'y', 'z'] as const)
    .map((name, k) => ({ axis: axisOfRotation(box.rotation, name), half: box.half[k as 0 | 1 | 2] ?? 0 }))
    .filter(({ axis }) => Math.abs(dot(axis, out)) < 0.5)
    .sort((a, b) => b.half - a.half);
  const [long, short] = across;
  if (!long || !short) return { name: 'its plug', volumes: [], ignores: own };
  const depth = unit.plug?.depth ?? 0;
  const frame = plugFrame(add(box.centre, scale(out, depth / 2)), out, long.axis);
  const place = { frame, half: [long.half, short.half] as const, grip: depth };
  return { name: 'the plug', volumes: plugGrips(place, hand, armLeanDegrees.value), ignores: own };
}

/** A finger, or a stick at some cost, on the clip at each end of a memory slot. */
function clipNeeds(scene: Scene, unit: AssemblyUnit, hand: HandSize): readonly Need[] {
  const part = scene.parts[unit.part];
  const bounds = part && boundsOfBoxes(part.model.boxes.map((body) => body.box));
  if (!part || !bounds) return [];
  const seat = seatOf(scene, part);
  const slot =
    seat && scene.parts[seat.carrier]?.model.boxes.filter((body) => body.receives?.includes(seat.mount.id));
  const carrier = seat && scene.parts[seat.carrier];
  return ([-1, 1] as const).map((end, k) => {
    const x = end < 0 ? bounds.min[0] : bounds.max[0];
    const top = Math.max(...(slot ?? []).map((body) => topOf(part.pose, carrier?.pose, body.box)));
    const from = Number.isFinite(top) ? top : 0;
    const finger = (width: number, height: number, out: number): OrientedBox =>
      transformBox(part.pose, {
        centre: [x + end * (out + width / 2), 0, from + height / 2],
        half: [width / 2, width / 2, height / 2],
        rotation: identityRotation,
      });
    return {
      name: `clip ${k + 1}`,
      volumes: [
        { name: 'a finger', cost: 0, boxes: [finger(hand.finger, hand.fingerDepth, 0)] },
        {
          name: 'a stick',
          cost: 0.4,
          tool: 'flat stick',
          boxes: [finger(latchStick.value.diameter, latchStick.value.length, 0)],
        },
      ],
      ignores: (box: number) => unit.boxes.includes(box),
    };
  });
}

/** Height of the top of a carrier's box in the frame of the part on it. */
function topOf(part: RigidTransform, carrier: RigidTransform | undefined, box: OrientedBox): number {
  if (!carrier) return 0;
  const up = axisOfRotation(part.rotation, 'z');
  const world = transformBox(carrier, box);
  const half = (['x', 'y', 'z'] as const).reduce(
    (sum, name, k) =>
      sum + Math.abs(dot(axisOfRotation(world.rotation, name), up)) * (world.half[k as 0 | 1 | 2] ?? 0),
    0,
  );
  return dot(subtract(world.centre, part.translation), up) + half;
}

/** The latch at the far end of a card's slot, pressed by a finger or a stick from the solder side or from the front. */
function latchNeed(scene: Scene, unit: AssemblyUnit, hand: HandSize): readonly Need[] {
  const part = scene.parts[unit.part];
  const seat = part && seatOf(scene, part);
  const carrier = seat && scene.parts[seat.carrier];
  const slot = carrier?.model.boxes.find((body) => body.receives?.includes(seat?.mount.id ?? ''));
  if (!part || !seat || !carrier || !slot) return [];
  const along = axisOfRotation(part.pose.rotation, 'x');
  const up = axisOfRotation(part.pose.rotation, 'z');
  const solder = axisOfRotation(part.pose.rotation, 'y');
  const world = transformBox(carrier.pose, slot.box);
  const reach = (direction: Vector3): number =>
    (['x', 'y', 'z'] as const).reduce(
      (sum, name, k) =>
        sum +
        Math.abs(dot(axisOfRotation(world.rotation, name), direction)) * (world.half[k as 0 | 1 | 2] ?? 0),
      0,
    );
  const latch = add(
    world.centre,
    add(scale(along, reach(along) + LATCH_BEYOND_SLOT_MM), scale(up, reach(up))),
  );
  const back = Math.max(0, ...part.model.boxes.map((body) => body.box.centre[1] + body.box.half[1]));
  const stick = latchStick.value;
  const from = (axis: Vector3, width: number, length: number, side: number): OrientedBox =>
    barOf(frameAlong(add(latch, scale(solder, side)), axis), width, 1, length);
  const beside = back + 1;
  return [
    {
      name: 'the latch of the slot',
      onlyTakingOut: true,
      volumes: [
        {
          name: 'a finger beside the card',
          cost: 0,
          boxes: [from(up, hand.finger, hand.fingerDepth, beside + hand.finger / 2)],
        },
        { name: 'a finger along the board', cost: 0, boxes: [from(along, hand.finger, hand.fingerDepth, 0)] },
        {
          name: 'a stick beside the card',
          cost: 0.4,
          tool: 'flat stick',
          boxes: [from(up, stick.diameter, stick.length, beside + stick.diameter / 2)],
        },
        {
          name: 'a stick along the board',
          cost: 0.4,
          tool: 'flat stick',
          boxes: [from(along, stick.diameter, stick.length, 0)],
        },
      ],
      ignores: () => false,
    },
  ];
}

/** Middle of the latch beyond the end of the slot's body, mm; our choice. */
const LATCH_BEYOND_SLOT_MM = 4;
