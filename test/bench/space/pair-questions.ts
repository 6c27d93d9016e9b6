import * as rapier from '@dimforge/rapier3d-compat';
import { Box as CannonBox, type ConvexPolyhedron, Quaternion, Vec3 } from 'cannon-es';
import { Matrix3, Vector3 as ThreeVector } from 'three';
import { OBB } from 'three/addons/math/OBB.js';
import type { OrientedBox } from '../../../geometry/space/oriented-box';
import { overlapVolumePacked } from '../../../geometry/space/overlap-volume';
import { PackedBoxes } from '../../../geometry/space/packed-boxes';
import { createSeparationResult, separatePacked, signedDistance } from '../../../geometry/space/separation';
import { loadManifold } from '../../oracles/space/oracles';
import { quaternionOf } from '../../oracles/space/quaternion';
import { type BoxPair, randomPair, seededRandom } from '../../space/random-boxes';
import { type Contestant, type Timing, timeInTurns } from '../measure';
import { type BenchOptions, printTable, short } from '../table';

const PAIRS = 100_000;
const ROUNDS = 7;
/** Pairs for manifold-3d, which takes about a tenth of a millisecond each. */
const MANIFOLD_PAIRS = 5000;

/** Signed distance and overlap volume of 100,000 pairs in any orientation. Shapes are made beforehand for all. */
export async function benchPairQuestions(options: BenchOptions): Promise<void> {
  const pairs = genericPairs(PAIRS);
  const packed = PackedBoxes.from(pairs.flatMap(({ a, b }) => [a, b]));
  const distances = timeInTurns(
    [
      kernelDistance(packed),
      kernelWitness(packed),
      await rapierDistance(pairs),
      cannonDepths(pairs),
      threeSigns(pairs),
    ],
    ROUNDS,
  );
  printPairs(`W3: signed distance of ${PAIRS} random oriented pairs`, distances, 'counted', options);
  const volumes = timeInTurns([kernelVolume(packed), await manifoldVolume(pairs)], 3);
  printPairs(`W3: overlap volume of ${PAIRS} random oriented pairs`, volumes, 'overlapping', options);
  const together = pairs.filter((_, index) => signedDistance(packed, 2 * index, 2 * index + 1) < 0);
  const packedTogether = PackedBoxes.from(together.flatMap(({ a, b }) => [a, b]));
  const busy = timeInTurns([kernelVolume(packedTogether), await manifoldVolume(together)], 3);
  printPairs(
    `W3: overlap volume of the ${together.length} of them that overlap`,
    busy,
    'overlapping',
    options,
  );
}

function genericPairs(count: number): BoxPair[] {
  const random = seededRandom(7);
  return Array.from({ length: count }, () => randomPair(random, 0));
}

function printPairs(title: string, timings: readonly Timing[], counted: string, options: BenchOptions): void {
  const kernel = timings[0]?.median ?? Number.NaN;
  printTable(
    title,
    [
      ['contestant', 'pairs/s', 'x kernel time', counted],
      ...timings.map((t) => [t.name, short(1000 / t.median), short(t.median / kernel), String(t.answers)]),
    ],
    options,
  );
}

function kernelDistance(packed: PackedBoxes): Contestant {
  const run = () => {
    let overlapping = 0;
    for (let i = 0; i < packed.count; i += 2) if (signedDistance(packed, i, i + 1) < 0) overlapping++;
    return overlapping;
  };
  return { name: 'kernel', run, units: packed.count / 2 };
}

function kernelWitness(packed: PackedBoxes): Contestant {
  const out = createSeparationResult();
  const run = () => {
    let overlapping = 0;
    for (let i = 0; i < packed.count; i += 2) if (separatePacked(packed, i, i + 1, out) < 0) overlapping++;
    return overlapping;
  };
  return { name: 'kernel with direction and witness points', run, units: packed.count / 2 };
}

async function rapierDistance(pairs: readonly BoxPair[]): Promise<Contestant> {
  await rapier.init();
  const world = new rapier.World({ x: 0, y: 0, z: 0 });
  const colliderOf = (box: OrientedBox) => {
    const [x, y, z, w] = quaternionOf(box.rotation);
    const shape = rapier.ColliderDesc.cuboid(...box.half);
    return world.createCollider(shape.setTranslation(...box.centre).setRotation({ x, y, z, w }));
  };
  const colliders = pairs.map(({ a, b }) => [colliderOf(a), colliderOf(b)] as const);
  const run = () => {
    let overlapping = 0;
    for (const [a, b] of colliders) {
      const contact = a.contactCollider(b, 1000);
      if (contact !== null && contact.distance < 0) overlapping++;
    }
    return overlapping;
  };
  return { name: 'rapier contactCollider', run, units: pairs.length };
}

function cannonDepths(pairs: readonly BoxPair[]): Contestant {
  type Placed = readonly [ConvexPolyhedron, Vec3, Quaternion];
  const place = (box: OrientedBox): Placed => [
    new CannonBox(new Vec3(...box.half)).convexPolyhedronRepresentation,
    new Vec3(...box.centre),
    new Quaternion(...quaternionOf(box.rotation)),
  ];
  const hulls = pairs.map(({ a, b }) => [place(a), place(b)] as const);
  const axis = new Vec3();
  const run = () => {
    let overlapping = 0;
    for (const [[a, pa, qa], [b, pb, qb]] of hulls) {
      if (a.findSeparatingAxis(b, pa, qa, pb, qb, axis) && a.testSepAxis(axis, b, pa, qa, pb, qb) !== false)
        overlapping++;
    }
    return overlapping;
  };
  return { name: 'cannon-es (depth only, no distance)', run, units: pairs.length };
}

function threeSigns(pairs: readonly BoxPair[]): Contestant {
  const boxOf = ({ centre, half, rotation }: OrientedBox) =>
    new OBB(new ThreeVector(...centre), new ThreeVector(...half), new Matrix3().set(...rotation));
  const boxes = pairs.map(({ a, b }) => [boxOf(a), boxOf(b)] as const);
  const run = () => {
    let overlapping = 0;
    for (const [a, b] of boxes) if (a.intersectsOBB(b)) overlapping++;
    return overlapping;
  };
  return { name: 'three OBB.intersectsOBB (sign only)', run, units: pairs.length };
}

function kernelVolume(packed: PackedBoxes): Contestant {
  const run = () => {
    let overlapping = 0;
    for (let i = 0; i < packed.count; i += 2) if (overlapVolumePacked(packed, i, i + 1) > 0) overlapping++;
    return overlapping;
  };
  return { name: 'kernel', run, units: packed.count / 2 };
}

async function manifoldVolume(pairs: readonly BoxPair[]): Promise<Contestant> {
  const manifold = await loadManifold();
  const asked = pairs.slice(0, MANIFOLD_PAIRS);
  const run = () => asked.filter(({ a, b }) => manifold.volume(a, b) > 0).length;
  return { name: `manifold-3d (first ${asked.length} pairs)`, run, units: asked.length };
}
