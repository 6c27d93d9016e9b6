/** Finds what a clearance depends on, by changing every dimension that could matter and looking again. */
import type { PartDimension } from '../../parts/stated-dimensions/stated-dimensions';
import { leastFacingGap } from '../../space/facing-gap';
import type { PackedBoxes } from '../../space/packed-boxes';
import type { Rotation } from '../../space/rotation';
import type { Vector3 } from '../../space/vector';
import { type ChangedPart, meets } from './changed-part';
import { type ClearanceLegs, type Leg, makeLeg } from './clearance-legs';
import { type FacePair, facePairsOf, mayFace, type Reach } from './face-pairs';
import { legBodies } from './leg-bodies';
import { type Changes, type PlanStudy, partAt } from './plan-study';

/** A dimension of a part with what changes at the ends of its band. */
export interface Variation {
  readonly part: number;
  readonly dimension: PartDimension;
  readonly upper: ChangedPart;
  readonly lower: ChangedPart;
}

/** A face pair together with the leg it belongs to. */
export interface LegPair extends FacePair {
  readonly leg: Leg;
  /** Unit direction of the gap in the world. */
  readonly along: Vector3;
}

export interface Discovery {
  readonly variations: readonly Variation[];
  /** All that may set the clearance, in the order of legs and boxes. */
  readonly pairs: readonly LegPair[];
  /** The one that sets it as things stand. */
  readonly binding: LegPair;
}

interface StandingLeg {
  readonly leg: Leg;
  readonly gap: number;
  readonly reach: LegReach;
}

/** Undefined when nothing faces anything as things stand. */
export function discover(study: PlanStudy, { legs, directions }: ClearanceLegs): Discovery | undefined {
  const standing = legs.map((leg): StandingLeg => {
    const least = leastFacingGap(study.scene.packed, leg.fromBoxes, leg.toBoxes, directions);
    return { leg, gap: least?.gap ?? Number.POSITIVE_INFINITY, reach: reachOf(study, leg) };
  });
  const least = Math.min(...standing.map(({ gap }) => gap));
  if (least === Number.POSITIVE_INFINITY) return undefined;
  const widest = Math.max(...standing.map(({ gap, reach }) => (gap === least ? reach.widest : 0)));
  const mattering = standing.flatMap(({ leg, reach }) => {
    const near = nearPairsOnly(study, leg, directions, reach, least + widest + reach.widest);
    return near ? [{ leg: near, reach }] : [];
  });
  const variations = variationsOf(
    study,
    mattering.map(({ leg }) => leg),
  );
  const pairs = mattering.flatMap(({ leg, reach }) => pairsOfLeg(study, leg, variations, directions, reach));
  const binding = bindingOf(pairs);
  return binding && { variations, pairs, binding };
}

/** Dimensions together may move a box by more than each of them alone where a builder clamps or builds anew. */
const AMPLE = 2;

/** How far the boxes of a leg may wander against each other, all dimensions off at once, mm. */
interface LegReach {
  /** Of any two boxes, along any axis. */
  readonly widest: number;
  /** Of all boxes alike, by what moves mounts and feet on the way. */
  readonly whole: Reach;
  /** Of one box by its number in the scene, by what moves that box. */
  own(box: number): Reach;
}

type Mutable = [number, number, number];

function reachOf(study: PlanStudy, leg: Leg): LegReach {
  const all: Mutable = [0, 0, 0];
  const whole: Mutable = [0, 0, 0];
  const own = new Map<number, Mutable>();
  for (const [part, wanted] of leg.matters) {
    const varied = study.varied(part);
    const { pose, firstBox } = partAt(study, part).placed;
    for (const dimension of varied.dimensionsTouching(wanted)) {
      const spread = varied.spreadOf(dimension);
      const by = turnedShift(pose.rotation, spread.shift);
      addTo(all, by);
      if (meets(spread, { ...wanted, boxes: NO_BOXES })) addTo(whole, by);
      for (const box of spread.boxes) {
        if (!wanted.boxes.has(box)) continue;
        const ofBox = own.get(firstBox + box) ?? [0, 0, 0];
        addTo(ofBox, by);
        own.set(firstBox + box, ofBox);
      }
    }
  }
  return { widest: Math.max(...all), whole, own: (box) => own.get(box) ?? NO_REACH };
}

const NO_BOXES: ReadonlySet<number> = new Set();
const NO_REACH: Reach = [0, 0, 0];

function addTo(sum: Mutable, by: Vector3): void {
  for (const axis of [0, 1, 2] as const) sum[axis] += by[axis];
}

