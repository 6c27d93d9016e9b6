import * as rapier from '@dimforge/rapier3d-compat';
import { RBush3D } from 'rbush-3d';
import { visitNearPairs } from '../../../geometry/space/body-pairs';
import { BodySet } from '../../../geometry/space/body-set';
import type { OrientedBox } from '../../../geometry/space/oriented-box';
import { BOUNDS_STRIDE } from '../../../geometry/space/packed-boxes';
import { signedDistance } from '../../../geometry/space/separation';
import { type Contestant, timeInTurns } from '../measure';
import { type BenchOptions, printTable, short } from '../table';
import { crowdedEnclosure, randomMoves } from './layouts';
import { PlainBoxes } from './naive-loops';
import { buildRapierWorld, type RapierWorld } from './rapier-world';

const LIMIT_MM = 30;
const MOVES = 600;
const ROUNDS = 9;
const PARTS = 60;

/** Each round makes the moves and, the next one, takes them back, so that every round does the same work. */
type Move = (body: number, x: number, y: number, z: number, visit: (distance: number) => void) => void;

/**
 * One part of 60 moves by 1 mm: all overlaps with depth and all gaps up to 30 mm between it and the others, in an
 * enclosure with some near pairs and in one with many.
 */
export async function benchOneMove(options: BenchOptions): Promise<void> {
  await benchLayout('some near pairs', crowdedEnclosure(3, 0.2), options);
  await benchLayout('many near pairs', crowdedEnclosure(3, 0.8), options);
}

async function benchLayout(density: string, parts: OrientedBox[][], options: BenchOptions): Promise<void> {
  const timings = timeInTurns(
    [
      contestant('kernel', kernelMove(new BodySet(parts))),
      contestant('naive axis-aligned loop (turned boxes by their bounds)', plainMove(parts)),
      contestant('exact test on every pair, behind box bounds', everyPairMove(new BodySet(parts))),
      contestant('rbush-3d + exact test', treeMove(new BodySet(parts))),
      contestant('rapier, query tree left stale', rapierMove(await buildRapierWorld(parts), false)),
      contestant(
        'rapier, contacts behind one range a part',
        rapierBehindRanges(await buildRapierWorld(parts), parts),
      ),
      contestant('rapier with world.step', rapierMove(await buildRapierWorld(parts), true)),
    ],
    ROUNDS,
  );
  const kernel = timings[0]?.median ?? Number.NaN;
  printTable(
    `W1: one of 60 parts (430 boxes) moved 1 mm, every overlap and every gap up to ${LIMIT_MM} mm, ${density}`,
    [
      ['contestant', 'us/move', 'x kernel', 'answers/move'],
      ...timings.map((t) => [
        t.name,
        short(t.median * 1000),
        short(t.median / kernel),
        short(t.answers / MOVES),
      ]),
    ],
    options,
  );
}

function contestant(name: string, move: Move): Contestant {
  const moves = randomMoves(5, PARTS, MOVES);
  const back = [...moves].reverse();
  let sense = -1;
  const run = () => {
    let answers = 0;
    const count = () => {
      answers++;
    };
    sense = -sense;
    for (const { body, shift } of sense > 0 ? moves : back) {
      move(body, sense * shift[0], sense * shift[1], sense * shift[2], count);
    }
    return answers;
  };
  return { name, run, units: MOVES };
}

function kernelMove(bodies: BodySet): Move {
  return (body, x, y, z, visit) => {
    bodies.translateBody(body, x, y, z);
    visitNearPairs(bodies, body, LIMIT_MM, (_box, _otherBox, _otherBody, distance) => visit(distance));
  };
}

function plainMove(parts: OrientedBox[][]): Move {
  const { starts } = new BodySet(parts);
  const plain = new PlainBoxes(parts.flat());
  return (body, x, y, z, visit) => {
    plain.shift(starts[body]!, starts[body + 1]!, x, y, z);
    plain.near(starts[body]!, starts[body + 1]!, LIMIT_MM, visit);
  };
}

function everyPairMove(bodies: BodySet): Move {
  const { packed, starts } = bodies;
  return (body, x, y, z, visit) => {
    bodies.translateBody(body, x, y, z);
    for (let i = starts[body]!; i < starts[body + 1]!; i++) {
      for (let j = 0; j < packed.count; j++) {
        if (j >= starts[body]! && j < starts[body + 1]!) continue;
        if (isFar(packed.bounds, i, j)) continue;
        const distance = signedDistance(packed, i, j);
        if (distance <= LIMIT_MM) visit(distance);
      }
    }
  };
}

