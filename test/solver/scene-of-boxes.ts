import type { BodyBox, Element, Feature, Foot, Mount, PartModel, Role } from '../../geometry/parts/body';
import type { PartKind, PartSpec } from '../../geometry/parts/part-spec';
import type { PlacedPart, Scene, SceneBox, Seat } from '../../geometry/plan/scene';
import { boxFromCorners, transformBox } from '../../geometry/space/oriented-box';
import { PackedBoxes } from '../../geometry/space/packed-boxes';
import { identityTransform, type RigidTransform } from '../../geometry/space/transform';
import type { Vector3 } from '../../geometry/space/vector';

/** A part made of hand-drawn boxes: what the solver sees, without the builders of real parts. */
export interface DrawnPart {
  readonly id: string;
  readonly kind: PartKind;
  readonly boxes: readonly BodyBox[];
  readonly pose?: RigidTransform;
  readonly label?: string;
  readonly seat?: Omit<Seat, 'foot' | 'turn'> & Partial<Seat>;
  readonly mounts?: readonly Mount[];
  readonly feet?: readonly Foot[];
  readonly features?: readonly Feature[];
  readonly spec?: PartSpec;
}

type Extras = Partial<Pick<BodyBox, 'engages' | 'receives' | 'material' | 'removable'>> & { role?: Role };

/** A box between two corners in the frame of its part. */
export function drawBox(
  name: string,
  element: Element,
  from: Vector3,
  to: Vector3,
  { role = 'solid', ...extras }: Extras = {},
): BodyBox {
  return { name, role, element, box: boxFromCorners(from, to), ...extras };
}

export function sceneOf(
  drawn: readonly DrawnPart[],
  wantedGaps: Scene['wantedGaps'] = {},
  problems: Scene['problems'] = [],
): Scene {
  const parts: PlacedPart[] = [];
  const boxes: SceneBox[] = [];
  for (const part of drawn) {
    const pose = part.pose ?? identityTransform;
    const index = parts.length;
    parts.push({
      id: part.id,
      kind: part.kind,
      label: part.label ?? labelOf(part.id),
      spec: part.spec ?? plainSpec(part.kind),
      model: modelOf(part),
      pose,
      firstBox: boxes.length,
      ...(part.seat ? { seat: { foot: 'foot', turn: 0, ...part.seat } } : {}),
    });
    for (const body of part.boxes) boxes.push({ part: index, body, box: transformBox(pose, body.box) });
  }
  return {
    parts,
    indexById: new Map(parts.map((part, index) => [part.id, index])),
    boxes,
    packed: PackedBoxes.from(boxes.map((entry) => entry.box)),
    problems,
    wantedGaps,
  };
}

/** The same drawing gives the same model object, as the same spec does in a plan. */
const models = new WeakMap<readonly BodyBox[], PartModel>();

function modelOf({ boxes, mounts = [], feet = [], features = [] }: DrawnPart): PartModel {
  const known = models.get(boxes);
  if (known) return known;
  const model: PartModel = { boxes, mounts, feet, features, adjustments: [] };
  models.set(boxes, model);
  return model;
}

function labelOf(id: string): string {
  return id.charAt(0).toUpperCase() + id.slice(1).replace('-', ' ');
}

const specs = new Map<PartKind, PartSpec>();

/** The dimensions the solver reads off specs to say how large a part may be; the boxes are drawn by hand. */
const dimensions = { style: 'tower', length: 320, height: 130, thickness: 40 };

function plainSpec(kind: PartKind): PartSpec {
  const known =
    specs.get(kind) ?? ({ kind, maker: 'Test', model: 'Drawn', ...dimensions } as unknown as PartSpec);
  specs.set(kind, known);
  return known;
}
