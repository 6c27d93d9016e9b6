/**
 * Use volumes: the space a tool or hand takes at the moment it is needed, as boxes in the world (Wilson, Geometric
 * reasoning about assembly tools, Artificial Intelligence 98, 1998). Free when none of its boxes meets a solid.
 */
import { type OrientedBox, transformBox } from '../../../space/oriented-box';
import { PackedBoxes } from '../../../space/packed-boxes';
import { rotationFromAxes } from '../../../space/rotation';
import { interiorsOverlap } from '../../../space/separation';
import type { RigidTransform } from '../../../space/transform';
import { cross, normalise, type Vector3 } from '../../../space/vector';
import type { Driver, HandSize } from '../../../standards/hand-and-tools';
import { type AssemblyBodies, bitOf, type UnitSet } from '../assembly-bodies';

/** One way to use a tool or hand at a place. */
export interface UseVolume {
  readonly name: string;
  readonly boxes: readonly OrientedBox[];
  /** How unwelcome it is beside the others at the same place. */
  readonly cost: number;
  /** What is held, for the list of tools; absent for bare hands. */
  readonly tool?: string;
}

/** A frame at `point` whose z axis is `axis`; x is square to it and to `hint` where that is not along the axis. */
export function frameAlong(point: Vector3, axis: Vector3, hint: Vector3 = [1, 0, 0]): RigidTransform {
  const z = normalise(axis);
  const along = Math.abs(z[0] * hint[0] + z[1] * hint[1] + z[2] * hint[2]);
  const other: Vector3 = along < 0.9 ? hint : Math.abs(z[1]) < 0.9 ? [0, 1, 0] : [0, 0, 1];
  const y = normalise(cross(z, other));
  const x = cross(y, z);
  return { rotation: rotationFromAxes(x, y, z), translation: point };
}

/** A square bar of the given width from `from` to `to` along z of a frame. */
export function barOf(frame: RigidTransform, width: number, from: number, to: number): OrientedBox {
  return transformBox(frame, {
    centre: [0, 0, (from + to) / 2],
    half: [width / 2, width / 2, (to - from) / 2],
    rotation: [1, 0, 0, 0, 1, 0, 0, 0, 1],
  });
}

/** Least gap kept between the tip of the shaft and what it stands on, so that the screw itself is no obstacle, mm. */
const ABOVE_SCREW_MM = 0.5;
/** How far above its lower end a handle can be held, mm; our choice. */
const GRIP_ABOVE_HANDLE_MM = 30;

/**
 * A driver on a screw at `point`, its axis pointing from the screw to the hand. Shaft and handle are taken as square
 * bars as wide as their diameter: their corners reach further than the round ones, so the answer errs to 'blocked'.
 */
export function driverVolume(
  driver: Driver,
  hand: HandSize,
  point: Vector3,
  axis: Vector3,
  cost: number,
  hint?: Vector3,
): UseVolume {
  const frame = frameAlong(point, axis, hint);
  const { shaftLength, handleLength } = driver;
  const top = shaftLength + handleLength;
  const grip = driver.grip === 'fist' ? hand.fist : hand.pinch;
  const held = driver.grip === 'fist' ? shaftLength + GRIP_ABOVE_HANDLE_MM : shaftLength;
  return {
    name: driver.label,
    cost,
    tool: driver.label,
    boxes: [
      barOf(frame, driver.shaftDiameter, ABOVE_SCREW_MM, shaftLength),
      barOf(frame, driver.handleDiameter, shaftLength, top),
      barOf(frame, grip, held, top),
    ],
  };
}

/** A box that a use volume meets; `piece` is the number of the volume's own box. */
export interface UseContact {
  readonly unit: number;
  readonly obstacle: number;
  readonly piece: number;
}

/** What a use volume meets. */
export interface UseRecord {
  readonly volume: UseVolume;
  readonly blockers: UnitSet;
  /** Whether it meets what never moves. */
  readonly fixed: boolean;
  /** The first box met of each unit (of what never moves: unit -1). */
  readonly meets: readonly UseContact[];
}

const probe = new PackedBoxes(1);

/** Tests a use volume against all boxes but those that `ignored` names. */
export function testUse(
  bodies: AssemblyBodies,
  volume: UseVolume,
  ignored: (obstacle: number) => boolean,
): UseRecord {
  let blockers = 0n;
  let fixed = false;
  const meets: UseContact[] = [];
  for (const [piece, box] of volume.boxes.entries()) {
    bodies.packed.setBox(bodies.count, box);
    probe.setBox(0, box);
    for (let obstacle = 0; obstacle < bodies.count; obstacle++) {
      const unit = bodies.unitOf[obstacle] ?? -1;
      if (unit >= 0 ? (blockers & bitOf(unit)) !== 0n : fixed) continue;
      if (!mayOverlap(bodies.packed.bounds, obstacle) || ignored(obstacle)) continue;
      if (!interiorsOverlap(bodies.packed, bodies.count, obstacle)) continue;
      meets.push({ unit, obstacle, piece });
      if (unit >= 0) blockers |= bitOf(unit);
      else fixed = true;
    }
  }
  return { volume, blockers, fixed, meets };
}

function mayOverlap(bounds: Float64Array, obstacle: number): boolean {
  const at = 6 * obstacle;
  const mine = probe.bounds;
  for (let axis = 0; axis < 3; axis++) {
    if (
      (bounds[at + axis] ?? 0) >= (mine[3 + axis] ?? 0) ||
      (bounds[at + 3 + axis] ?? 0) <= (mine[axis] ?? 0)
    )
      return false;
  }
  return true;
}

/** Records with fewer blockers first; those that need all another needs and more, at no less cost, left out. */
export function usefulRecords(records: readonly UseRecord[]): readonly UseRecord[] {
  const possible = records.filter((record) => !record.fixed);
  return possible.filter(
    (record, index) =>
      !possible.some(
        (other, at) =>
          at !== index &&
          (other.blockers & ~record.blockers) === 0n &&
          other.volume.cost <= record.volume.cost &&
          (other.blockers !== record.blockers || other.volume.cost < record.volume.cost || at < index),
      ),
  );
}
