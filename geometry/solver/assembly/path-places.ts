/** Places on a way, named so that list and viewport mean the same. */
import { cornersOfBox, type OrientedBox } from '../../space/oriented-box';
import { createSeparationResult, separatePacked } from '../../space/separation';
import type { Vector3 } from '../../space/vector';
import type { Machine } from './machine/machine';
import type { WayContact } from './paths/way';

/** A place where a path is tight or blocked. */
export interface PathPlace {
  /** Boxes of the scene. */
  readonly mover: number;
  readonly obstacle: number;
  /** Part that is met. */
  readonly part: string;
  /** What is met: 'the front fan', 'block rail'. */
  readonly name: string;
  /** The piece of the moving part that meets it, when the part has several: 'bracket', 'shroud'. */
  readonly piece?: string;
}

export function placesOf(machine: Machine, contacts: readonly WayContact[]): readonly PathPlace[] {
  return contacts.map((contact) => placeOf(machine, contact.mover, contact.obstacle));
}

/** Numbers of the machine's own boxes. */
export function placeOf(machine: Machine, mover: number, obstacle: number): PathPlace {
  const met = machine.sceneBox[obstacle] ?? -1;
  const mine = machine.sceneBox[mover] ?? -1;
  const entry = machine.scene.boxes[met];
  const own = machine.scene.boxes[mine];
  const unit = machine.units[machine.bodies.unitOf[obstacle] ?? -1];
  const part = entry === undefined ? undefined : machine.scene.parts[entry.part];
  const moving = machine.units[machine.bodies.unitOf[mover] ?? -1];
  const piece = own && moving && moving.boxes.length > 1 ? pieceWords(own.body.name) : undefined;
  return {
    mover: mine,
    obstacle: met,
    part: part?.id ?? '',
    name: unit?.name ?? `the ${pieceWords(entry?.body.name ?? 'enclosure')}`,
    ...(piece === undefined ? {} : { piece }),
  };
}

/** What an obstacle is called when no unit owns it: 'tray', 'rear wall'. */
export function pieceOfObstacle(machine: Machine, obstacle: number): string {
  return pieceWords(machine.scene.boxes[machine.sceneBox[obstacle] ?? -1]?.body.name ?? 'enclosure');
}

/** 'rear wall' of 'Rear wall, piece 3'. */
function pieceWords(name: string): string {
  return name
    .replace(/, piece.*$/, '')
    .replace(/ \d+$/, '')
    .toLowerCase();
}

/** The nearest points of a placed mover and an obstacle, for where a contact is. */
export function nearestPoints(
  machine: Machine,
  placed: number,
  obstacle: number,
): readonly [Vector3, Vector3] {
  const out = createSeparationResult();
  separatePacked(machine.bodies.packed, placed, obstacle, out);
  const point = (p: Float64Array): Vector3 => [p[0] ?? 0, p[1] ?? 0, p[2] ?? 0];
  return [point(out.pointA), point(out.pointB)];
}

/** Furthest corner of some boxes from their common middle: what playback shares its time by. */
export function reachOf(boxes: readonly OrientedBox[]): number {
  const corners = boxes.flatMap((box) => cornersOfBox(box));
  if (corners.length === 0) return 1;
  const size = ([0, 1, 2] as const).map((axis) => {
    const values = corners.map((corner) => corner[axis]);
    return (Math.max(...values) - Math.min(...values)) / 2;
  });
  return Math.max(1, Math.hypot(...size));
}
