/** Whether a part would be free of all others at another pose or with another body. */
import type { BodyBox } from '../../parts/body';
import type { Scene } from '../../plan/scene';
import { type OrientedBox, transformBox } from '../../space/oriented-box';
import { BOUNDS_STRIDE, PackedBoxes } from '../../space/packed-boxes';
import { interiorsOverlap } from '../../space/separation';
import type { RigidTransform } from '../../space/transform';
import type { ExaminedPart } from '../examined-part';

/** Where the part would sit, to know which of its hardware may enter what. */
export interface TrialSeat {
  readonly on: string;
  readonly mount: string;
}

const pair = new PackedBoxes(2);

/**
 * True when no solid of the part meets a solid of another, and no plug it needs, nor any plug others need, is in the
 * way. `seat` is where it sits in the trial.
 */
export function isFreeAt(
  scene: Scene,
  parts: readonly ExaminedPart[],
  part: ExaminedPart,
  boxes: readonly BodyBox[],
  pose: RigidTransform,
  seat: TrialSeat | undefined,
): boolean {
  const needed = neededSpaces(part);
  for (const body of boxes) {
    const isSolid = body.role === 'solid';
    if (!isSolid && !needed.has(body.name)) continue;
    const box = transformBox(pose, body.box);
    pair.setBox(0, box);
    for (const other of parts) {
      if (other === part) continue;
      if (meets(scene, body, isSolid, other, seat)) return false;
    }
  }
  return true;
}

/** Holds the box in slot 0 of `pair` against one other part. */
function meets(
  scene: Scene,
  body: BodyBox,
  isSolid: boolean,
  other: ExaminedPart,
  seat: TrialSeat | undefined,
): boolean {
  const carries = other.placed.id === seat?.on;
  if (!isSolid && carries) return false;
  const guests = other.placed.seat;
  for (const number of other.solids) {
    const entry = scene.boxes[number];
    if (!entry || !mayTouch(scene, number)) continue;
    if (carries && body.engages && entry.body.receives?.includes(seat.mount)) continue;
    if (guests && entry.body.engages && body.receives?.includes(guests.mount)) continue;
    if (overlaps(entry.box)) return true;
  }
  if (!isSolid || carries) return false;
  const spaces = neededSpaces(other);
  return other.reserved.some((number) => {
    const entry = scene.boxes[number];
    return (
      entry !== undefined && spaces.has(entry.body.name) && mayTouch(scene, number) && overlaps(entry.box)
    );
  });
}

function mayTouch(scene: Scene, number: number): boolean {
  const { bounds } = scene.packed;
  for (let axis = 0; axis < 3; axis++) {
    const at = number * BOUNDS_STRIDE + axis;
    if ((bounds[at] ?? 0) > (pair.bounds[3 + axis] ?? 0)) return false;
    if ((bounds[at + 3] ?? 0) < (pair.bounds[axis] ?? 0)) return false;
  }
  return true;
}

function overlaps(box: OrientedBox): boolean {
  pair.setBox(1, box);
  return interiorsOverlap(pair, 0, 1);
}

const spacesByPart = new WeakMap<ExaminedPart, ReadonlySet<string>>();

/** Names of the spaces a part cannot do without. */
function neededSpaces(part: ExaminedPart): ReadonlySet<string> {
  const known = spacesByPart.get(part);
  if (known) return known;
  const spaces = new Set(
    part.placed.model.features.flatMap((feature) => (feature.required ? feature.use : [])),
  );
  spacesByPart.set(part, spaces);
  return spaces;
}
