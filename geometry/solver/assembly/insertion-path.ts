/** The way in of one part, for playback: how sure it is, its smallest gap, what it sweeps; or why there is none. */
import type { Scene } from '../../plan/scene';
import { type Motion, poseAlong, reversedMotions } from '../../space/motion';
import { boundsOfBoxes, type OrientedBox } from '../../space/oriented-box';
import type { RigidTransform } from '../../space/transform';
import type { Vector3 } from '../../space/vector';
import { upperFirst } from '../part-names';
import { buildMachine, type Machine } from './machine/machine';
import { lettingGo } from './machine/searched-ways';
import type { AssemblyUnit } from './machine/unit';
import { findWayOut, type WayMethod } from './paths/find-way';
import { defaultSearchLimits, type SearchLimits } from './paths/search-limits';
import { smallestGap } from './paths/smallest-gap';
import { searchFor } from './paths/straight-moves';
import { sweptBoxes } from './paths/swept-boxes';
import { obstaclesOf, testWay } from './paths/test-way';
import type { WayContact } from './paths/way';

export type PathProof = 'certified free' | 'blocked by closed form' | 'no way in found within these bounds';

/** A place where a path is tight or blocked, named so that list and viewport mean the same. */
export interface PathPlace {
  /** Boxes of the scene. */
  readonly mover: number;
  readonly obstacle: number;
  /** Part that is met. */
  readonly part: string;
  readonly name: string;
}

export interface InsertionPath {
  readonly unit: string;
  readonly proof: PathProof;
  /** Way of its mount, or the rung of the search that found it. */
  readonly method?: WayMethod;
  readonly words: string;
  /** Into the seat; empty when there is none. Pass them to `poseOnPath`. */
  readonly motions: readonly Motion[];
  /** Distance from the turning axes by which playback shares its time, mm. */
  readonly reach: number;
  readonly gap?: PathPlace & {
    readonly millimetres: number;
    /** When, as the share of playback. */
    readonly t: number;
    readonly points: readonly [Vector3, Vector3];
  };
  /** What the way of its mount meets, when it is not the way taken. */
  readonly meets: readonly PathPlace[];
  /** Boxes to draw what it sweeps. */
  readonly swept: readonly OrientedBox[];
  readonly sentence: string;
}

export interface PathOptions {
  readonly limits?: SearchLimits;
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

export function pathOfUnit(
  machine: Machine,
  unitId: string,
  present?: ReadonlySet<string>,
  options: PathOptions = {},
): InsertionPath {
  const unit = machine.units.find((candidate) => candidate.id === unitId);
  if (!unit) throw new RangeError(`nothing that is put in is called ${unitId}`);
  const counts = (box: number): boolean => isPresent(machine, box, unit, present);
  const boxes = machine.bodies.boxesOf[unit.index] ?? [];
  const obstacles = obstaclesOf(machine.bodies, unit.index, counts);
  const tried = (machine.ways[unit.index] ?? []).map(({ way }) => ({
    way,
    record: testWay(machine.bodies, unit.index, way.motions, counts),
  }));
  const free = tried.find(({ record }) => record.contacts.length === 0);
  const meets = free ? [] : places(machine, tried[0]?.record.contacts ?? []);
  if (free)
    return pathFor(machine, unit, obstacles, free.way.motions, {
      method: 'way of its mount',
      words: free.way.words,
      meets,
    });
  const search = searchFor(machine.bodies, boxes, obstacles);
  const found = findWayOut(search, lettingGo(machine, unit), options.limits ?? defaultSearchLimits);
  if ('method' in found)
    return pathFor(machine, unit, obstacles, found.motions, {
      method: found.method,
      words: found.method,
      meets,
    });
  const [first] = meets;
  const stop = first ? ` The way its mount suggests meets ${first.name}.` : '';
  const claim =
    found.proof === 'blocked by closed form'
      ? `${upperFirst(unit.name)} cannot go in: ${found.because}.`
      : `No way in was found for ${unit.name} within these bounds: ${found.because}.`;
  return {
    unit: unit.id,
    proof: found.proof,
    words: found.because,
    motions: [],
    reach: 0,
    meets,
    swept: [],
    sentence: `${claim}${stop}`,
  };
}

function isPresent(
  machine: Machine,
  box: number,
  unit: AssemblyUnit,
  present: ReadonlySet<string> | undefined,
): boolean {
  const other = machine.units[machine.bodies.unitOf[box] ?? -1];
  if (!other) return true;
  if (present) return present.has(other.id);
  // What sits on the part comes after it; panels and covers are off while something goes in.
  return other.kind !== 'panel' && other.kind !== 'slot cover' && other.on !== unit.index;
}

interface PathFacts {
  readonly method: WayMethod;
  readonly words: string;
  readonly meets: readonly PathPlace[];
}

function pathFor(
  machine: Machine,
  unit: AssemblyUnit,
  obstacles: readonly number[],
  out: readonly Motion[],
  facts: PathFacts,
): InsertionPath {
  const boxes = machine.bodies.boxesOf[unit.index] ?? [];
  const placed = unit.boxes.flatMap((box) => machine.scene.boxes[box]?.box ?? []);
  const bounds = boundsOfBoxes(placed);
  const reach = bounds
    ? Math.hypot(...[0, 1, 2].map((k) => ((bounds.max[k] ?? 0) - (bounds.min[k] ?? 0)) / 2))
    : 1;
  const gap = smallestGap(machine.bodies, boxes, obstacles, out);
  const motions = reversedMotions(out);
  const near = gap && placeOf(machine, gap.mover, gap.obstacle);
  const tight = gap && near ? ` At its tightest it passes ${near.name} by ${gap.gap.toFixed(1)} mm.` : '';
  return {
    unit: unit.id,
    proof: 'certified free',
    ...facts,
    motions,
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
    sentence: `${upperFirst(unit.name)} goes in ${facts.words}.${tight}`,
  };
}

/** Share of the whole way out at which a motion has been done to some share. */
function shareOfWay(out: readonly Motion[], motion: number, share: number, reach: number): number {
  const sizes = out.map((m) =>
    m.kind === 'slide' ? Math.hypot(...m.by) : Math.abs(m.degrees) * (Math.PI / 180) * reach,
  );
  const total = sizes.reduce((sum, size) => sum + size, 0);
  const before = sizes.slice(0, motion).reduce((sum, size) => sum + size, 0);
  return total > 0 ? (before + share * (sizes[motion] ?? 0)) / total : 0;
}

function places(machine: Machine, contacts: readonly WayContact[]): readonly PathPlace[] {
  return contacts.map((contact) => placeOf(machine, contact.mover, contact.obstacle));
}

function placeOf(machine: Machine, mover: number, obstacle: number): PathPlace {
  const met = machine.sceneBox[obstacle] ?? -1;
  const entry = machine.scene.boxes[met];
  const unit = machine.units[machine.bodies.unitOf[obstacle] ?? -1];
  const part = entry === undefined ? undefined : machine.scene.parts[entry.part];
  return {
    mover: machine.sceneBox[mover] ?? -1,
    obstacle: met,
    part: part?.id ?? '',
    name: unit?.name ?? `the ${entry?.body.name.toLowerCase() ?? 'enclosure'}`,
  };
}
