/** The way in of one part, for playback: how sure it is, its smallest gap, what it sweeps; or how far it comes. */
import type { Scene } from '../../plan/scene';
import { lengthOfMotion, type Motion, poseAfter, poseAlong, reversedMotions } from '../../space/motion';
import { type OrientedBox, transformBox } from '../../space/oriented-box';
import type { RigidTransform } from '../../space/transform';
import type { Vector3 } from '../../space/vector';
import { millimetresInWords, upperFirst } from '../part-names';
import { type FurthestPose, furthestWay } from './furthest-pose';
import { buildMachine, type Machine } from './machine/machine';
import { lettingGo } from './machine/searched-ways';
import type { AssemblyUnit } from './machine/unit';
import { wordsOfSearched } from './machine/way-words';
import { type PathPlace, placeOf, placesOf, reachOf } from './path-places';
import { findWayOut, type NoWay, type WayMethod } from './paths/find-way';
import { defaultSearchLimits, type SearchLimits } from './paths/search-limits';
import { smallestGap } from './paths/smallest-gap';
import { searchFor } from './paths/straight-moves';
import { sweptBoxes } from './paths/swept-boxes';
import { obstaclesOf, testWay } from './paths/test-way';

export type PathProof = 'certified free' | 'blocked by closed form' | 'no way in found within these bounds';

export interface InsertionPath {
  readonly unit: string;
  readonly proof: PathProof;
  /** Way of its mount, or the rung of the search that found it. */
  readonly method?: WayMethod;
  readonly words: string;
  /** Into the seat, the blocked way when there is no free one. Pass them to `poseOnPath`. */
  readonly motions: readonly Motion[];
  /** Distance from the turning axes by which playback shares its time, mm. */
  readonly reach: number;
  readonly gap?: PathPlace & {
    readonly millimetres: number;
    /** When, as the share of playback. */
    readonly t: number;
    readonly points: readonly [Vector3, Vector3];
  };
  /** Where the blocked way ends; absent for a free one. */
  readonly furthest?: FurthestPose;
  /** What the way of its mount meets, when it is not the way taken. */
  readonly meets: readonly PathPlace[];
  /** Boxes to draw what it sweeps. */
  readonly swept: readonly OrientedBox[];
  readonly sentence: string;
}

export interface PathOptions {
  readonly limits?: SearchLimits;
  /** Unit ids that travel with it: what is mounted on it already. */
  readonly with?: readonly string[];
  /** Whether it goes in on the bench, where nothing of the enclosure is in the way. */
  readonly onBench?: boolean;
  /** The way an order has found, into the seat: looked at first. */
  readonly known?: { readonly words: string; readonly motions: readonly Motion[] };
}

/** Displacement of the part from its seat at playback time t: 0 outside, 1 seated. */
export function poseOnPath(path: Pick<InsertionPath, 'motions' | 'reach'>, t: number): RigidTransform {
  // Motions run into the seat, so the pose at t is what is left to go, undone.
  return poseAlong(reversedMotions(path.motions), 1 - t, path.reach);
}

/**
 * Way into its seat of a part (or piece, by unit id) past the parts (or pieces) in `present`; everything but panels
 * that come off when absent. Throws a RangeError for an id the scene does not have.
 */
export function insertionPath(
  scene: Scene,
  unitId: string,
  present?: ReadonlySet<string>,
  options: PathOptions = {},
): InsertionPath {
  return pathOfUnit(buildMachine(scene), unitId, present, options);
}

/** Gaps wider than this are no news, mm. */
const LOOK_MM = 25;

/** What moves, and past what. */
interface Mover {
  readonly machine: Machine;
  readonly unit: AssemblyUnit;
  /** Boxes of the unit and of what travels with it. */
  readonly boxes: readonly number[];
  readonly obstacles: readonly number[];
  readonly placed: readonly OrientedBox[];
  readonly reach: number;
}

export function pathOfUnit(
  machine: Machine,
  unitId: string,
  present?: ReadonlySet<string>,
  options: PathOptions = {},
): InsertionPath {
  const mover = moverOf(machine, unitId, present, options);
  const { unit, boxes, obstacles } = mover;
  const known = options.known && {
    words: options.known.words,
    motions: reversedMotions(options.known.motions),
  };
  const stands = new Set(obstacles);
  const ways = [...(known ? [known] : []), ...(machine.ways[unit.index] ?? []).map(({ way }) => way)];
  const tried = ways.map((way) => ({
    way,
    record: testWay(machine.bodies, unit.index, way.motions, (box) => stands.has(box), boxes),
  }));
  const free = tried.find(({ record }) => record.contacts.length === 0);
  const meets = free ? [] : placesOf(machine, tried[0]?.record.contacts ?? []);
  if (free) return freePath(mover, free.way.motions, { ...free.way, method: 'way of its mount', meets });
  const out = lettingGo(machine, unit);
  const search = searchFor(machine.bodies, boxes, obstacles);
  const found = findWayOut(search, out, options.limits ?? defaultSearchLimits);
  if ('method' in found)
    return freePath(mover, found.motions, {
      method: found.method,
      words: wordsOfSearched(machine, unit, found, out),
      meets,
    });
  return blockedPath(
    mover,
    ways.map((way) => way.motions),
    found,
    meets,
  );
}

