/** Which part is under the pointer: the nearest solid that is drawn as a solid there. */
import type { OrientedBox, Scene, SceneBox, Vector3 } from '../../../geometry';
import type { Ray } from '../camera/sight';
import { axisOf, halfOf } from '../drawing/box-face';
import { type EnclosureSheets, enclosureSheets, isSheet } from '../drawing/enclosure-sheets';

export interface Picked {
  readonly part: string;
  /** Place of the hit in the world, mm. */
  readonly at: Vector3;
}

/** Half-space that is cut away: points with normal . p > distance. */
export type CutAway = readonly [number, number, number, number];

interface Passage {
  readonly enter: number;
  readonly leave: number;
  /** Face number through which the ray enters. */
  readonly face: number;
}

export function pickPart(scene: Scene, ray: Ray, cutAway?: CutAway): Picked | undefined {
  let best: { distance: number; part: number } | undefined;
  const sheets = new Map<number, EnclosureSheets>();
  for (const entry of scene.boxes) {
    if (entry.body.role !== 'solid') continue;
    const passage = passThrough(entry.box, ray);
    if (!passage) continue;
    const distance = seenAt(passage, ray, cutAway);
    if (distance === undefined || (best && distance >= best.distance)) continue;
    if (isOpenSheet(scene, entry, passage, sheets)) continue;
    best = { distance, part: entry.part };
  }
  const part = best && scene.parts[best.part];
  if (!best || !part) return undefined;
  const { origin: o, direction: d } = ray;
  const t = best.distance;
  return { part: part.id, at: [o[0] + d[0] * t, o[1] + d[1] * t, o[2] + d[2] * t] };
}

/** Near walls are drawn as lines only, so one picks what is behind them. */
function isOpenSheet(
  scene: Scene,
  { part, body }: SceneBox,
  { face }: Passage,
  known: Map<number, EnclosureSheets>,
): boolean {
  const placed = scene.parts[part];
  if (placed?.kind !== 'enclosure' || !isSheet(body)) return false;
  const sheets = known.get(part) ?? enclosureSheets(placed.model.boxes.filter((box) => box.role === 'solid'));
  known.set(part, sheets);
  const outer = sheets.outerFace(body);
  return outer?.number === face;
}

/** Where the ray meets what is left of the box after the cut. */
function seenAt(
  passage: Passage,
  { origin, direction }: Ray,
  cutAway: CutAway | undefined,
): number | undefined {
  if (!cutAway) return passage.enter;
  const [nx, ny, nz, distance] = cutAway;
  const height = nx * origin[0] + ny * origin[1] + nz * origin[2] - distance;
  const slope = nx * direction[0] + ny * direction[1] + nz * direction[2];
  if (Math.abs(slope) < 1e-12) return height > 0 ? undefined : passage.enter;
  const crossing = -height / slope;
  if (slope < 0) {
    const enter = Math.max(passage.enter, crossing);
    return enter <= passage.leave ? enter : undefined;
  }
  return passage.enter <= crossing ? passage.enter : undefined;
}

/** Slabs of the box's own axes; undefined when the ray misses it or it lies behind the eye. */
export function passThrough(box: OrientedBox, { origin, direction }: Ray): Passage | undefined {
  let [enter, leave, face] = [-Infinity, Infinity, 0];
  for (const axis of [0, 1, 2] as const) {
    const unit = axisOf(box, axis);
    const half = halfOf(box, axis);
    const [from, step] = [offsetAlong(box, origin, unit), dotOf(direction, unit)];
    if (Math.abs(step) < 1e-12) {
      if (Math.abs(from) > half) return undefined;
      continue;
    }
    const near = (-Math.sign(step) * half - from) / step;
    const far = (Math.sign(step) * half - from) / step;
    if (near > enter) {
      enter = near;
      face = 2 * axis + (step < 0 ? 1 : 0);
    }
    leave = Math.min(leave, far);
  }
  return enter <= leave && enter > 0 ? { enter, leave, face } : undefined;
}

const dotOf = (a: Vector3, b: Vector3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

function offsetAlong({ centre }: OrientedBox, origin: Vector3, unit: Vector3): number {
  return (
    (origin[0] - centre[0]) * unit[0] + (origin[1] - centre[1]) * unit[1] + (origin[2] - centre[2]) * unit[2]
  );
}