function isFar(bounds: Float64Array, i: number, j: number): boolean {
  for (let k = 0; k < 3; k++) {
    const a = 6 * i + k;
    const b = 6 * j + k;
    if (bounds[b]! - bounds[a + 3]! > LIMIT_MM || bounds[a]! - bounds[b + 3]! > LIMIT_MM) return true;
  }
  return false;
}

function treeMove(bodies: BodySet): Move {
  const { packed, starts } = bodies;
  const entryOf = (box: number, margin: number) => {
    const b = packed.bounds.subarray(box * BOUNDS_STRIDE, (box + 1) * BOUNDS_STRIDE);
    const [x0 = 0, y0 = 0, z0 = 0, x1 = 0, y1 = 0, z1 = 0] = b;
    return {
      minX: x0 - margin,
      minY: y0 - margin,
      minZ: z0 - margin,
      maxX: x1 + margin,
      maxY: y1 + margin,
      maxZ: z1 + margin,
      box,
    };
  };
  const entries = Array.from({ length: packed.count }, (_, box) => entryOf(box, 0));
  const tree = new RBush3D(16).load([...entries]);
  return (body, x, y, z, visit) => {
    for (let box = starts[body]!; box < starts[body + 1]!; box++) tree.remove(entries[box]);
    bodies.translateBody(body, x, y, z);
    for (let box = starts[body]!; box < starts[body + 1]!; box++) {
      entries[box] = entryOf(box, 0);
      tree.insert(entries[box]);
    }
    for (let box = starts[body]!; box < starts[body + 1]!; box++) {
      for (const { box: other } of tree.search(entryOf(box, LIMIT_MM))) {
        if (other >= starts[body]! && other < starts[body + 1]!) continue;
        const distance = signedDistance(packed, box, other);
        if (distance <= LIMIT_MM) visit(distance);
      }
    }
  };
}

function moveBody(world: RapierWorld, body: number, x: number, y: number, z: number): void {
  const rigid = world.bodies[body]!;
  const at = rigid.translation();
  rigid.setTranslation(new rapier.Vector3(at.x + x, at.y + y, at.z + z), false);
  world.world.propagateModifiedBodyPositionsToColliders();
}

/** Neighbours from rapier's tree, distances from its contacts. Stale is right here: only the part that asks has moved. */
function rapierMove(world: RapierWorld, step: boolean): Move {
  return (body, x, y, z, visit) => {
    moveBody(world, body, x, y, z);
    if (step) world.world.step();
    const own = world.bodies[body]!.handle;
    world.colliders[body]!.forEach((collider, index) => {
      const r = world.reach[body]![index]!;
      const reach = new rapier.Vector3(r.x + LIMIT_MM, r.y + LIMIT_MM, r.z + LIMIT_MM);
      world.world.collidersWithAabbIntersectingAabb(collider.translation(), reach, (other) => {
        if (other.parent()?.handle !== own) {
          const contact = collider.contactCollider(other, LIMIT_MM);
          if (contact !== null && contact.distance <= LIMIT_MM) visit(contact.distance);
        }
        return true;
      });
    });
  };
}

/** Only rapier's contact of two colliders, with the culling of this kernel in front of it. */
function rapierBehindRanges(world: RapierWorld, parts: OrientedBox[][]): Move {
  const bodies = new BodySet(parts);
  const colliders = world.colliders.flat();
  const { bounds, starts, packed } = bodies;
  return (body, x, y, z, visit) => {
    bodies.translateBody(body, x, y, z);
    moveBody(world, body, x, y, z);
    for (let other = 0; other < bodies.count; other++) {
      if (other === body || isFar(bounds, body, other)) continue;
      for (let i = starts[body]!; i < starts[body + 1]!; i++) {
        for (let j = starts[other]!; j < starts[other + 1]!; j++) {
          if (isFar(packed.bounds, i, j)) continue;
          const contact = colliders[i]!.contactCollider(colliders[j]!, LIMIT_MM);
          if (contact !== null && contact.distance <= LIMIT_MM) visit(contact.distance);
        }
      }
    }
  };
}
