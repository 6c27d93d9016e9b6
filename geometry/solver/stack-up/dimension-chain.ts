/** The dimensions behind a clearance as they lie in the machine: a chain of lines from face to face, to be drawn. */
import type { Plan } from '../../plan/plan-schema';
import { invert, transformDirection } from '../../space/transform';
import { add, dot, scale, type Vector3 } from '../../space/vector';
import type { FaceRef } from '../finding';
import { legsOfClearance } from './clearance-legs';
import { type Discovery, discover, type Variation } from './discover';
import { numbersOfPair } from './pair-faces';
import { type PlanStudy, partAt, studyOf } from './plan-study';
import { type Station, stationsOf } from './stations';

/** One dimension of the chain: what it is, and the two faces (or places of mounts) it lies between. */
export interface ChainLink {
  readonly part: string;
  /** Dotted path into the part's spec. */
  readonly path: string;
  /** mm. */
  readonly nominal: number;
  /** Ends of the dimension in the world, level with the dimension line of the clearance. */
  readonly points: readonly [Vector3, Vector3];
  /** The faces at its ends; an end that only a mount marks has none. */
  readonly faces: readonly FaceRef[];
}

export interface DimensionChain {
  readonly clearance: string;
  /** Unit direction in the world along which the chain runs. */
  readonly direction: Vector3;
  /** From the face of the clearance's first part on, each beginning as near as can be to where the last one ended. */
  readonly links: readonly ChainLink[];
}

/**
 * Links are found, not written: of a part's faces, mounts and feet those two are a dimension's ends that stand as far
 * apart as it says and part by as much as it grows. A dimension that lies askew to the clearance, or whose ends no face
 * marks, has no link. Undefined when the plan has no such clearance.
 */
export function dimensionChain(plan: Plan, clearanceId: string): DimensionChain | undefined {
  const study = studyOf(plan);
  const clearance = study.solution.clearances.find(({ id }) => id === clearanceId);
  const discovery = clearance && discover(study, legsOfClearance(study, clearance));
  if (!clearance || !discovery) return undefined;
  const { along } = discovery.binding;
  const level = clearance.points[0];
  const links = discovery.variations.flatMap((variation, index) => {
    const { upper, lower } = discovery.binding.gap;
    if (Math.max(Math.abs(upper[index] ?? 0), Math.abs(lower[index] ?? 0)) < NO_SHARE_MM) return [];
    return linkOf(study, discovery, variation, along, level) ?? [];
  });
  return { clearance: clearance.id, direction: along, links: inTurn(links, along, level) };
}

/** Shares below this are roundoff, mm. */
const NO_SHARE_MM = 1e-9;
/** Faces that stand or move so nearly as they should do so, mm. */
const SAME_MM = 1e-6;

function linkOf(
  study: PlanStudy,
  discovery: Discovery,
  { part, dimension, upper }: Variation,
  along: Vector3,
  level: Vector3,
): ChainLink | undefined {
  const { placed } = partAt(study, part);
  const local = transformDirection(invert(placed.pose), along);
  const axis = ([0, 1, 2] as const).find((row) => Math.abs(Math.abs(local[row]) - 1) < SAME_MM);
  if (axis === undefined) return undefined;
  const sense = Math.sign(local[axis]);
  const stations = stationsOf(placed.model, upper, axis);
  const used = usedOf(study, discovery, part);
  const pair = bestPair(stations, Math.abs(dimension.nominal), dimension.plusMinus, used);
  if (!pair) return undefined;
  const origin = dot(placed.pose.translation, along);
  const points = pair.map(({ at }) => {
    const rise = origin + sense * at - dot(level, along);
    return add(level, scale(along, rise));
  });
  const [first, second] = points;
  if (!first || !second) return undefined;
  const faces = pair.flatMap((station): FaceRef[] => {
    const face = station.faces.find(({ box }) => used.boxes.has(box)) ?? largest(station.faces);
    const body = face && placed.model.boxes[face.box];
    return face && body ? [{ part: placed.id, box: body.name, face: face.name }] : [];
  });
  return {
    part: placed.id,
    path: dimension.path,
    nominal: dimension.nominal,
    points: [first, second],
    faces,
  };
}

function largest(faces: Station['faces']): Station['faces'][number] | undefined {
  return faces.reduce<Station['faces'][number] | undefined>(
    (most, face) => (most && most.area >= face.area ? most : face),
    undefined,
  );
}

/** What of a part the clearance leans on: the box that sets it, and the mounts and feet on the way to the other. */
interface Used {
  readonly boxes: ReadonlySet<number>;
  readonly mounts: ReadonlySet<string>;
  readonly feet: ReadonlySet<string>;
}

function usedOf(study: PlanStudy, { binding }: Discovery, part: number): Used {
  const { leg } = binding;
  const own = new Set<number>();
  const [from, to] = numbersOfPair(binding);
  const { firstBox } = partAt(study, part).placed;
  if (part === leg.from) own.add(from - firstBox);
  if (part === leg.to) own.add(to - firstBox);
  const touched = leg.matters.get(part);
  return {
    boxes: own,
    mounts: new Set(touched?.mounts.keys()),
    feet: new Set(touched?.feet.keys()),
  };
}

function isUsed({ faces, mounts, feet }: Station, used: Used): boolean {
  return (
    faces.some(({ box }) => used.boxes.has(box)) ||
    mounts.some((id) => used.mounts.has(id)) ||
    feet.some((id) => used.feet.has(id))
  );
}

/** Of all pairs that keep the dimension's distance, now and at the end of its band, the one the chain leans on most. */
function bestPair(
  stations: readonly Station[],
  distance: number,
  growth: number,
  used: Used,
): readonly [Station, Station] | undefined {
  let best: readonly [Station, Station] | undefined;
  let most = -1;
  for (const [index, a] of stations.entries()) {
    for (const b of stations.slice(index + 1)) {
      const [now, then] = [b.at - a.at, b.moved - a.moved];
      if (Math.abs(Math.abs(now) - distance) > SAME_MM) continue;
      if (Math.abs(Math.abs(then) - Math.abs(distance + growth)) > SAME_MM) continue;
      const merit =
        4 * (Number(isUsed(a, used)) + Number(isUsed(b, used))) +
        Number(a.faces.length > 0) +
        Number(b.faces.length > 0);
      if (merit > most) [best, most] = [[a, b], merit];
    }
  }
  return best;
}

/** Each link begins at its end nearer to where the last one ended. */
function inTurn(links: readonly ChainLink[], along: Vector3, start: Vector3): readonly ChainLink[] {
  const left = [...links];
  const turned: ChainLink[] = [];
  let at = dot(start, along);
  const far = (point: Vector3): number => Math.abs(dot(point, along) - at);
  while (left.length > 0) {
    left.sort((a, b) => Math.min(...a.points.map(far)) - Math.min(...b.points.map(far)));
    const [next] = left.splice(0, 1);
    if (!next) break;
    const [a, b] = next.points;
    const points = far(a) <= far(b) ? next.points : ([b, a] as const);
    turned.push({ ...next, points });
    at = dot(points[1], along);
  }
  return turned;
}
