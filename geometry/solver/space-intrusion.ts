/** A solid of one part in space another part keeps free. */
import type { BodyBox, Feature } from '../parts/body';
import type { Scene, SceneBox } from '../plan/scene';
import { boundsOfBox, cornersOfBox, faceNormal, type OrientedBox } from '../space/oriented-box';
import { rotateVector, transposeRotation } from '../space/rotation';
import { signedDistance } from '../space/separation';
import { CONTACT_TOLERANCE_MM } from '../space/tolerance';
import { compose } from '../space/transform';
import { add, dot, scale, subtract, type Vector3 } from '../space/vector';
import { airSideOf } from './air-side';
import type { ExaminedPart } from './examined-part';

/** A feature that needs the space, and when. */
export interface SpaceTopic {
  /** Id of the finding about it. */
  readonly id: string;
  readonly feature: Feature;
  readonly needs: 'use' | 'approach';
}

export interface SpaceIntrusion {
  readonly owner: ExaminedPart;
  readonly other: ExaminedPart;
  readonly topics: readonly SpaceTopic[];
  /** Numbers into `Scene.boxes`. */
  readonly space: number;
  readonly solid: number;
  /** Negative: how deep the solid stands in the space, mm. */
  readonly millimetres: number;
  /** For breathing space: what is left in front of the fan. */
  readonly air?: AirLeft;
}

export interface AirLeft {
  /** Free depth in front of the obstacle and depth wanted, mm. */
  readonly left: number;
  readonly wanted: number;
  /** Part of the area the obstacle stands before, 0 to 1. */
  readonly share: number;
}

/** Undefined where it is natural: a fan breathes through its own seat, a plug leaves through its own opening. */
export function spaceIntrusion(
  scene: Scene,
  owner: ExaminedPart,
  space: number,
  other: ExaminedPart,
  solid: number,
): SpaceIntrusion | undefined {
  const kept = scene.boxes[space];
  const obstacle = scene.boxes[solid];
  if (!kept || !obstacle || kept.body.role === 'zone') return undefined;
  if (isBehindOwnSeat(owner, other, obstacle.box)) return undefined;
  // Hands and what is lifted out go past a panel that is off by then.
  if (kept.body.role === 'hand space' && obstacle.body.removable) return undefined;
  const breathing = kept.body.role === 'breathing space';
  if (breathing && letsAirPass(owner, other, obstacle.body)) return undefined;
  const millimetres = signedDistance(scene.packed, space, solid);
  const topics = topicsOf(owner, kept.body.name);
  const found = { owner, other, topics, space, solid, millimetres };
  return breathing ? { ...found, air: airLeft(owner, kept, obstacle.box) } : found;
}

const topicsByBox = new WeakMap<ExaminedPart, Map<string, readonly SpaceTopic[]>>();

function topicsOf(owner: ExaminedPart, box: string): readonly SpaceTopic[] {
  const boxes = topicsByBox.get(owner) ?? new Map<string, readonly SpaceTopic[]>();
  topicsByBox.set(owner, boxes);
  const known = boxes.get(box);
  if (known) return known;
  const topics = owner.placed.model.features.flatMap((feature): SpaceTopic[] => {
    const id = `covered/${owner.placed.id}/${feature.id}`;
    if (feature.use.includes(box)) return [{ id, feature, needs: 'use' }];
    return feature.approach.includes(box) ? [{ id, feature, needs: 'approach' }] : [];
  });
  boxes.set(box, topics);
  return topics;
}

/** Whether the obstacle belongs to what carries the part and lies wholly behind the seat it is carried on. */
function isBehindOwnSeat(owner: ExaminedPart, other: ExaminedPart, obstacle: OrientedBox): boolean {
  const link = owner.chain.find((step) => step.carrier === other.index);
  if (!link) return false;
  const seat = compose(other.placed.pose, link.mount.frame);
  const outward = rotateVector(seat.rotation, [0, 0, 1]);
  return cornersOfBox(obstacle).every(
    (corner) => dot(outward, subtract(corner, seat.translation)) <= CONTACT_TOLERANCE_MM,
  );
}

function letsAirPass(owner: ExaminedPart, other: ExaminedPart, body: BodyBox): boolean {
  if (body.material === 'mesh' || body.element === 'vent') return true;
  // A fan or radiator in front of another passes the air on.
  if (body.element === 'fan' || body.element === 'radiator core') return true;
  const carries = owner.chain[0]?.carrier === other.index && other.placed.kind !== 'enclosure';
  return carries || other.chain[0]?.carrier === owner.index;
}

function airLeft(owner: ExaminedPart, kept: SceneBox, obstacle: OrientedBox): AirLeft {
  const { face, depth } = airSideOf(owner.placed.model, kept.body);
  const inward = faceNormal(kept.box, face);
  const origin = add(kept.box.centre, scale(inward, depth / 2));
  const nearest = Math.min(...cornersOfBox(obstacle).map((corner) => dot(inward, subtract(origin, corner))));
  return { left: Math.max(0, nearest), wanted: depth, share: shareOfFace(kept.box, face, obstacle) };
}

/** Part of the face the obstacle stands before, by its bounds in the frame of the box. */
function shareOfFace(box: OrientedBox, face: string, obstacle: OrientedBox): number {
  const back = transposeRotation(box.rotation);
  const bounds = boundsOfBox({
    centre: rotateVector(back, subtract(obstacle.centre, box.centre)),
    half: obstacle.half,
    rotation: compose(
      { rotation: back, translation: [0, 0, 0] },
      { rotation: obstacle.rotation, translation: [0, 0, 0] },
    ).rotation,
  });
  let share = 1;
  for (const [axis, name] of (['x', 'y', 'z'] as const).entries()) {
    if (face.endsWith(name)) continue;
    const half = component(box.half, axis);
    const from = Math.max(-half, component(bounds.min, axis));
    const to = Math.min(half, component(bounds.max, axis));
    share *= Math.max(0, to - from) / (2 * half);
  }
  return share;
}

function component(vector: Vector3, axis: number): number {
  return vector[axis] ?? 0;
}
