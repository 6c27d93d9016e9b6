/** A placed part with what the solver looks up about it again and again. */
import type { Mount } from '../parts/body';
import type { PlacedPart, Scene } from '../plan/scene';
import { boundsOfSome } from '../space/body-scan';
import { identityRotation, type Rotation } from '../space/rotation';
import type { RigidTransform } from '../space/transform';
import type { Vector3 } from '../space/vector';
import type { ClearanceRule } from './clearance-rule';
import { type Name, nameOfPart } from './part-names';

/** One step of the way down the mounting tree: what carries the part (or its carrier), and by which mount. */
export interface SeatLink {
  readonly carrier: number;
  readonly mount: Mount;
}

/** What one rule sees of a part, looked up on first asking. */
export interface RuleSight {
  /** Of the rule in the world, when it measures from this part. */
  directions?: readonly Vector3[];
  from?: BoxesSeen;
  to?: BoxesSeen;
}

/** Boxes (numbers into `Scene.boxes`) that count in these directions. */
export interface BoxesSeen {
  readonly directions: readonly Vector3[];
  readonly boxes: readonly number[];
}

export interface ExaminedPart {
  /** Index into `Scene.parts`. */
  readonly index: number;
  readonly placed: PlacedPart;
  readonly name: Name;
  /** From the carrier to the root. */
  readonly chain: readonly SeatLink[];
  /** Axes of the board the part stands on, else of the first board; undefined without a board. */
  readonly boardAxes: Rotation | undefined;
  /** Axes of the enclosure; the world's without one. */
  readonly enclosureAxes: Rotation;
  /** Numbers into `Scene.boxes`. */
  readonly solids: readonly number[];
  readonly engaging: readonly number[];
  readonly reserved: readonly number[];
  /** World bounds as `BodyScan` wants them. */
  readonly solidBounds: Float64Array;
  readonly sights: Map<ClearanceRule, RuleSight>;
}

/** The sight of a rule, empty at first. */
export function sightOf(part: ExaminedPart, rule: ClearanceRule): RuleSight {
  const known = part.sights.get(rule);
  if (known) return known;
  const sight: RuleSight = {};
  part.sights.set(rule, sight);
  return sight;
}

/** Examines all parts; those that stand exactly as they did before keep their old object. */
export function examineParts(scene: Scene, before: readonly ExaminedPart[]): readonly ExaminedPart[] {
  const enclosureAxes =
    scene.parts.find((part) => part.kind === 'enclosure')?.pose.rotation ?? identityRotation;
  const firstBoard = scene.parts.find((part) => part.kind === 'board')?.pose.rotation;
  return scene.parts.map((placed, index) => {
    const chain = chainOf(scene, placed);
    const onBoard = chain
      .map((link) => scene.parts[link.carrier])
      .find((carrier) => carrier?.kind === 'board');
    const boardAxes = placed.kind === 'board' ? placed.pose.rotation : (onBoard?.pose.rotation ?? firstBoard);
    const old = before[index];
    if (old && stands(old, placed, chain) && sameAxes(old, boardAxes, enclosureAxes)) return old;
    return examine(scene, placed, index, { chain, boardAxes, enclosureAxes });
  });
}

function chainOf(scene: Scene, part: PlacedPart): readonly SeatLink[] {
  const chain: SeatLink[] = [];
  let seat = part.seat;
  while (seat && chain.length < scene.parts.length) {
    const carrier = scene.indexById.get(seat.on);
    const placed = carrier === undefined ? undefined : scene.parts[carrier];
    const mountId = seat.mount;
    const mount = placed?.model.mounts.find((candidate) => candidate.id === mountId);
    if (carrier === undefined || !placed || !mount) break;
    chain.push({ carrier, mount });
    seat = placed.seat;
  }
  return chain;
}

function examine(
  scene: Scene,
  placed: PlacedPart,
  index: number,
  frames: Pick<ExaminedPart, 'chain' | 'boardAxes' | 'enclosureAxes'>,
): ExaminedPart {
  const solids: number[] = [];
  const engaging: number[] = [];
  const reserved: number[] = [];
  placed.model.boxes.forEach((body, local) => {
    const box = placed.firstBox + local;
    if (body.role !== 'solid') reserved.push(box);
    else {
      solids.push(box);
      if (body.engages) engaging.push(box);
    }
  });
  return {
    index,
    placed,
    name: nameOfPart(placed, frames.chain[0]?.mount.label),
    ...frames,
    solids,
    engaging,
    reserved,
    solidBounds: boundsOfSome(scene.packed, solids),
    sights: new Map(),
  };
}

function stands(old: ExaminedPart, placed: PlacedPart, chain: readonly SeatLink[]): boolean {
  const was = old.placed;
  return (
    was.id === placed.id &&
    was.model === placed.model &&
    was.spec === placed.spec &&
    was.label === placed.label &&
    was.firstBox === placed.firstBox &&
    was.seat?.foot === placed.seat?.foot &&
    samePose(was.pose, placed.pose) &&
    chain.length === old.chain.length &&
    chain.every((link, step) => {
      const oldLink = old.chain[step];
      return oldLink?.carrier === link.carrier && oldLink.mount === link.mount;
    })
  );
}

function sameAxes(old: ExaminedPart, boardAxes: Rotation | undefined, enclosureAxes: Rotation): boolean {
  return sameRotation(old.boardAxes, boardAxes) && sameRotation(old.enclosureAxes, enclosureAxes);
}

function samePose(a: RigidTransform, b: RigidTransform): boolean {
  if (a === b) return true;
  const [x, y, z] = a.translation;
  return (
    x === b.translation[0] &&
    y === b.translation[1] &&
    z === b.translation[2] &&
    sameRotation(a.rotation, b.rotation)
  );
}

function sameRotation(a: Rotation | undefined, b: Rotation | undefined): boolean {
  if (a === b) return true;
  return a !== undefined && b !== undefined && a.every((entry, index) => entry === b[index]);
}
