/**
 * The machine as the air sees it: every box as a range along the axes of the enclosure (its own frame, mm), what
 * blocks and what lets through. Boxes at an angle are taken by the range that holds them.
 */
import type { Element } from '../../parts/body';
import { interiorOf } from '../../parts/enclosure/layout';
import type { EnclosureSpec } from '../../parts/enclosure/spec';
import type { PlacedPart, Scene, SceneBox } from '../../plan/scene';
import { type Bounds, boundsOfBox, transformBox } from '../../space/oriented-box';
import { compose, invert, type RigidTransform, transformDirection } from '../../space/transform';
import type { Vector3 } from '../../space/vector';

export interface LocalBox extends Bounds {
  readonly part: PlacedPart;
  readonly name: string;
  readonly element: Element;
  readonly solid: boolean;
  readonly mesh: boolean;
}

export interface MachineSpace {
  readonly enclosure: PlacedPart;
  readonly spec: EnclosureSpec;
  readonly interior: Bounds;
  /** Unit vector upwards, enclosure frame: the machine may lie on its side. */
  readonly up: Vector3;
  readonly boxes: readonly LocalBox[];
  /** What air cannot pass. */
  readonly obstacles: readonly LocalBox[];
  /** Grilles, vents and mesh panels. */
  readonly screens: readonly LocalBox[];
}

/** Elements that air goes through, or that are handled as devices. */
const passable: ReadonlySet<Element> = new Set<Element>([
  'vent',
  'fan',
  'fin stack',
  'radiator core',
  'tube',
  'foot',
  'handle',
  'component zone',
]);

export function machineSpaceOf(scene: Scene): MachineSpace | undefined {
  const enclosure = scene.parts.find((part) => part.kind === 'enclosure');
  if (enclosure?.spec.kind !== 'enclosure') return undefined;
  const toLocal = invert(enclosure.pose);
  const boxes = scene.boxes.map((box) => localBox(scene, box, toLocal));
  return {
    enclosure,
    spec: enclosure.spec,
    interior: interiorOf(enclosure.spec),
    up: transformDirection(toLocal, [0, 1, 0]),
    boxes,
    obstacles: boxes.filter((box) => box.solid && !box.mesh && !passable.has(box.element)),
    screens: boxes.filter((box) => box.solid && (box.element === 'vent' || box.mesh)),
  };
}

function localBox(scene: Scene, { part, body, box }: SceneBox, toLocal: RigidTransform): LocalBox {
  const owner = scene.parts[part];
  if (owner === undefined) throw new RangeError('a box of the scene belongs to no part');
  return {
    ...boundsOfBox(transformBox(toLocal, box)),
    part: owner,
    name: body.name,
    element: body.element,
    solid: body.role === 'solid',
    mesh: body.material === 'mesh' && owner.kind === 'enclosure',
  };
}

/** A direction of a part's own frame, in the enclosure frame, snapped to the nearest axis. */
export function axisOf(space: MachineSpace, part: PlacedPart, direction: Vector3): Vector3 {
  const turned = transformDirection(compose(invert(space.enclosure.pose), part.pose), direction);
  const axis = mainAxis(turned);
  const sign = turned[axis] < 0 ? -1 : 1;
  return [axis === 0 ? sign : 0, axis === 1 ? sign : 0, axis === 2 ? sign : 0];
}

export function mainAxis(direction: Vector3): 0 | 1 | 2 {
  const [x, y, z] = [Math.abs(direction[0]), Math.abs(direction[1]), Math.abs(direction[2])];
  if (x >= y && x >= z) return 0;
  return y >= z ? 1 : 2;
}

export function middleOf({ min, max }: Bounds): Vector3 {
  return [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2];
}

export function isInside({ min, max }: Bounds, point: Vector3): boolean {
  return point.every((value, axis) => value >= (min[axis] ?? 0) && value <= (max[axis] ?? 0));
}

/** The smallest range that holds all; undefined for none. */
export function rangeOfAll(ranges: readonly Bounds[]): Bounds | undefined {
  const [first, ...rest] = ranges;
  if (first === undefined) return undefined;
  return rest.reduce(
    (all, one): Bounds => ({
      min: [
        Math.min(all.min[0], one.min[0]),
        Math.min(all.min[1], one.min[1]),
        Math.min(all.min[2], one.min[2]),
      ],
      max: [
        Math.max(all.max[0], one.max[0]),
        Math.max(all.max[1], one.max[1]),
        Math.max(all.max[2], one.max[2]),
      ],
    }),
    first,
  );
}

/** Height of a point along the upward direction, m. */
export function heightOf(space: MachineSpace, point: Vector3): number {
  return (space.up[0] * point[0] + space.up[1] * point[1] + space.up[2] * point[2]) / 1000;
}
