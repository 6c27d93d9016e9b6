import * as rapier from '@dimforge/rapier3d-compat';
import { BodySet } from '../../../geometry/space/body-set';
import { createSixWayTravel, sixWayTravel } from '../../../geometry/space/body-travel';
import { createTravelInterval, travelIntervalPacked } from '../../../geometry/space/travel';
import { type Contestant, timeInTurns } from '../measure';
import { type BenchOptions, printTable, short } from '../table';
import { mountedEnclosure } from './layouts';
import { buildRapierWorld } from './rapier-world';

const LIMIT_MM = 500;
const ROUNDS = 15;
/** Travel further off than this counts as wrong: far above single precision. */
const WRONG_MM = 0.05;

/** Free travel of each of 60 parts in six directions: a table of 360 numbers. */
export async function benchSixWayTravel(options: BenchOptions): Promise<void> {
  const parts = mountedEnclosure(4);
  const bodies = new BodySet(parts);
  const tables = new Map<string, Float64Array>();
  const contestant = (name: string, fill: (table: Float64Array) => void, rounds?: number): Contestant => {
    const table = new Float64Array(6 * parts.length);
    tables.set(name, table);
    const run = () => {
      fill(table);
      return table.filter((distance) => distance < LIMIT_MM).length;
    };
    return { name, run, ...(rounds === undefined ? {} : { rounds }) };
  };
  const timings = timeInTurns(
    [
      contestant('kernel', (table) => kernelTable(bodies, table)),
      contestant('swept ranges + exact interval, every pair', (table) => everyPairTable(bodies, table)),
      contestant('rapier castShape', await rapierTable(parts, 0, false), 5),
      contestant('rapier castShape, stop at penetration', await rapierTable(parts, 0, true), 5),
      contestant('rapier castShape, shapes shrunk by 0.01 mm', await rapierTable(parts, 0.01, false), 5),
    ],
    ROUNDS,
  );
  const kernel = timings[0]?.median ?? Number.NaN;
  const truth = tables.get('kernel') ?? new Float64Array(0);
  const wrong = (name: string) =>
    (tables.get(name) ?? truth).filter((distance, index) => !(Math.abs(distance - truth[index]!) <= WRONG_MM))
      .length;
  printTable(
    'W4: free travel of 60 parts in six directions (360 casts, parts mounted flush)',
    [
      ['contestant', 'ms/table', 'x kernel', `off by more than ${WRONG_MM} mm`],
      ...timings.map((t) => [t.name, short(t.median), short(t.median / kernel), String(wrong(t.name))]),
    ],
    options,
  );
}

function kernelTable(bodies: BodySet, table: Float64Array): void {
  const out = createSixWayTravel();
  for (let body = 0; body < bodies.count; body++) {
    sixWayTravel(bodies, body, LIMIT_MM, out);
    table.set(out.distance, 6 * body);
  }
}

/** The plain way: each direction by itself, each pair of boxes behind a test of the swept range. */
function everyPairTable(bodies: BodySet, table: Float64Array): void {
  const { packed, starts } = bodies;
  const interval = createTravelInterval();
  for (let slot = 0; slot < table.length; slot++) {
    const body = Math.floor(slot / 6);
    const axis = Math.floor((slot % 6) / 2);
    const sense = slot % 2 === 0 ? -1 : 1;
    let free = LIMIT_MM;
    for (let i = starts[body]!; i < starts[body + 1]!; i++) {
      for (let j = 0; j < packed.count; j++) {
        if (j >= starts[body]! && j < starts[body + 1]!) continue;
        if (!inLane(packed.bounds, i, j, axis)) continue;
        const [x, y, z] = [axis === 0 ? sense : 0, axis === 1 ? sense : 0, axis === 2 ? sense : 0];
        if (!travelIntervalPacked(packed, i, j, x, y, z, interval) || !interval.ahead) continue;
        free = Math.min(free, Math.max(0, interval.enter));
      }
    }
    table[slot] = free;
  }
}

function inLane(bounds: Float64Array, i: number, j: number, axis: number): boolean {
  for (let k = 0; k < 3; k++) {
    if (k === axis) continue;
    if (bounds[6 * j + k]! > bounds[6 * i + 3 + k]! || bounds[6 * i + k]! > bounds[6 * j + 3 + k]!)
      return false;
  }
  return true;
}

async function rapierTable(
  parts: ReturnType<typeof mountedEnclosure>,
  shrink: number,
  stopAtPenetration: boolean,
): Promise<(table: Float64Array) => void> {
  const { world, bodies, colliders } = await buildRapierWorld(parts);
  const shapes = parts.map((boxes) =>
    boxes.map(({ half }) => new rapier.Cuboid(half[0] - shrink, half[1] - shrink, half[2] - shrink)),
  );
  return (table) => {
    for (let slot = 0; slot < table.length; slot++) {
      const body = Math.floor(slot / 6);
      const velocity = new rapier.Vector3(0, 0, 0);
      const axis = (['x', 'y', 'z'] as const)[Math.floor((slot % 6) / 2)] ?? 'x';
      velocity[axis] = slot % 2 === 0 ? -1 : 1;
      let free = LIMIT_MM;
      colliders[body]!.forEach((collider, index) => {
        const shape = shapes[body]![index]!;
        const hit = world.castShape(
          collider.translation(),
          collider.rotation(),
          velocity,
          shape,
          0,
          free,
          stopAtPenetration,
          undefined,
          undefined,
          undefined,
          bodies[body],
        );
        if (hit !== null) free = Math.min(free, Math.max(0, hit.time_of_impact - shrink));
      });
      table[slot] = free;
    }
  };
}
