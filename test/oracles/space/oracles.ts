import * as rapier from '@dimforge/rapier3d-compat';
import { Box as CannonBox, type ConvexPolyhedron, Quaternion, Vec3 } from 'cannon-es';
import Module, { type Manifold, type ManifoldToplevel, type Mat4 } from 'manifold-3d';
import { Matrix3, Vector3 as ThreeVector } from 'three';
import { OBB } from 'three/addons/math/OBB.js';
import type { OrientedBox } from '../../../geometry/space/oriented-box';
import { quaternionOf } from './quaternion';

/*
 * What other libraries say about a pair of boxes. Lengths in mm, volumes in cubic mm. None of them shares a
 * line with the kernel: they get centre, half extents and orientation and nothing else.
 */

/** Volume of the overlap and, for separated boxes, the gap, from manifold-3d (float64 meshes). */
export interface ManifoldOracle {
  volume(a: OrientedBox, b: OrientedBox): number;
  gap(a: OrientedBox, b: OrientedBox): number;
}

/** Longer than any gap between the test boxes, mm. */
const SEARCH_LENGTH_MM = 1000;

export async function loadManifold(): Promise<ManifoldOracle> {
  const wasm = await Module();
  wasm.setup();
  const unit = wasm.Manifold.cube([1, 1, 1], true);
  const solid = (box: OrientedBox) => unit.transform(matrixOf(box));
  return {
    volume: (a, b) =>
      withBoth(wasm, solid(a), solid(b), (p, q) => {
        const common = p.intersect(q);
        const volume = common.volume();
        common.delete();
        return volume;
      }),
    gap: (a, b) => withBoth(wasm, solid(a), solid(b), (p, q) => p.minGap(q, SEARCH_LENGTH_MM)),
  };
}

function withBoth(
  _wasm: ManifoldToplevel,
  p: Manifold,
  q: Manifold,
  ask: (p: Manifold, q: Manifold) => number,
): number {
  const answer = ask(p, q);
  p.delete();
  q.delete();
  return answer;
}

/** Column-major matrix that takes the unit cube about the origin to the box. */
function matrixOf({ centre, half, rotation: r }: OrientedBox): Mat4 {
  const [x, y, z] = [2 * half[0], 2 * half[1], 2 * half[2]];
  return [
    r[0] * x,
    r[3] * x,
    r[6] * x,
    0,
    r[1] * y,
    r[4] * y,
    r[7] * y,
    0,
    r[2] * z,
    r[5] * z,
    r[8] * z,
    0,
    centre[0],
    centre[1],
    centre[2],
    1,
  ];
}

/** Penetration depth by cannon-es (separating axes in float64); undefined when it finds the boxes apart. */
export function cannonDepth(a: OrientedBox, b: OrientedBox): number | undefined {
  const [hullA, positionA, turnA] = cannonHull(a);
  const [hullB, positionB, turnB] = cannonHull(b);
  const axis = new Vec3();
  if (!hullA.findSeparatingAxis(hullB, positionA, turnA, positionB, turnB, axis)) return undefined;
  const depth = hullA.testSepAxis(axis, hullB, positionA, turnA, positionB, turnB);
  return depth === false ? undefined : depth;
}

function cannonHull(box: OrientedBox): readonly [ConvexPolyhedron, Vec3, Quaternion] {
  const hull = new CannonBox(new Vec3(...box.half)).convexPolyhedronRepresentation;
  return [hull, new Vec3(...box.centre), new Quaternion(...quaternionOf(box.rotation))];
}

/** Signed distance by rapier (float32); undefined when it gives no answer. */
export type RapierOracle = (a: OrientedBox, b: OrientedBox) => number | undefined;

export async function loadRapier(): Promise<RapierOracle> {
  await rapier.init();
  return (a, b) => {
    const [shapeA, positionA, turnA] = rapierShape(a);
    const [shapeB, positionB, turnB] = rapierShape(b);
    return shapeA.contactShape(positionA, turnA, shapeB, positionB, turnB, SEARCH_LENGTH_MM)?.distance;
  };
}

function rapierShape(box: OrientedBox): readonly [rapier.Cuboid, rapier.Vector3, rapier.Quaternion] {
  const [x, y, z, w] = quaternionOf(box.rotation);
  const position = new rapier.Vector3(...box.centre);
  return [new rapier.Cuboid(...box.half), position, new rapier.Quaternion(x, y, z, w)];
}

/** Whether three's OBB calls the boxes overlapping (touching included). */
export function threeOverlaps(a: OrientedBox, b: OrientedBox): boolean {
  return threeBox(a).intersectsOBB(threeBox(b));
}

function threeBox({ centre, half, rotation }: OrientedBox): OBB {
  return new OBB(new ThreeVector(...centre), new ThreeVector(...half), new Matrix3().set(...rotation));
}
