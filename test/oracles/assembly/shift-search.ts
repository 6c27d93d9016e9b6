/**
 * Parts that hold each other may still come apart by sliding some of them a little: breadth-first search over the
 * shifts of all parts on a lattice. A move is one set of parts, one axis direction, any distance (the counting of
 * Cutler's computer analysis of six-piece burrs, 1994); each step of it is tested as a continuous slide.
 */

import type { AssemblyBodies } from '../../../geometry/solver/assembly/assembly-bodies';
import { rangeOf } from '../../../geometry/solver/assembly/paths/hull';
import { CONTACT_TOLERANCE_MM } from '../../../geometry/space/tolerance';
import { createTravelInterval, travelIntervalPacked } from '../../../geometry/space/travel';

export interface ShiftResult {
  /** Fewest moves to part the first group from the rest, then the next, and so on; as far as it comes apart. */
  readonly levels: readonly number[];
  readonly comesApart: boolean;
  /** Whether every shift that can be reached has been seen: then 'never' is proved on this lattice. */
  readonly exhaustive: boolean;
  /** Members of the group that parts first. */
  readonly first: readonly number[];
}

/** Shifts in lattice steps, three for each unit of the search, in its order; the first unit stands still. */
type Shifts = Int16Array;

const directions: readonly (readonly [number, number, number])[] = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
  [0, 0, 1],
  [0, 0, -1],
];

/** Searches with shifts of whole `step` mm among `units`, everything else away; `mostStates` bounds each stage. */
export function shiftSearch(
  bodies: AssemblyBodies,
  units: readonly number[],
  step: number,
  mostStates = 200_000,
): ShiftResult {
  const searcher = new ShiftSearcher(bodies, step, mostStates);
  const levels: number[] = [];
  let exhaustive = true;
  let first: readonly number[] = [];
  let comesApart = true;
  const open: { units: readonly number[]; starts: readonly Shifts[] }[] = [
    { units, starts: [new Int16Array(3 * units.length)] },
  ];
  for (let group = open.pop(); group; group = open.pop()) {
    if (group.units.length < 2) continue;
    const parted = searcher.part(group.units, group.starts);
    exhaustive = exhaustive && parted.exhaustive;
    if (!parted.found) {
      comesApart = false;
      continue;
    }
    levels.push(parted.moves);
    if (first.length === 0) first = parted.found.away.units;
    open.push(parted.found.away, parted.found.rest);
  }
  return { levels, comesApart, exhaustive, first };
}

interface Group {
  readonly units: readonly number[];
  readonly starts: readonly Shifts[];
}

interface Parted {
  readonly moves: number;
  readonly exhaustive: boolean;
  readonly found?: { readonly away: Group; readonly rest: Group };
}

class ShiftSearcher {
  private readonly bodies: AssemblyBodies;
  private readonly step: number;
  private readonly mostStates: number;
  private readonly reach: number;
  private readonly steps = new Map<number, boolean>();
  private readonly interval = createTravelInterval();

  constructor(bodies: AssemblyBodies, step: number, mostStates: number) {
    this.bodies = bodies;
    this.step = step;
    this.mostStates = mostStates;
    const range = rangeOf(bodies, bodies.boxesOf.flat());
    const extents = [0, 1, 2].map((axis) => (range[axis + 3] ?? 0) - (range[axis] ?? 0));
    this.reach = Math.ceil(Math.max(...extents) / step) + 1;
  }

  /** Fewest moves until one group of the units is clear of the rest. */
  part(units: readonly number[], starts: readonly Shifts[]): Parted {
    const seen = new Set<string>(starts.map((shifts) => shifts.join()));
    let level: readonly Shifts[] = starts;
    for (let moves = 1; level.length > 0; moves++) {
      const next: Shifts[] = [];
      let best: { away: Group; rest: Group } | undefined;
      for (const shifts of level) {
        for (let set = 1; set < 1 << units.length; set += 1) {
          // A set and its complement move alike: the first unit stands still.
          if (set & 1) continue;
          for (let direction = 0; direction < 6; direction++) {
            const found = this.slide(units, shifts, set, direction, seen, next);
            if (found) best = best === undefined || isSmaller(found, best) ? found : best;
          }
        }
        if (seen.size > this.mostStates) return { moves, exhaustive: false };
      }
      if (best) return { moves, exhaustive: true, found: best };
      level = next;
    }
    return { moves: 0, exhaustive: true };
  }