function together(a: Reach, b: Reach): Reach {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

/** A shift in the frame of a part, along the axes of the world. */
function turnedShift(rotation: Rotation, shift: Vector3): Vector3 {
  const turned: Mutable = [0, 0, 0];
  for (const row of [0, 1, 2] as const) {
    for (const column of [0, 1, 2] as const) {
      const turn = Math.abs(rotation[3 * row + column] ?? 0);
      if (turn > 0) turned[row] += AMPLE * turn * shift[column];
    }
  }
  return turned;
}

/** The leg with only those boxes that may come to set the clearance; undefined when none may. */
function nearPairsOnly(
  study: PlanStudy,
  leg: Leg,
  directions: readonly Vector3[],
  reach: LegReach,
  within: number,
): Leg | undefined {
  const from = new Set<number>();
  const to = new Set<number>();
  const reachesTo = leg.toBoxes.map((box) => reach.own(box));
  for (const a of leg.fromBoxes) {
    const reachFrom = together(reach.whole, reach.own(a));
    for (const [index, b] of leg.toBoxes.entries()) {
      const reaches = [reachFrom, reachesTo[index] ?? NO_REACH] as const;
      if (!mayFace(study.scene.packed, a, b, directions, reaches, within)) continue;
      from.add(a);
      to.add(b);
    }
  }
  return from.size === 0 ? undefined : makeLeg(study, leg.from, leg.to, [...from], [...to]);
}

/** The dimensions that touch any of the legs. */
export function variationsOf(study: PlanStudy, legs: readonly Leg[]): readonly Variation[] {
  const found = new Map<string, Variation>();
  for (const leg of legs) {
    for (const [part, wanted] of leg.matters) {
      const varied = study.varied(part);
      for (const dimension of varied.dimensionsTouching(wanted)) {
        const key = `${part}/${dimension.path}`;
        if (found.has(key)) continue;
        const [upper, lower] = [varied.atBandEnd(dimension, 1), varied.atBandEnd(dimension, -1)];
        found.set(key, { part, dimension, upper, lower });
      }
    }
  }
  return [...found.values()];
}

function pairsOfLeg(
  study: PlanStudy,
  leg: Leg,
  variations: readonly Variation[],
  directions: readonly Vector3[],
  reach: LegReach,
): readonly LegPair[] {
  const bodies = legBodies(study, leg);
  const at = (part: number, change: ChangedPart): PackedBoxes | undefined => {
    const wanted = leg.matters.get(part);
    return wanted && meets(change, wanted) ? bodies.with(new Map([[part, change]])) : undefined;
  };
  const ends = {
    standing: bodies.standing,
    fromCount: leg.fromBoxes.length,
    upper: variations.map(({ part, upper }) => at(part, upper)),
    lower: variations.map(({ part, lower }) => at(part, lower)),
  };
  const numbers = [...leg.fromBoxes, ...leg.toBoxes];
  const between = (from: number, to: number) =>
    together(reach.whole, together(reach.own(numbers[from] ?? -1), reach.own(numbers[to] ?? -1)));
  return facePairsOf(ends, directions, between).flatMap((pair) => {
    const along = directions[pair.direction];
    return along ? [{ ...pair, leg, along }] : [];
  });
}

/** A pair of boxes counts with the widest of the directions it faces in; the least of all pairs sets the clearance. */
function bindingOf(pairs: readonly LegPair[]): LegPair | undefined {
  let binding: LegPair | undefined;
  for (const group of groupsOf(pairs)) {
    const facing = group.filter((pair) => pair.facesNow);
    const [first, ...others] = facing;
    if (!first) continue;
    const widest = others.reduce(
      (most, pair) => (pair.gap.standing > most.gap.standing ? pair : most),
      first,
    );
    if (!binding || widest.gap.standing < binding.gap.standing) binding = widest;
  }
  return binding;
}

/** Directions of the same two boxes together. */
export function groupsOf(pairs: readonly LegPair[]): readonly (readonly LegPair[])[] {
  const groups: LegPair[][] = [];
  for (const pair of pairs) {
    const last = groups.at(-1);
    const [first] = last ?? [];
    if (last && first?.leg === pair.leg && first.from === pair.from && first.to === pair.to) last.push(pair);
    else groups.push([pair]);
  }
  return groups;
}

/** The clearance itself with changed parts, mm; undefined when nothing faces anything. */
export function clearanceWith(
  study: PlanStudy,
  { legs, directions }: ClearanceLegs,
  changes: Changes,
): number | undefined {
  let least: number | undefined;
  for (const leg of legs) {
    const packed = legBodies(study, leg).with(changes);
    const first = leg.fromBoxes.map((_, index) => index);
    const second = leg.toBoxes.map((_, index) => leg.fromBoxes.length + index);
    const gap = leastFacingGap(packed, first, second, directions)?.gap;
    if (gap !== undefined && (least === undefined || gap < least)) least = gap;
  }
  return least;
}
