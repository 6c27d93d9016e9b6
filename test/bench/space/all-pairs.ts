import * as rapier from '@dimforge/rapier3d-compat';
import { RBush3D } from 'rbush-3d';
import { Matrix4 } from 'three';
import { BVH } from 'three-mesh-bvh';
import { findOverlappingPairs } from '../../../geometry/space/broad-phase';
import type { OrientedBox } from '../../../geometry/space/oriented-box';
import { PackedBoxes } from '../../../geometry/space/packed-boxes';
import { interiorsOverlap } from '../../../geometry/space/separation';
import { type Contestant, timeInTurns } from '../measure';
import { type BenchOptions, printTable, short } from '../table';
import { scatteredBoxes } from './layouts';
import { plainGridPairs } from './naive-loops';
import { buildRapierWorld } from './rapier-world';

const COUNT = 100_000;
const ROUNDS = 9;

/** All overlapping pairs of 100,000 boxes from scratch: the index is built inside the measured time. */
export async function benchAllPairs(options: BenchOptions): Promise<void> {
  const boxes = scatteredBoxes(1, COUNT);
  const packed = PackedBoxes.from(boxes);
  const timings = timeInTurns(
    [
      { name: 'kernel', run: () => kernelPairs(packed) },
      { name: 'plain uniform grid + exact test', run: () => plainGridPairs(packed) },
      { name: 'three-mesh-bvh (tree against itself) + exact test', run: () => treeSelfPairs(packed) },
      { name: 'three-mesh-bvh (one query a box) + exact test', run: () => treeQueryPairs(packed) },
      { name: 'rbush-3d + exact test', run: () => rbushPairs(packed), rounds: 3 },
      await rapierPairs(boxes),
    ],
    ROUNDS,
  );
  const kernel = timings[0]?.median ?? Number.NaN;
  printTable(
    `W2: all overlapping pairs of ${COUNT} boxes from scratch`,
    [
      ['contestant', 'ms', 'x kernel', 'pairs', 'rounds'],
      ...timings.map((t) => [
        t.name,
        short(t.median),
        short(t.median / kernel),
        String(t.answers),
        String(t.rounds),
      ]),
    ],
    options,
  );
}

function kernelPairs(packed: PackedBoxes): number {
  let found = 0;
  findOverlappingPairs(packed, () => {
    found++;
  });
  return found;
}

/** What three-mesh-bvh lets a subclass define, which its type declarations leave out. */
interface OpenTree {
  primitiveBuffer: Uint32Array;
  primitiveBufferStride: number;
  init(options: { targetLeafSize: number }): void;
  bvhcast(other: OpenTree, matrix: Matrix4, callbacks: { intersectsRanges: RangesVisitor }): boolean;
}

type RangesVisitor = (offset1: number, count1: number, offset2: number, count2: number) => boolean;

const OpenBvh = BVH as unknown as new () => OpenTree & BVH;

/** A tree of three-mesh-bvh over boxes. */
class BoxTree extends OpenBvh {
  readonly packed: PackedBoxes;

  constructor(packed: PackedBoxes) {
    super();
    this.packed = packed;
    this.primitiveBuffer = Uint32Array.from({ length: packed.count }, (_, index) => index);
    this.primitiveBufferStride = 1;
    this.init({ targetLeafSize: 4 });
  }

  getRootRanges(): { offset: number; count: number }[] {
    return [{ offset: 0, count: this.packed.count }];
  }

  writePrimitiveBounds(index: number, target: Float32Array, at: number): void {
    const { bounds } = this.packed;
    const from = 6 * this.primitiveBuffer[index]!;
    for (let k = 0; k < 6; k++) target[at + k] = bounds[from + k]!;
  }
}

function treeSelfPairs(packed: PackedBoxes): number {
  const tree = new BoxTree(packed);
  const boxes = tree.primitiveBuffer;
  let found = 0;
  tree.bvhcast(tree, new Matrix4(), {
    intersectsRanges: (offset1, count1, offset2, count2) => {
      for (let p = offset1; p < offset1 + count1; p++) {
        for (let q = offset2; q < offset2 + count2; q++) {
          if (boxes[p]! < boxes[q]! && boundsOverlap(packed, boxes[p]!, boxes[q]!)) {
            if (interiorsOverlap(packed, boxes[p]!, boxes[q]!)) found++;
          }
        }
      }
      return false;
    },
  });
  return found;
}

function treeQueryPairs(packed: PackedBoxes): number {
  const tree = new BoxTree(packed);
  const boxes = tree.primitiveBuffer;
  const { bounds } = packed;
  let found = 0;
  for (let i = 0; i < packed.count; i++) {
    const a = 6 * i;
    tree.shapecast({
      intersectsBounds: ({ min, max }) =>
        min.x < bounds[a + 3]! &&
        max.x > bounds[a]! &&
        min.y < bounds[a + 4]! &&
        max.y > bounds[a + 1]! &&
        min.z < bounds[a + 5]! &&
        max.z > bounds[a + 2]!,
      intersectsRange: (offset, count) => {
        for (let q = offset; q < offset + count; q++) {
          const j = boxes[q]!;
          if (i < j && boundsOverlap(packed, i, j) && interiorsOverlap(packed, i, j)) found++;
        }
        return false;
      },
    });
  }
  return found;
}

function boundsOverlap(packed: PackedBoxes, i: number, j: number): boolean {
  const { bounds } = packed;
  const a = 6 * i;
  const b = 6 * j;
  return (
    bounds[b]! < bounds[a + 3]! &&
    bounds[b + 3]! > bounds[a]! &&
    bounds[b + 1]! < bounds[a + 4]! &&
    bounds[b + 4]! > bounds[a + 1]! &&
    bounds[b + 2]! < bounds[a + 5]! &&
    bounds[b + 5]! > bounds[a + 2]!
  );
}

function rbushPairs(packed: PackedBoxes): number {
  const { bounds } = packed;
  const entries = Array.from({ length: packed.count }, (_, box) => ({
    minX: bounds[6 * box]!,
    minY: bounds[6 * box + 1]!,
    minZ: bounds[6 * box + 2]!,
    maxX: bounds[6 * box + 3]!,
    maxY: bounds[6 * box + 4]!,
    maxZ: bounds[6 * box + 5]!,
    box,
  }));
  const tree = new RBush3D(16).load([...entries]);
  let found = 0;
  for (const entry of entries) {
    for (const { box } of tree.search(entry)) {
      if (box > entry.box && interiorsOverlap(packed, entry.box, box)) found++;
    }
  }
  return found;
}

/** One collider a box in a static world built beforehand (to its favour); one query and one exact test a box. */
async function rapierPairs(boxes: readonly OrientedBox[]): Promise<Contestant> {
  const { world, colliders, reach } = await buildRapierWorld(boxes.map((box) => [box]));
  const still = new rapier.Vector3(0, 0, 0);
  const run = () => {
    let found = 0;
    colliders.forEach(([collider], index) => {
      const half = reach[index]?.[0] ?? still;
      if (collider === undefined) return;
      world.collidersWithAabbIntersectingAabb(collider.translation(), half, (other) => {
        if (
          other.handle > collider.handle &&
          collider.intersectsShape(other.shape, other.translation(), other.rotation())
        ) {
          found++;
        }
        return true;
      });
    });
    return found;
  };
  return { name: 'rapier (world built beforehand, one query a box)', run, rounds: 3 };
}