  /** Slides one set as far as it goes, keeping every new shift on the way; the two groups when it gets clear. */
  private slide(
    units: readonly number[],
    from: Shifts,
    set: number,
    direction: number,
    seen: Set<string>,
    next: Shifts[],
  ): { away: Group; rest: Group } | undefined {
    const by = directions[direction] ?? [0, 0, 0];
    let shifts = from;
    for (let distance = 1; distance <= this.reach; distance++) {
      if (!this.stepIsFree(units, shifts, set, direction)) return undefined;
      shifts = moved(shifts, set, by, units.length);
      const key = shifts.join();
      if (seen.has(key)) continue;
      seen.add(key);
      next.push(shifts);
    }
    return { away: this.groupOf(units, shifts, set, true), rest: this.groupOf(units, shifts, set, false) };
  }

  private groupOf(units: readonly number[], shifts: Shifts, set: number, inside: boolean): Group {
    const kept = units.map((_, k) => k).filter((k) => ((set >> k) & 1) === (inside ? 1 : 0));
    const start = new Int16Array(3 * kept.length);
    kept.forEach((k, at) => {
      for (let axis = 0; axis < 3; axis++)
        start[3 * at + axis] = (shifts[3 * k + axis] ?? 0) - (shifts[3 * (kept[0] ?? 0) + axis] ?? 0);
    });
    // Shifts are told apart relative to the first of a group, but boxes stand where the whole scene put them.
    return { units: kept.map((k) => units[k] ?? 0), starts: [start] };
  }

  private stepIsFree(units: readonly number[], shifts: Shifts, set: number, direction: number): boolean {
    for (let i = 0; i < units.length; i++) {
      if (((set >> i) & 1) === 0) continue;
      for (let j = 0; j < units.length; j++) {
        if (((set >> j) & 1) === 1) continue;
        if (!this.pairIsFree(units, shifts, i, j, direction)) return false;
      }
    }
    return true;
  }

  private pairIsFree(
    units: readonly number[],
    shifts: Shifts,
    i: number,
    j: number,
    direction: number,
  ): boolean {
    const x = (shifts[3 * i] ?? 0) - (shifts[3 * j] ?? 0);
    const y = (shifts[3 * i + 1] ?? 0) - (shifts[3 * j + 1] ?? 0);
    const z = (shifts[3 * i + 2] ?? 0) - (shifts[3 * j + 2] ?? 0);
    const size = 4 * this.reach + 1;
    const half = 2 * this.reach;
    const mover = units[i] ?? 0;
    const other = units[j] ?? 0;
    const pairs = mover * this.bodies.boxesOf.length + other;
    const key = (((pairs * size + x + half) * size + y + half) * size + z + half) * 6 + direction;
    const known = this.steps.get(key);
    if (known !== undefined) return known;
    const free = this.measureStep(mover, other, [x, y, z], direction);
    this.steps.set(key, free);
    return free;
  }

  private measureStep(
    mover: number,
    other: number,
    shift: readonly [number, number, number],
    direction: number,
  ): boolean {
    const { packed, count, boxesOf } = this.bodies;
    const by = directions[direction] ?? [0, 0, 0];
    for (const i of boxesOf[mover] ?? []) {
      packed.setBox(count, packed.boxAt(i));
      packed.translateBox(count, this.step * shift[0], this.step * shift[1], this.step * shift[2]);
      for (const j of boxesOf[other] ?? []) {
        if (!travelIntervalPacked(packed, count, j, by[0], by[1], by[2], this.interval)) continue;
        if (this.interval.ahead && this.interval.enter < this.step - CONTACT_TOLERANCE_MM) return false;
      }
    }
    return true;
  }
}

function moved(shifts: Shifts, set: number, by: readonly [number, number, number], count: number): Shifts {
  const next = shifts.slice();
  for (let k = 0; k < count; k++) {
    if (((set >> k) & 1) === 0) continue;
    for (let axis = 0; axis < 3; axis++) next[3 * k + axis] = (next[3 * k + axis] ?? 0) + (by[axis] ?? 0);
  }
  return next;
}

/** The smaller group counts as the one that comes off; ties keep the first found. */
function isSmaller(a: { away: Group; rest: Group }, b: { away: Group; rest: Group }): boolean {
  const size = (split: { away: Group; rest: Group }) =>
    Math.min(split.away.units.length, split.rest.units.length);
  return size(a) < size(b);
}

/**
 * One smallest set of units that never come apart by sliding, groups together or not: members are left out one after
 * another as long as the rest stays held. Empty when the units do come apart, or when it is not known.
 */
export function smallestInterlock(
  bodies: AssemblyBodies,
  units: readonly number[],
  step: number,
): readonly number[] {
  const isHeld = (set: readonly number[]): boolean => {
    const found = shiftSearch(bodies, set, step);
    return !found.comesApart && found.exhaustive;
  };
  if (!isHeld(units)) return [];
  let kept = units;
  for (const unit of units) {
    const rest = kept.filter((other) => other !== unit);
    if (rest.length > 1 && isHeld(rest)) kept = rest;
  }
  return kept;
}
