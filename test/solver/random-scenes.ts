import fc from 'fast-check';
import type { BodyBox, Element, Role } from '../../geometry/parts/body';
import type { PartKind } from '../../geometry/parts/part-spec';
import { type Rotation, rotationFromDegrees } from '../../geometry/space/rotation';
import type { Vector3 } from '../../geometry/space/vector';
import { type DrawnPart, drawBox } from './scene-of-boxes';

/** What parts of each kind are drawn with: enough to meet every rule. */
const elements: Readonly<Partial<Record<PartKind, readonly Element[]>>> = {
  enclosure: ['side panel', 'front wall', 'top wall', 'floor', 'cage', 'tray', 'vent'],
  board: ['circuit board', 'regulator sink', 'rear connectors', 'm2 sink', 'expansion slot'],
  cooler: ['fin stack', 'fan', 'cooler base'],
  memory: ['memory module'],
  drive: ['drive', 'drive sink'],
  card: ['card shroud', 'card board', 'card bracket', 'card backplate'],
  supply: ['supply case'],
  fan: ['fan'],
  radiator: ['radiator core', 'radiator tank'],
};

const solidThenSpace: readonly Role[] = [
  'solid',
  'solid',
  'solid',
  'plug space',
  'bend space',
  'breathing space',
  'hand space',
];

/** Whole millimetres make parts touch and line up often, which is where mistakes hide. */
const millimetres = (min: number, max: number) => fc.integer({ min, max });

function boxOf(kind: PartKind, index: number): fc.Arbitrary<BodyBox> {
  return fc
    .record({
      at: fc.tuple(millimetres(-40, 40), millimetres(-40, 40), millimetres(-40, 40)),
      size: fc.tuple(millimetres(1, 60), millimetres(1, 60), millimetres(1, 60)),
      role: fc.constantFrom(...solidThenSpace),
      element: fc.constantFrom(...(elements[kind] ?? ['drive'])),
    })
    .map(({ at, size, role, element }) => {
      const to: Vector3 = [at[0] + size[0], at[1] + size[1], at[2] + size[2]];
      const name = `${role === 'solid' ? element : role} ${index}`;
      return drawBox(name, role === 'solid' ? element : role === 'plug space' ? 'plug' : element, at, to, {
        role,
      });
    });
}

/** Quarter turns keep boxes along the axes; the others make every pair a general one. */
export const someRotation: fc.Arbitrary<Rotation> = fc
  .oneof(
    { weight: 3, arbitrary: fc.tuple(quarter(), quarter(), quarter()) },
    { weight: 1, arbitrary: fc.tuple(millimetres(-180, 180), millimetres(-90, 90), millimetres(-180, 180)) },
  )
  .map((degrees) => rotationFromDegrees(degrees));

function quarter(): fc.Arbitrary<number> {
  return fc.constantFrom(0, 90, 180, 270);
}

const kinds: readonly PartKind[] = [
  'enclosure',
  'board',
  'cooler',
  'memory',
  'drive',
  'card',
  'supply',
  'fan',
  'radiator',
];

function bodyOf(kind: PartKind): fc.Arbitrary<readonly BodyBox[]> {
  return fc
    .tuple(...[0, 1, 2, 3].map((index) => boxOf(kind, index)))
    .chain((boxes) => fc.integer({ min: 1, max: boxes.length }).map((count) => boxes.slice(0, count)));
}

const onePart = fc.constantFrom(...kinds).chain((kind) =>
  fc.record({
    kind: fc.constant(kind),
    boxes: bodyOf(kind),
    rotation: someRotation,
    at: fc.tuple(millimetres(-70, 70), millimetres(-70, 70), millimetres(-70, 70)),
  }),
);

/** Three to eight parts; a plug or bend space belongs to a feature in half the parts, so that both stories are told. */
export const someParts: fc.Arbitrary<readonly DrawnPart[]> = fc
  .array(onePart, { minLength: 3, maxLength: 8, size: 'max' })
  .map((parts) =>
    parts.map(({ kind, boxes, rotation, at }, index): DrawnPart => {
      const spaces = boxes.filter((body) => body.role === 'plug space' || body.role === 'hand space');
      return {
        id: `${kind}-${index + 1}`,
        kind,
        boxes,
        pose: { rotation, translation: at },
        features:
          index % 2 === 0
            ? spaces.map((body, number) => ({
                id: `feature ${number}`,
                kind: number % 2 === 0 ? 'header' : 'power socket',
                label: `Header ${number}`,
                use: body.role === 'plug space' ? [body.name] : [],
                approach: body.role === 'hand space' ? [body.name] : [],
                required: number === 0,
              }))
            : [],
      };
    }),
  );

/** One edit of a scene: which part, and what happens to it. */
export type SceneEdit =
  | { readonly kind: 'move'; readonly part: number; readonly by: Vector3 }
  | { readonly kind: 'turn'; readonly part: number; readonly rotation: Rotation }
  | { readonly kind: 'reshape'; readonly part: number; readonly grow: number }
  | { readonly kind: 'remove'; readonly part: number }
  | { readonly kind: 'want'; readonly gap: number };

const part = fc.nat(6);
export const someEdits: fc.Arbitrary<readonly SceneEdit[]> = fc.array(
  fc.oneof(
    fc.record({
      kind: fc.constant('move' as const),
      part,
      by: fc.tuple(millimetres(-30, 30), millimetres(-30, 30), millimetres(-30, 30)),
    }),
    fc.record({ kind: fc.constant('turn' as const), part, rotation: someRotation }),
    fc.record({ kind: fc.constant('reshape' as const), part, grow: millimetres(1, 20) }),
    fc.record({ kind: fc.constant('remove' as const), part }),
    fc.record({ kind: fc.constant('want' as const), gap: millimetres(0, 40) }),
  ),
  { minLength: 1, maxLength: 6 },
);

/** The parts after the edit; those it does not name stay the same objects. */
export function applyEdit(parts: readonly DrawnPart[], edit: SceneEdit): readonly DrawnPart[] {
  if (edit.kind === 'want') return parts;
  const index = edit.part % Math.max(1, parts.length);
  if (edit.kind === 'remove') return parts.length > 1 ? parts.toSpliced(index, 1) : parts;
  return parts.map((one, place) => {
    const pose = one.pose;
    if (place !== index || !pose) return one;
    if (edit.kind === 'reshape') return grown(one, edit.grow);
    if (edit.kind === 'turn') return { ...one, pose: { ...pose, rotation: edit.rotation } };
    const [x, y, z] = pose.translation;
    const translation: Vector3 = [x + edit.by[0], y + edit.by[1], z + edit.by[2]];
    return { ...one, pose: { ...pose, translation } };
  });
}

/** The part with its first box longer by that much on all sides. */
export function grown(one: DrawnPart, by: number): DrawnPart {
  const boxes = one.boxes.map((body, index) => {
    if (index > 0) return body;
    const [x, y, z] = body.box.half;
    const half: Vector3 = [x + by, y + by, z + by];
    return { ...body, box: { ...body.box, half } };
  });
  return { ...one, boxes };
}
