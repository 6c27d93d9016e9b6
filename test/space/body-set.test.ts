import { describe, expect, it } from 'vitest';
import { visitAllNearPairs, visitNearPairs } from '../../geometry/space/body-pairs';
import { BodySet } from '../../geometry/space/body-set';
import {
  createBodyTravel,
  createSixWayTravel,
  sixWayTravel,
  travelOfBody,
} from '../../geometry/space/body-travel';
import { FACE_NAMES } from '../../geometry/space/face-names';
import { type OrientedBox, translateBox } from '../../geometry/space/oriented-box';
import { separateBoxes } from '../../geometry/space/separation';
import { freeTravel } from '../../geometry/space/travel';
import type { Vector3 } from '../../geometry/space/vector';
import { below, between, randomHalf, randomPoint, randomRotation, seededRandom } from './random-boxes';

const LIMIT_MM = 30;
const DIRECTIONS: readonly Vector3[] = [
  [-1, 0, 0],
  [1, 0, 0],
  [0, -1, 0],
  [0, 1, 0],
  [0, 0, -1],
  [0, 0, 1],
];

/** Bodies of one to five boxes, a third of the boxes turned, some bodies without boxes, on a half-millimetre grid. */
function randomBodies(seed: number): OrientedBox[][] {
  const random = seededRandom(seed);
  return Array.from({ length: 25 }, () => {
    const centre = randomPoint(random, 90);
    return Array.from({ length: below(random, 6) }, (): OrientedBox => {
      const [x, y, z] = randomPoint(random, 20);
      const turned = below(random, 3) === 0;
      const round = (value: number) => Math.round(2 * value) / 2;
      const at: Vector3 = [round(centre[0] + x), round(centre[1] + y), round(centre[2] + z)];
      const [p, q, r] = randomHalf(random);
      const half: Vector3 = [round(p / 3) + 0.5, round(q / 3) + 0.5, round(r / 3) + 0.5];
      return { centre: at, half, rotation: turned ? randomRotation(random) : [1, 0, 0, 0, 1, 0, 0, 0, 1] };
    });
  });
}

function nearPairs(bodies: BodySet, body: number): string[] {
  const found: string[] = [];
  visitNearPairs(bodies, body, LIMIT_MM, (box, otherBox, otherBody, distance) => {
    found.push(`${box} ${otherBody}/${otherBox} ${distance.toFixed(9)}`);
  });
  return found.sort();
}

/** The same by the plain distance of every pair. */
function nearPairsByEveryPair(parts: readonly (readonly OrientedBox[])[], body: number): string[] {
  const { starts } = new BodySet(parts);
  const found: string[] = [];
  parts[body]?.forEach((a, i) => {
    parts.forEach((boxes, other) => {
      if (other === body) return;
      boxes.forEach((b, j) => {
        const { distance } = separateBoxes(a, b);
        if (distance > LIMIT_MM) return;
        found.push(`${(starts[body] ?? 0) + i} ${other}/${(starts[other] ?? 0) + j} ${distance.toFixed(9)}`);
      });
    });
  });
  return found.sort();
}

describe('near pairs of one body', () => {
  it('are those of the test of every pair, for 25 bodies, seed 20265', () => {
    const parts = randomBodies(20265);
    const bodies = new BodySet(parts);
    let total = 0;
    for (let body = 0; body < bodies.count; body++) {
      const found = nearPairs(bodies, body);
      expect(found).toEqual(nearPairsByEveryPair(parts, body));
      total += found.length;
    }
    expect(total).toBeGreaterThan(100);
    let once = 0;
    visitAllNearPairs(bodies, LIMIT_MM, () => {
      once++;
    });
    expect(once).toBe(total / 2);
  });

  it('after 200 moves are those of a set made from scratch', () => {
    const parts = randomBodies(20266);
    const bodies = new BodySet(parts);
    const random = seededRandom(20267);
    for (let move = 0; move < 200; move++) {
      const body = below(random, parts.length);
      const shift: Vector3 = [between(random, -3, 3), between(random, -3, 3), between(random, -3, 3)];
      parts[body] = (parts[body] ?? []).map((box) => translateBox(box, shift));
      if (move % 3 === 0) bodies.setBody(body, parts[body]);
      else bodies.translateBody(body, ...shift);
    }
    const fresh = new BodySet(parts);
    for (let body = 0; body < bodies.count; body++)
      expect(nearPairs(bodies, body)).toEqual(nearPairs(fresh, body));
  });

  it('refuses another number of boxes for a body', () => {
    const bodies = new BodySet(randomBodies(3));
    const body = bodies.starts.findIndex((start, index) => (bodies.starts[index + 1] ?? 0) > start);
    expect(() => bodies.setBody(body, [])).toThrow(RangeError);
  });
});

describe('travel of one body', () => {
  it('in six directions and by the general form is that of free travel, for 40 scenes', () => {
    const six = createSixWayTravel();
    const one = createBodyTravel();
    let stopped = 0;
    for (let scene = 0; scene < 40; scene++) {
      const parts = randomBodies(30_000 + scene);
      const bodies = new BodySet(parts);
      const body = scene % parts.length;
      const movers = parts[body] ?? [];
      const obstacles = parts.flatMap((boxes, other) => (other === body ? [] : boxes));
      sixWayTravel(bodies, body, 400, six);
      DIRECTIONS.forEach((direction, face) => {
        const expected = freeTravel(movers, obstacles, direction, 400);
        expect(
          Math.abs((six.distance[face] ?? Number.NaN) - expected.distance),
          FACE_NAMES[face],
        ).toBeLessThan(1e-9);
        travelOfBody(bodies, body, ...direction, 400, one);
        expect(Math.abs(one.distance - expected.distance)).toBeLessThan(1e-9);
        expect((six.box[face] ?? -1) >= 0).toBe(expected.contact !== undefined);
        if (expected.contact !== undefined) stopped++;
      });
    }
    expect(stopped).toBeGreaterThan(50);
  });
});
