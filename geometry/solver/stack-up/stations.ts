/** Where along one axis of a part something stands that can be measured from: faces, mounts, feet. */
import type { PartModel } from '../../parts/body';
import type { FaceName, OrientedBox } from '../../space/oriented-box';
import type { ChangedPart } from './changed-part';

export interface StationFace {
  readonly box: number;
  readonly name: FaceName;
  /** mm². */
  readonly area: number;
}

export interface Station {
  /** Coordinate along the axis in the part's frame, mm, as it stands and with the change. */
  readonly at: number;
  readonly moved: number;
  /** Faces that lie there, by the number of their box, and by the box's own axes. */
  readonly faces: readonly StationFace[];
  readonly mounts: readonly string[];
  readonly feet: readonly string[];
}

type Axis = 0 | 1 | 2;

/** Coordinates closer than this are one, mm. */
const GRAIN_MM = 1e-7;

interface Open {
  readonly at: number;
  readonly moved: number;
  readonly faces: StationFace[];
  readonly mounts: string[];
  readonly feet: string[];
}

/** Faces of boxes askew to the axis are left out; the part's own origin is one station. */
export function stationsOf(model: PartModel, change: ChangedPart, axis: Axis): readonly Station[] {
  const stations = new Map<string, Open>();
  const station = (at: number, moved: number): Open => {
    const key = `${Math.round(at / GRAIN_MM)}/${Math.round(moved / GRAIN_MM)}`;
    const known = stations.get(key) ?? { at, moved, faces: [], mounts: [], feet: [] };
    stations.set(key, known);
    return known;
  };
  station(0, 0);
  model.boxes.forEach(({ box, role }, index) => {
    const now = change.boxes.has(index) ? change.boxes.get(index)?.box : box;
    const along = now && role !== 'zone' ? ownAxis(box, axis) : undefined;
    if (!now || !along || ownAxis(now, axis)?.own !== along.own) return;
    for (const sense of [-1, 1] as const) {
      const name: FaceName = `${sense === along.sense ? '+' : '-'}${AXES[along.own]}`;
      const far = (one: OrientedBox): number => one.centre[axis] + sense * one.half[along.own];
      station(far(box), far(now)).faces.push({ box: index, name, area: areaAcross(box, along.own) });
    }
  });
  for (const { id, frame } of model.mounts)
    station(frame.translation[axis], (change.mounts.get(id) ?? frame).translation[axis]).mounts.push(id);
  for (const { id, frame } of model.feet)
    station(frame.translation[axis], (change.feet.get(id) ?? frame).translation[axis]).feet.push(id);
  return [...stations.values()];
}

function areaAcross({ half }: OrientedBox, own: Axis): number {
  return (4 * half[0] * half[1] * half[2]) / half[own];
}

const AXES = ['x', 'y', 'z'] as const;

/** The axis of the box that lies along an axis of its part, and which way; undefined for a box askew to it. */
function ownAxis({ rotation }: OrientedBox, axis: Axis): { own: Axis; sense: 1 | -1 } | undefined {
  for (const own of [0, 1, 2] as const) {
    const entry = rotation[3 * axis + own] ?? 0;
    if (Math.abs(entry) > 1 - GRAIN_MM) return { own, sense: entry > 0 ? 1 : -1 };
  }
  return undefined;
}