function moverOf(
  machine: Machine,
  unitId: string,
  present: ReadonlySet<string> | undefined,
  options: PathOptions,
): Mover {
  const unit = machine.units.find((candidate) => candidate.id === unitId);
  if (!unit) throw new RangeError(`nothing that is put in is called ${unitId}`);
  const group = new Set<number>([unit.index]);
  for (const other of machine.units) if (options.with?.includes(other.id)) group.add(other.index);
  const boxes = [...group].flatMap((index) => machine.bodies.boxesOf[index] ?? []);
  const obstacles = obstaclesOf(machine.bodies, unit.index, (box) => {
    const index = machine.bodies.unitOf[box] ?? -1;
    const other = machine.units[index];
    if (!other) return options.onBench !== true;
    return !group.has(index) && isPresent(machine, other, unit, present);
  });
  const placed = boxes.flatMap((box) => machine.scene.boxes[machine.sceneBox[box] ?? -1]?.box ?? []);
  return { machine, unit, boxes, obstacles, placed, reach: reachOf(placed) };
}

function isPresent(
  machine: Machine,
  other: AssemblyUnit,
  unit: AssemblyUnit,
  present: ReadonlySet<string> | undefined,
): boolean {
  if (present) return present.has(other.id);
  // What sits on the part comes after it; panels and covers are off while something goes in.
  if (other.kind === 'panel' || other.kind === 'slot cover') return false;
  for (let at: AssemblyUnit | undefined = other, steps = 0; at && steps < machine.units.length; steps++) {
    if (at.on === unit.index) return false;
    at = at.on === undefined ? undefined : machine.units[at.on];
  }
  return true;
}

interface PathFacts {
  readonly method: WayMethod;
  readonly words: string;
  readonly meets: readonly PathPlace[];
}

function freePath(mover: Mover, out: readonly Motion[], { method, words, meets }: PathFacts): InsertionPath {
  const { machine, unit, boxes, obstacles, placed, reach } = mover;
  const gap = smallestGap(machine.bodies, boxes, obstacles, out, LOOK_MM, (box) => pieceOf(machine, box));
  const near = gap && placeOf(machine, gap.mover, gap.obstacle);
  const tight =
    gap && near
      ? sayTight(gap.gap, near)
      : ` Nothing comes within ${LOOK_MM} mm of it on the way, or nearer than at its seat.`;
  return {
    unit: unit.id,
    proof: 'certified free',
    method,
    words,
    meets,
    motions: reversedMotions(out),
    reach,
    ...(gap && near
      ? {
          gap: {
            ...near,
            millimetres: gap.gap,
            t: 1 - shareOfWay(out, gap.motion, gap.share, reach),
            points: gap.points,
          },
        }
      : {}),
    swept: sweptBoxes(placed, out),
    sentence: `${upperFirst(unit.name)}: ${words}.${tight}`,
  };
}

function blockedPath(
  mover: Mover,
  ways: readonly (readonly Motion[])[],
  found: NoWay,
  meets: readonly PathPlace[],
): InsertionPath {
  const { machine, unit, boxes, obstacles, placed, reach } = mover;
  const came = furthestWay(machine, boxes, obstacles, ways, reach);
  const claim =
    found.proof === 'blocked by closed form'
      ? `${upperFirst(unit.name)} cannot go in: ${found.because}.`
      : `No way in was found for ${unit.name} within these bounds: ${found.because}.`;
  const piece = came?.furthest.piece ? `its ${came.furthest.piece}` : 'it';
  const stop = came
    ? ` On the ways its mount suggests it comes to ${came.furthest.left.toFixed(0)} mm from its seat, where ${piece} meets ${came.furthest.name}.`
    : '';
  return {
    unit: unit.id,
    proof: found.proof,
    words: found.because,
    motions: came?.motions ?? [],
    reach,
    meets,
    ...(came ? { furthest: came.furthest } : {}),
    swept: came ? sweptOnTheWay(placed, came.motions, came.furthest.t, reach) : [],
    sentence: `${claim}${stop}`,
  };
}

function sayTight(gap: number, near: PathPlace): string {
  const mine = near.piece ? `its ${near.piece}` : 'it';
  return gap < 0.05
    ? ` On the way ${mine} slides along ${near.name}.`
    : ` At its tightest there are ${millimetresInWords(gap)} between ${mine} and ${near.name}.`;
}

/** What an obstacle is a piece of: a wall is one thing, however many boxes it is made of. */
function pieceOf(machine: Machine, box: number): string {
  const entry = machine.scene.boxes[machine.sceneBox[box] ?? -1];
  return entry ? `${entry.part} ${entry.body.element}` : '';
}

/** What is swept from outside up to the share t of a way in. */
function sweptOnTheWay(
  placed: readonly OrientedBox[],
  motions: readonly Motion[],
  t: number,
  reach: number,
): readonly OrientedBox[] {
  const outside = poseAfter(reversedMotions(motions));
  const sizes = motions.map((motion) => lengthOfMotion(motion, reach));
  let left = t * sizes.reduce((sum, size) => sum + size, 0);
  const done: Motion[] = [];
  for (const [k, motion] of motions.entries()) {
    const size = sizes[k] ?? 0;
    if (left <= 0 || size === 0) break;
    done.push(partOfMotion(motion, Math.min(1, left / size)));
    left -= size;
  }
  return sweptBoxes(
    placed.map((box) => transformBox(outside, box)),
    done,
  );
}

function partOfMotion(motion: Motion, share: number): Motion {
  return motion.kind === 'slide'
    ? { kind: 'slide', by: [motion.by[0] * share, motion.by[1] * share, motion.by[2] * share] }
    : { ...motion, degrees: motion.degrees * share };
}

/** Share of the whole way out at which a motion has been done to some share. */
function shareOfWay(out: readonly Motion[], motion: number, share: number, reach: number): number {
  const sizes = out.map((m) => lengthOfMotion(m, reach));
  const total = sizes.reduce((sum, size) => sum + size, 0);
  const before = sizes.slice(0, motion).reduce((sum, size) => sum + size, 0);
  return total > 0 ? (before + share * (sizes[motion] ?? 0)) / total : 0;
}
