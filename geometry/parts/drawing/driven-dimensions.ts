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
  readonly axis: 0 | 1 | 2;
  readonly at: number;
  readonly bounds: Bounds;
  readonly kind: 'face' | 'middle' | 'mount' | 'origin';
  readonly solid: boolean;
}

const NEAR_MM = 1e-6;
const axes = [0, 1, 2] as const;

const known = new WeakMap<PartSpec, ReadonlyMap<string, DrivenParts>>();

/** Of every field of the part, by path; worked out once a spec. Fields without effect on the body are left out. */
export function drivenParts(spec: PartSpec): ReadonlyMap<string, DrivenParts> {
  const before = known.get(spec);
  if (before) return before;
  const model = buildPart(spec);
  const stations = stationsOf(model);
  const whole = boundsOfBoxes(model.boxes.map(({ box }) => box));
  const found = new Map<string, DrivenParts>();
  for (const dimension of dimensionsOf(spec)) {
    const driven = whole && drivenBy(spec, dimension, stations, whole);
    if (driven) found.set(dimension.path, driven);
  }
  known.set(spec, found);
  return found;
}

/** Small against the size, so that nothing is built another way for it, mm. */
function nudgeOf(nominal: number): number {
  return Math.min(0.25, Math.max(0.005, Math.abs(nominal) / 50));
}

function drivenBy(
  spec: PartSpec,
  dimension: PartDimension,
  before: ReadonlyMap<string, Station>,
  whole: Bounds,
): DrivenParts | undefined {
  const { path, title, nominal } = dimension;
  const nudge = nudgeOf(nominal);
  const after = stationsOf(buildPart(withDimension(spec, path, nominal + nudge)));
  const shifts = new Map<Station, number>();
  const moves = new Set<string>();
  for (const [key, station] of before) {
    const moved = after.get(key);
    if (!moved) continue;
    const shift = moved.at - station.at;
    shifts.set(station, shift);
    if (Math.abs(shift) > NEAR_MM && station.kind === 'face') moves.add(key.slice(key.indexOf(' ') + 1));
  }
  const pair = bestPair(shifts, Math.abs(nominal), nominal < 0 ? -nudge : nudge, whole);
  if (!pair && moves.size === 0) return undefined;
  if (!pair) return { moves: [...moves] };
  const [low, high] = pair[0].at <= pair[1].at ? pair : [pair[1], pair[0]];
  const ends = [low.bounds, high.bounds] as const;
  return {
    dimension: { path, title, nominal, axis: low.axis, from: low.at, to: high.at, ends },
    moves: [...moves],
  };
}

type Pair = readonly [Station, Station];

/** The pair a draughtsman would choose: whole faces of one box, the outside of the part, the origin. */
function bestPair(
  shifts: ReadonlyMap<Station, number>,
  size: number,
  nudge: number,
  whole: Bounds,
): Pair | undefined {
  const byPlace = new Map<string, Station[]>();
  const placeOf = (axis: number, at: number) => `${axis}/${Math.round(at * 1e4)}`;
  for (const station of shifts.keys()) {
    const key = placeOf(station.axis, station.at);
    const there = byPlace.get(key);
    if (there) there.push(station);
    else byPlace.set(key, [station]);
  }
  let best: { readonly pair: Pair; readonly worth: number } | undefined;
  for (const [station, shift] of shifts) {
    if (Math.abs(shift) < NEAR_MM || size < NEAR_MM) continue;
    for (const other of [station.at - size, station.at + size].flatMap(
      (at) => byPlace.get(placeOf(station.axis, at)) ?? [],
    )) {
      const sense = Math.sign(station.at - other.at);
      const grown = (shift - (shifts.get(other) ?? 0)) * sense;
      if (Math.abs(Math.abs(station.at - other.at) - size) > NEAR_MM || Math.abs(grown - nudge) > NEAR_MM)
        continue;
      const worth = worthOf(station, other, whole);
      if (!best || worth > best.worth + NEAR_MM) best = { pair: [station, other], worth };
    }
  }
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

/** Keys are stable between two builds of one sheet: 'max x name of box'. */
function stationsOf(model: PartModel): ReadonlyMap<string, Station> {
  const stations = new Map<string, Station>();
  for (const { name, role, box } of model.boxes) {
    const bounds = boundsOfBox(box);
    const solid = role === 'solid';
    for (const axis of axes) {
      stations.set(`min${axis} ${name}`, { axis, at: bounds.min[axis], bounds, kind: 'face', solid });
      stations.set(`max${axis} ${name}`, { axis, at: bounds.max[axis], bounds, kind: 'face', solid });
      stations.set(`mid${axis} ${name}`, { axis, at: box.centre[axis], bounds, kind: 'middle', solid });
    }
  }
  for (const { id, frame } of model.mounts) {
    const bounds: Bounds = { min: frame.translation, max: frame.translation };
    for (const axis of axes)
      stations.set(`mount${axis} ${id}`, {
        axis,
        at: frame.translation[axis],
        bounds,
        kind: 'mount',
        solid: true,
      });
  }
  const bounds: Bounds = { min: [0, 0, 0], max: [0, 0, 0] };
  for (const axis of axes)
    stations.set(`origin${axis}`, { axis, at: 0, bounds, kind: 'origin', solid: true });
  return stations;
}
