/** How a machine stands and hangs: loads on its feet, tipping, hanging from a handle. World frame, mm, N, degrees. */
import type { Scene } from '../../plan/scene';
import { type Bounds, boundsOfBox, boundsOfBoxes } from '../../space/oriented-box';
import type { Vector3 } from '../../space/vector';

export interface Stand {
  /** Where it touches the ground. */
  readonly contacts: readonly { readonly name: string; readonly x: number; readonly z: number }[];
  /** Outer edges of what it stands on. */
  readonly edges: {
    readonly minX: number;
    readonly maxX: number;
    readonly minZ: number;
    readonly maxZ: number;
  };
  readonly ground: number;
  readonly top: number;
}

/** What the enclosure stands on: its feet, else the corners of its floor. Undefined without an enclosure. */
export function standOf(scene: Scene): Stand | undefined {
  const index = scene.parts.findIndex((part) => part.kind === 'enclosure');
  const solids = scene.boxes.filter((box) => box.part === index && box.body.role === 'solid');
  const all = boundsOfBoxes(solids.map(({ box }) => box));
  if (!all) return undefined;
  const feet = solids
    .filter(({ body }) => body.element === 'foot')
    .map(({ body, box }) => ({ name: body.name, bounds: boundsOfBox(box) }))
    .filter(({ bounds }) => bounds.min[1] - all.min[1] < 1);
  const contacts =
    feet.length >= 3
      ? feet.map(({ name, bounds }) => ({
          name,
          x: (bounds.min[0] + bounds.max[0]) / 2,
          z: (bounds.min[2] + bounds.max[2]) / 2,
        }))
      : cornersOf(all);
  const standing = feet.length >= 3 ? joined(feet.map(({ bounds }) => bounds)) : all;
  return {
    contacts,
    edges: { minX: standing.min[0], maxX: standing.max[0], minZ: standing.min[2], maxZ: standing.max[2] },
    ground: all.min[1],
    top: all.max[1],
  };
}

function cornersOf({ min, max }: Bounds) {
  return [min[0], max[0]].flatMap((x, i) =>
    [min[2], max[2]].map((z, j) => ({ name: `corner ${2 * i + j + 1}`, x, z })),
  );
}

function joined(ranges: readonly Bounds[]): Bounds {
  const low = (axis: 0 | 1 | 2) => Math.min(...ranges.map(({ min }) => min[axis]));
  const high = (axis: 0 | 1 | 2) => Math.max(...ranges.map(({ max }) => max[axis]));
  return { min: [low(0), low(1), low(2)], max: [high(0), high(1), high(2)] };
}

/**
 * Load on each contact of a stiff body on feet of equal give: the plane that balances force and both moments. With
 * three contacts it is the only answer; with four the one of least effort.
 */
export function footLoads(stand: Stand, centre: Vector3, weight: number): readonly number[] {
  const { contacts } = stand;
  const n = contacts.length;
  const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / n;
  const [mx, mz] = [mean(contacts.map(({ x }) => x)), mean(contacts.map(({ z }) => z))];
  let [xx, zz, xz] = [0, 0, 0];
  for (const { x, z } of contacts) {
    xx += (x - mx) ** 2;
    zz += (z - mz) ** 2;
    xz += (x - mx) * (z - mz);
  }
  const determinant = xx * zz - xz * xz;
  const [dx, dz] = [centre[0] - mx, centre[2] - mz];
  const a = determinant > 0 ? (dx * zz - dz * xz) / determinant : 0;
  const b = determinant > 0 ? (dz * xx - dx * xz) / determinant : 0;
  return contacts.map(({ x, z }) => weight * (1 / n + a * (x - mx) + b * (z - mz)));
}

export interface Tipping {
  /** Least angle at which it falls over, and over which edge. */
  readonly degrees: number;
  readonly over: 'rear' | 'front' | 'tray side' | 'panel side';
  /** Push at the top edge that tips it, N. */
  readonly push: number;
}

export function tippingOf({ edges, ground, top }: Stand, centre: Vector3, weight: number): Tipping {
  const height = centre[1] - ground;
  const arms = [
    { over: 'rear', arm: centre[0] - edges.minX },
    { over: 'front', arm: edges.maxX - centre[0] },
    { over: 'tray side', arm: centre[2] - edges.minZ },
    { over: 'panel side', arm: edges.maxZ - centre[2] },
  ] as const;
  const weakest = arms.reduce((least, one) => (one.arm < least.arm ? one : least));
  return {
    over: weakest.over,
    degrees: degrees(Math.atan2(weakest.arm, height)),
    push: (weight * weakest.arm) / (top - ground),
  };
}

/** Tilt of a body hung from a point: its centre settles under it. Degrees. */
export function hangAngle(pivot: Vector3, centre: Vector3): number {
  const drop = pivot[1] - centre[1];
  return degrees(Math.atan2(Math.hypot(pivot[0] - centre[0], pivot[2] - centre[2]), drop));
}

/** Underside of the handle's bar, in its middle; undefined without a handle. */
export function handlePivot(scene: Scene): Vector3 | undefined {
  const bar = scene.boxes.find(({ body }) => body.element === 'handle' && body.name === 'handle bar');
  if (!bar) return undefined;
  const { min, max } = boundsOfBox(bar.box);
  return [(min[0] + max[0]) / 2, min[1], (min[2] + max[2]) / 2];
}

function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}
