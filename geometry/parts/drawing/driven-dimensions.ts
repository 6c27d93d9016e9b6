/**
 * Which field of a sheet drives which distance on the drawing. Found by building the part again with one field nudged
 * and looking at what moves: two faces (or a face and the origin, or the place of a mount) that lie exactly as far
 * apart as the field says and that follow it millimetre for millimetre are its dimension.
 */
import { type Bounds, boundsOfBox, boundsOfBoxes } from '../../space/oriented-box';
import type { PartModel } from '../body';
import { buildPart } from '../build-part';
import type { PartSpec } from '../part-spec';
import { withDimension } from '../stated-dimensions/change-dimension';
import { dimensionsOf, type PartDimension } from '../stated-dimensions/stated-dimensions';

export interface DrivenDimension {
  /** Path of the field: 'interior.length'. */
  readonly path: string;
  readonly title: string;
  /** As the sheet states it, mm. */
  readonly nominal: number;
  readonly axis: 0 | 1 | 2;
  /** Coordinates of the two faces along the axis, smaller first, mm. */
  readonly from: number;
  readonly to: number;
  /** What the two faces reach over, for the extension lines. */
  readonly ends: readonly [Bounds, Bounds];
}

export interface DrivenParts {
  /** Absent for a field that no straight distance shows: a bend radius, the length of a lead. */
  readonly dimension?: DrivenDimension;
  /** Names of the boxes that move or grow with the field. */
  readonly moves: readonly string[];
}

/** A coordinate on the part that a dimension may end at. */
interface Station {
  /** Of the box or the mount. */
  readonly name: string;
  readonly side: 'min' | 'max' | 'mid' | 'mount' | 'origin';
  readonly axis: 0 | 1 | 2;
  readonly at: number;
  readonly bounds: Bounds;
  readonly kind: 'face' | 'middle' | 'mount' | 'origin';
  readonly solid: boolean;
}

const NEAR_MM = 1e-6;
const axes = [0, 1, 2] as const;

interface Known {
  readonly standing: StandingPart | undefined;
  readonly byPath: Map<string, DrivenParts | undefined>;
}

const known = new WeakMap<PartSpec, Known>();

/** Paths of all lengths of a part, in the order of its sheet; not every one is a distance on the drawing. */
export function lengthPaths(spec: PartSpec): readonly string[] {
  return dimensionsOf(spec).map(({ path }) => path);
}

/**
 * What a field drives; undefined for one without effect on the body, and for a path that is no length of the part.
 * Worked out once for each spec and path: each costs a build of the part.
 */
export function drivenPart(spec: PartSpec, path: string): DrivenParts | undefined {
  const there = known.get(spec) ?? { standing: standingPart(buildPart(spec)), byPath: new Map() };
  known.set(spec, there);
  const { standing, byPath } = there;
  if (byPath.has(path)) return byPath.get(path);
  const dimension = dimensionsOf(spec).find((one) => one.path === path);
  const driven = dimension && standing && drivenBy(spec, dimension, standing);
  byPath.set(path, driven);
  return driven;
}

interface StandingPart {
  readonly stations: readonly Station[];
  readonly byPlace: ReadonlyMap<string, readonly number[]>;
  readonly whole: Bounds;
}

function standingPart(model: PartModel): StandingPart | undefined {
  const whole = boundsOfBoxes(model.boxes.map(({ box }) => box));
  if (!whole) return undefined;
  const stations = stationsOf(model);
  const byPlace = new Map<string, number[]>();
  stations.forEach(({ axis, at }, index) => {
    const key = placeOf(axis, at);
    const there = byPlace.get(key);
    if (there) there.push(index);
    else byPlace.set(key, [index]);
  });
  return { stations, byPlace, whole };
}

function placeOf(axis: number, at: number): string {
  return `${axis}/${Math.round(at * 1e4)}`;
}

/** Small against the size, so that nothing is built another way for it, mm. */
function nudgeOf(nominal: number): number {
  return Math.min(0.25, Math.max(0.005, Math.abs(nominal) / 50));
}

function drivenBy(spec: PartSpec, dimension: PartDimension, standing: StandingPart): DrivenParts | undefined {
  const { path, title, nominal } = dimension;
  const nudge = nudgeOf(nominal);
  const shifts = shiftsOf(
    standing.stations,
    stationsOf(buildPart(withDimension(spec, path, nominal + nudge))),
  );
  const moves = new Set<string>();
  standing.stations.forEach(({ kind, name }, index) => {
    if (kind === 'face' && Math.abs(shifts[index] ?? 0) > NEAR_MM) moves.add(name);
  });
  const pair = bestPair(standing, shifts, Math.abs(nominal), nominal < 0 ? -nudge : nudge);
  if (!pair && moves.size === 0) return undefined;
  if (!pair) return { moves: [...moves] };
  const [low, high] = pair[0].at <= pair[1].at ? pair : [pair[1], pair[0]];
  const ends = [low.bounds, high.bounds] as const;
  return {
    dimension: { path, title, nominal, axis: low.axis, from: low.at, to: high.at, ends },
    moves: [...moves],
  };
}

