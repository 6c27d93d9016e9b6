/** What a stage takes up in the world. */
import {
  type Bounds,
  boundsOfBoxes,
  type OrientedBox,
  type RigidTransform,
  transformBox,
} from '../../../geometry';
import type { Stage } from '../../store/stage-store';

/** What is there, and what moves at both ends of its way. */
export function stageBounds(stage: Stage): Bounds | undefined {
  const { scene, units, absent, moving, enclosure, start } = stage;
  const there = units.filter(({ id }) => !absent.has(id)).flatMap((unit) => boxesOfUnit(stage, unit));
  const outside = units
    .filter(({ id }) => moving.has(id))
    .flatMap((unit) => boxesOfUnit(stage, unit))
    .map((box) => transformBox(start, box));
  const walls = enclosure
    ? scene.boxes.flatMap(({ body, box, part }) =>
        body.role === 'solid' && !body.removable && scene.parts[part]?.kind === 'enclosure' ? [box] : [],
      )
    : [];
  return boundsOfBoxes([...there, ...outside, ...walls]);
}

/** What moves, displaced from its seat. */
export function movingBounds(stage: Stage, displacement: RigidTransform): Bounds | undefined {
  const boxes = stage.units
    .filter(({ id }) => stage.moving.has(id))
    .flatMap((unit) => boxesOfUnit(stage, unit));
  return boundsOfBoxes([...boxes, ...boxes.map((box) => transformBox(displacement, box))]);
}

function boxesOfUnit(
  { scene }: Stage,
  { part, boxes }: { readonly part: string; readonly boxes: readonly number[] },
): OrientedBox[] {
  const first = scene.parts[scene.indexById.get(part) ?? -1]?.firstBox ?? 0;
  return boxes.flatMap((box) => scene.boxes[first + box]?.box ?? []);
}
