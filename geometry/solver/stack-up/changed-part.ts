/** Two bodies of the same part side by side: what moved, and how far. */
import type { BodyBox, Element, PartModel } from '../../parts/body';
import type { OrientedBox } from '../../space/oriented-box';
import type { RigidTransform } from '../../space/transform';
import type { Vector3 } from '../../space/vector';

/** What differs of a part whose dimensions are off: only what moved is kept. */
export interface ChangedPart {
  /** By number in the original's list: the box as it is now; undefined where it is gone. */
  readonly boxes: ReadonlyMap<number, BodyBox | undefined>;
  /** Frames by id. */
  readonly mounts: ReadonlyMap<string, RigidTransform>;
  readonly feet: ReadonlyMap<string, RigidTransform>;
  /** Along each axis of the part no corner, mount or foot goes further than this, mm; infinite when something turns. */
  readonly shift: Vector3;
  /** Kinds of pieces of which some came or went: the body is built another way at this value. */
  readonly rebuilt: ReadonlySet<Element>;
}

/** Names or numbers, as a set or as the keys of a map. */
interface Keys<T> {
  readonly size: number;
  has(key: T): boolean;
  keys(): Iterable<T>;
}

/** Boxes by number, mounts and feet by id. */
export interface Touched {
  readonly boxes: Keys<number>;
  readonly mounts: Keys<string>;
  readonly feet: Keys<string>;
}

export function meets(touched: Touched, wanted: Touched): boolean {
  return (
    shareOne(touched.boxes, wanted.boxes) ||
    shareOne(touched.mounts, wanted.mounts) ||
    shareOne(touched.feet, wanted.feet)
  );
}

function shareOne<T>(some: Keys<T>, others: Keys<T>): boolean {
  const [small, large] = some.size <= others.size ? [some, others] : [others, some];
  for (const entry of small.keys()) if (large.has(entry)) return true;
  return false;
}

/** Sets two bodies of the same part side by side, box by box, mount by mount, foot by foot. */
export function compareModels(original: PartModel, model: PartModel): ChangedPart {
  const { boxes, rebuilt } = sameBoxes(original, model);
  const shift: Mutable = [0, 0, 0];
  const moved = new Map<number, BodyBox | undefined>();
  original.boxes.forEach((box, index) => {
    const now = boxes[index];
    if (!now || growShift(shift, box.box, now.box)) moved.set(index, now);
  });
  const mounts = movedFrames(original.mounts, model.mounts, shift);
  const feet = movedFrames(original.feet, model.feet, shift);
  return { boxes: moved, mounts, feet, shift, rebuilt };
}

type Mutable = [number, number, number];

/**
 * Boxes are told by their names. Pieces of a sheet are numbered as they are cut, so where one came or went the pieces
 * of that sheet are told by where they are instead.
 */
function sameBoxes(
  original: PartModel,
  model: PartModel,
): { boxes: readonly (BodyBox | undefined)[]; rebuilt: ReadonlySet<Element> } {
  const isSame = (box: BodyBox, index: number): boolean => model.boxes[index]?.name === box.name;
  if (original.boxes.length === model.boxes.length && original.boxes.every(isSame))
    return { boxes: model.boxes, rebuilt: NOTHING_REBUILT };
  const [before, after] = [piecesOf(original), piecesOf(model)];
  const rebuilt = new Set<Element>();
  for (const element of new Set([...before.keys(), ...after.keys()])) {
    if (before.get(element)?.length !== after.get(element)?.length) rebuilt.add(element);
  }
  const byName = new Map(model.boxes.map((box) => [box.name, box]));
  const boxes = original.boxes.map((box) =>
    rebuilt.has(box.element) ? nearestPiece(box, after.get(box.element) ?? []) : byName.get(box.name),
  );
  return { boxes, rebuilt };
}

const NOTHING_REBUILT: ReadonlySet<Element> = new Set();

function piecesOf(model: PartModel): ReadonlyMap<Element, readonly BodyBox[]> {
  const pieces = new Map<Element, BodyBox[]>();
  for (const box of model.boxes) {
    const list = pieces.get(box.element);
    if (list) list.push(box);
    else pieces.set(box.element, [box]);
  }
  return pieces;
}

/** Pieces further off than this are other pieces, mm: more than any band of a part that fits a compact machine. */
const OTHER_PIECE_MM = 5;

function nearestPiece(box: BodyBox, pieces: readonly BodyBox[]): BodyBox | undefined {
  let nearest: BodyBox | undefined;
  let least = OTHER_PIECE_MM;
  for (const piece of pieces) {
    const shift: Mutable = [0, 0, 0];
    growShift(shift, box.box, piece.box);
    const by = Math.max(...shift);
    if (by < least) [nearest, least] = [piece, by];
  }
  return nearest;
}

/** Coordinates closer than this are equal, mm: roundoff of the builders. */
const SAME_MM = 1e-10;

/** Whether the box is another, and by how much its corners moved along each axis if that is the furthest yet. */
function growShift(shift: Mutable, a: OrientedBox, b: OrientedBox): boolean {
  if (a === b) return false;
  if (differ(a.rotation, b.rotation)) {
    shift.fill(Number.POSITIVE_INFINITY);
    return true;
  }
  let moved = false;
  const { rotation: r } = a;
  for (const row of [0, 1, 2] as const) {
    let reach = 0;
    for (const column of [0, 1, 2] as const) {
      const by = Math.abs(a.half[column] - b.half[column]);
      if (by > SAME_MM) moved = true;
      reach += Math.abs(r[3 * row + column] ?? 0) * by;
    }
    const by = Math.abs(a.centre[row] - b.centre[row]);
    if (by > SAME_MM) moved = true;
    shift[row] = Math.max(shift[row], by + reach);
  }
  return moved;
}

interface Framed {
  readonly id: string;
  readonly frame: RigidTransform;
}

/** Frames that are no longer the same; one that is gone is held where it was. */
function movedFrames(
  before: readonly Framed[],
  after: readonly Framed[],
  shift: Mutable,
): ReadonlyMap<string, RigidTransform> {
  const moved = new Map<string, RigidTransform>();
  before.forEach(({ id, frame }, index) => {
    const other = after[index]?.id === id ? after[index] : after.find((entry) => entry.id === id);
    if (!other || other.frame === frame) return;
    if (differ(frame.rotation, other.frame.rotation)) shift.fill(Number.POSITIVE_INFINITY);
    else if (!differ(frame.translation, other.frame.translation)) return;
    moved.set(id, other.frame);
    for (const axis of [0, 1, 2] as const) {
      const by = Math.abs(frame.translation[axis] - other.frame.translation[axis]);
      shift[axis] = Math.max(shift[axis], by);
    }
  });
  return moved;
}

function differ(a: readonly number[], b: readonly number[]): boolean {
  for (let k = 0; k < a.length; k++) if (Math.abs((a[k] ?? 0) - (b[k] ?? 0)) > SAME_MM) return true;
  return false;
}