/** How far each station moves, mm; NaN where the nudged part has none of that name. */
function shiftsOf(before: readonly Station[], after: readonly Station[]): Float64Array {
  const isSame = (a: Station, b: Station | undefined) =>
    b !== undefined && a.name === b.name && a.axis === b.axis && a.side === b.side;
  let byKey: ReadonlyMap<string, Station> | undefined;
  const keyOf = ({ name, axis, side }: Station) => `${side}${axis} ${name}`;
  return Float64Array.from(before, (station, index) => {
    let moved = after[index];
    if (!isSame(station, moved)) {
      byKey ??= new Map(after.map((one) => [keyOf(one), one]));
      moved = byKey.get(keyOf(station));
    }
    return moved ? moved.at - station.at : Number.NaN;
  });
}

type Pair = readonly [Station, Station];

/** The pair a draughtsman would choose: whole faces of one box, the outside of the part, the origin. */
function bestPair(
  { stations, byPlace, whole }: StandingPart,
  shifts: Float64Array,
  size: number,
  nudge: number,
): Pair | undefined {
  if (size < NEAR_MM) return undefined;
  let best: { readonly pair: Pair; readonly worth: number } | undefined;
  stations.forEach((station, index) => {
    const shift = shifts[index] ?? Number.NaN;
    if (!(Math.abs(shift) > NEAR_MM)) return;
    for (const at of [station.at - size, station.at + size])
      for (const other of byPlace.get(placeOf(station.axis, at)) ?? []) {
        const end = stations[other];
        if (!end || Math.abs(Math.abs(station.at - end.at) - size) > NEAR_MM) continue;
        const grown = (shift - (shifts[other] ?? Number.NaN)) * Math.sign(station.at - end.at);
        if (!(Math.abs(grown - nudge) <= NEAR_MM)) continue;
        const worth = worthOf(station, end, whole);
        if (!best || worth > best.worth + NEAR_MM) best = { pair: [station, end], worth };
      }
  });
  return best?.pair;
}

const kindWorth = { face: 3, mount: 2.5, origin: 3, middle: 0 } as const;

function worthOf(a: Station, b: Station, whole: Bounds): number {
  const size = Math.max(...axes.map((axis) => whole.max[axis] - whole.min[axis]));
  const isSame = a.bounds === b.bounds ? 1.5 : 0;
  const outside = [a, b].filter(
    ({ axis, at }) => Math.abs(at - whole.min[axis]) < NEAR_MM || Math.abs(at - whole.max[axis]) < NEAR_MM,
  ).length;
  const reach = (acrossOf(a) + acrossOf(b)) / size;
  return (
    kindWorth[a.kind] +
    kindWorth[b.kind] +
    (a.solid ? 1 : 0) +
    (b.solid ? 1 : 0) +
    isSame +
    outside +
    reach / 8
  );
}

/** How far what the station belongs to reaches across its axis, both ways together, mm. */
function acrossOf({ bounds, axis }: Station): number {
  let sum = 0;
  for (const other of axes) if (other !== axis) sum += bounds.max[other] - bounds.min[other];
  return sum;
}

/** In the order of the boxes and mounts, which two builds of one sheet share as a rule. */
function stationsOf(model: PartModel): readonly Station[] {
  const stations: Station[] = [];
  for (const { name, role, box } of model.boxes) {
    const bounds = boundsOfBox(box);
    const solid = role === 'solid';
    for (const axis of axes) {
      stations.push(
        { name, axis, side: 'min', at: bounds.min[axis], bounds, kind: 'face', solid },
        { name, axis, side: 'max', at: bounds.max[axis], bounds, kind: 'face', solid },
        { name, axis, side: 'mid', at: box.centre[axis], bounds, kind: 'middle', solid },
      );
    }
  }
  for (const { id, frame } of model.mounts) {
    const { translation } = frame;
    const bounds: Bounds = { min: translation, max: translation };
    for (const axis of axes)
      stations.push({
        name: id,
        axis,
        side: 'mount',
        at: translation[axis],
        bounds,
        kind: 'mount',
        solid: true,
      });
  }
  const bounds: Bounds = { min: [0, 0, 0], max: [0, 0, 0] };
  for (const axis of axes)
    stations.push({ name: 'origin', axis, side: 'origin', at: 0, bounds, kind: 'origin', solid: true });
  return stations;
}
