/** Cuts a placed scene into what is shown or left out by itself while a way is played, each drawn with its own row. */
import type { BodyBox, PartModel, PartSpec, RigidTransform, Scene } from '../../../geometry';
import type { StagedUnit } from '../../store/stage-store';
import type { DrawnPart } from '../drawing/part-drawing';

export interface StagedPart extends DrawnPart {
  /** Unit id, or the id of a part for what never moves of it. */
  readonly id: string;
  readonly spec: PartSpec;
  readonly pose: RigidTransform;
  readonly neverMoves: boolean;
}

const known = new WeakMap<Scene, { units: readonly StagedUnit[]; parts: readonly StagedPart[] }>();

/** Remembered for as long as the scene is, so that stepping through a sheet exchanges no buffer. */
export function stagedParts(scene: Scene, units: readonly StagedUnit[]): readonly StagedPart[] {
  const before = known.get(scene);
  if (before?.units === units) return before.parts;
  const parts = [...units.flatMap((unit) => partOfUnit(scene, unit)), ...rest(scene, units)];
  known.set(scene, { units, parts });
  return parts;
}

function partOfUnit(scene: Scene, { id, part, boxes }: StagedUnit): StagedPart[] {
  const placed = scene.parts[scene.indexById.get(part) ?? -1];
  if (!placed) return [];
  const bodies = boxes.flatMap((box) => placed.model.boxes[box] ?? []);
  return [
    {
      id,
      spec: placed.spec,
      pose: placed.pose,
      model: withBoxes(placed.model, bodies.map(asSolid)),
      whole: placed.model.boxes,
      neverMoves: false,
    },
  ];
}

/** A plug is reserved space in a plan, and a thing in the hand when it is put in. */
function asSolid(body: BodyBox): BodyBox {
  return body.role === 'solid' ? body : { ...body, role: 'solid' };
}

/** What is in no unit: walls, tray, cages. */
function rest(scene: Scene, units: readonly StagedUnit[]): StagedPart[] {
  return scene.parts.flatMap((placed): StagedPart[] => {
    const moved = new Set(units.flatMap((unit) => (unit.part === placed.id ? unit.boxes : [])));
    const bodies = placed.model.boxes.filter((body, box) => body.role === 'solid' && !moved.has(box));
    if (bodies.length === 0) return [];
    return [
      {
        id: placed.id,
        spec: placed.spec,
        pose: placed.pose,
        model: withBoxes(placed.model, bodies),
        whole: placed.model.boxes,
        neverMoves: true,
      },
    ];
  });
}

function withBoxes(model: PartModel, boxes: readonly BodyBox[]): PartModel {
  return { ...model, boxes };
}
