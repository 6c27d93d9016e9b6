/** Where a lead leaves and arrives: out of the end of its plug, or from what it is fixed to. */
import type { PlacedPart, Scene } from '../../../plan/scene';
import { FACE_NAMES } from '../../../space/face-names';
import { boundsOfBoxes, faceNormal, type OrientedBox } from '../../../space/oriented-box';
import { add, dot, scale, subtract, type Vector3 } from '../../../space/vector';
import type { LeadEnd } from '../machine/needed-leads';

export interface LeadPoint {
  /** Where the soft part begins, in the world. */
  readonly at: Vector3;
  /** Way it leaves there. */
  readonly out: Vector3;
  /** Where it was fixed from, when no socket says so; then the point is assumed. */
  readonly assumed: boolean;
}

export function leadPoint(scene: Scene, end: LeadEnd, other: LeadEnd): LeadPoint | undefined {
  const part = scene.parts[end.part];
  if (!part) return undefined;
  if (end.feature !== undefined) return plugPoint(scene, part, end.feature);
  const target = scene.parts[other.part];
  if (part.kind === 'enclosure') return frontPoint(scene, part);
  if (part.kind === 'supply') return bundlePoint(scene, part);
  return loosePoint(scene, part, target);
}

/** Behind the end of the plug, the way it comes off. */
function plugPoint(scene: Scene, part: PlacedPart, featureId: string): LeadPoint | undefined {
  const feature = part.model.features.find((candidate) => candidate.id === featureId);
  const boxOf = (role: string): OrientedBox | undefined => {
    const k = part.model.boxes.findIndex((body) => body.role === role && feature?.use.includes(body.name));
    return k < 0 ? undefined : scene.boxes[part.firstBox + k]?.box;
  };
  const plug = boxOf('plug space');
  if (!plug) return undefined;
  const towards = boxOf('bend space');
  const way = towards ? subtract(towards.centre, plug.centre) : ([0, 0, 1] as const);
  const out = squarest(plug, way);
  return { at: add(plug.centre, scale(out, reachAlong(plug, out))), out, assumed: false };
}

function squarest(box: OrientedBox, way: Vector3): Vector3 {
  return FACE_NAMES.map((face) => faceNormal(box, face)).reduce((best, normal) =>
    dot(normal, way) > dot(best, way) ? normal : best,
  );
}

function reachAlong(box: OrientedBox, direction: Vector3): number {
  return FACE_NAMES.reduce(
    (most, face, k) =>
      Math.max(
        most,
        dot(faceNormal(box, face), direction) > 0.5 ? (box.half[Math.floor(k / 2) as 0 | 1 | 2] ?? 0) : 0,
      ),
    0,
  );
}

/** Buttons and sockets at the upper front: nothing in a plan says where, so the corner by the tray is assumed. */
function frontPoint(scene: Scene, part: PlacedPart): LeadPoint | undefined {
  const walls = part.model.boxes.flatMap((body, k) =>
    body.element === 'front wall' ? (scene.boxes[part.firstBox + k]?.box ?? []) : [],
  );
  const bounds = boundsOfBoxes(walls);
  if (!bounds) return undefined;
  const inner = bounds.min[0];
  const z = Math.min(bounds.max[2] - FRONT_INSET_MM, Math.max(bounds.min[2], 0) + FRONT_INSET_MM);
  return {
    at: [inner - FRONT_OFF_WALL_MM, bounds.max[1] - FRONT_INSET_MM, z],
    out: [-1, 0, 0],
    assumed: true,
  };
}

const FRONT_INSET_MM = 20;
const FRONT_OFF_WALL_MM = 8;

/** Where the fixed leads of a supply leave it. */
function bundlePoint(scene: Scene, part: PlacedPart): LeadPoint | undefined {
  const at = (role: string): OrientedBox | undefined => {
    const k = part.model.boxes.findIndex(
      (body) => body.role === role && body.element === 'plug' && body.feature === 'leads',
    );
    return k < 0 ? undefined : scene.boxes[part.firstBox + k]?.box;
  };
  const bend = at('bend space');
  const body = scene.boxes[part.firstBox]?.box;
  if (!bend || !body) return undefined;
  const out = squarest(bend, subtract(bend.centre, body.centre));
  return { at: subtract(bend.centre, scale(out, reachAlong(bend, out) - 5)), out, assumed: false };
}

/** The corner of a fan that looks at the other end: its lead leaves the frame at a corner. */
function loosePoint(scene: Scene, part: PlacedPart, target: PlacedPart | undefined): LeadPoint | undefined {
  const solids = part.model.boxes.flatMap((body, k) =>
    body.role === 'solid' && body.element === 'fan' ? (scene.boxes[part.firstBox + k]?.box ?? []) : [],
  );
  const bounds = boundsOfBoxes(solids);
  if (!bounds || !target) return undefined;
  const towards = boundsOfBoxes(
    target.model.boxes.flatMap((_, k) => scene.boxes[target.firstBox + k]?.box ?? []),
  );
  const goal = [0, 1, 2].map((axis) => ((towards?.min[axis] ?? 0) + (towards?.max[axis] ?? 0)) / 2);
  const sides = [0, 1, 2].map((axis) => (bounds.max[axis] ?? 0) - (bounds.min[axis] ?? 0));
  const thin = sides.indexOf(Math.min(...sides));
  const middle = [0, 1, 2].map((axis) => ((bounds.max[axis] ?? 0) + (bounds.min[axis] ?? 0)) / 2);
  const point = [0, 1, 2].map((axis) => {
    const centre = middle[axis] ?? 0;
    if (axis === thin) return centre;
    return (goal[axis] ?? 0) > centre ? (bounds.max[axis] ?? 0) - 10 : (bounds.min[axis] ?? 0) + 10;
  });
  const sense = (goal[thin] ?? 0) > (middle[thin] ?? 0) ? 1 : -1;
  const out: Vector3 = thin === 0 ? [sense, 0, 0] : thin === 1 ? [0, sense, 0] : [0, 0, sense];
  const half = (sides[thin] ?? 0) / 2 + 3;
  const [x = 0, y = 0, z = 0] = point;
  return { at: add([x, y, z], scale(out, half)), out, assumed: true };
}
