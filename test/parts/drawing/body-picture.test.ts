import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BodyBox } from '../../../geometry/parts/body';
import { buildPart } from '../../../geometry/parts/build-part';
import { bodyPicture, type Eye, eyeAt, type PaperPoint } from '../../../geometry/parts/drawing/body-picture';
import { boundsOfBox, boxFromCorners } from '../../../geometry/space/oriented-box';
import { add, cross, dot, scale, subtract, type Vector3 } from '../../../geometry/space/vector';
import { everyShelfEntry } from '../../views/every-shelf-entry';

const front: Eye = { right: [1, 0, 0], up: [0, 1, 0], towards: [0, 0, 1] };

function holds(corners: readonly PaperPoint[], [u, v]: PaperPoint): boolean {
  const turns = corners.map((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    return (b[0] - a[0]) * (v - a[1]) - (b[1] - a[1]) * (u - a[0]);
  });
  return turns.every((turn) => turn > 1e-9) || turns.every((turn) => turn < -1e-9);
}

/** The box whose surface a ray from the viewer meets first: slab by slab, straight from the corners. */
function firstHit(boxes: readonly BodyBox[], eye: Eye, [u, v]: PaperPoint): string | undefined {
  const through = add(scale(eye.right, u), scale(eye.up, v));
  let best: { readonly name: string; readonly t: number } | undefined;
  for (const body of boxes) {
    const { min, max } = boundsOfBox(body.box);
    let [enter, leave] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (const axis of [0, 1, 2] as const) {
      const way = -eye.towards[axis];
      const ends = [(min[axis] - through[axis]) / way, (max[axis] - through[axis]) / way];
      enter = Math.max(enter, Math.min(...ends));
      leave = Math.min(leave, Math.max(...ends));
    }
    if (leave - enter > 1e-6 && (!best || enter < best.t)) best = { name: body.name, t: enter };
  }
  return best?.name;
}

function expectTrue(boxes: readonly BodyBox[], eye: Eye, points: readonly PaperPoint[]): void {
  const faces = bodyPicture(boxes, eye);
  for (const point of points) {
    const painted = faces.findLast(({ corners }) => holds(corners, point))?.body.name;
    const hit = firstHit(boxes, eye, point);
    // Points on an edge belong to either side.
    if (faces.some(({ corners }) => corners.some((a, i) => nearLine(point, a, corners[(i + 1) % 4]!))))
      continue;
    expect(painted).toBe(hit);
  }
}

function nearLine(p: PaperPoint, a: PaperPoint, b: PaperPoint): boolean {
  const along = [b[0] - a[0], b[1] - a[1]] as const;
  const size = Math.hypot(...along);
  return size > 0 && Math.abs(along[0] * (p[1] - a[1]) - along[1] * (p[0] - a[0])) / size < 1e-3;
}

describe('the eye', () => {
  test('its axes are perpendicular unit vectors, right-handed, at any turn', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -360, max: 360, noNaN: true }),
        fc.double({ min: -90, max: 90, noNaN: true }),
        (yaw, pitch) => {
          const { right, up, towards } = eyeAt(front, yaw, pitch);
          for (const axis of [right, up, towards]) expect(dot(axis, axis)).toBeCloseTo(1, 9);
          const off = subtract(cross(right, up), towards);
          expect(Math.hypot(...off)).toBeLessThan(1e-9);
        },
      ),
    );
  });
});

describe('a picture shows at every point the box a ray meets first', () => {
  // One box to a cell of a grid, so that no two overlap.
  const boxesApart = fc.uniqueArray(fc.tuple(fc.nat(3), fc.nat(3), fc.nat(3)), {
    minLength: 1,
    maxLength: 24,
    selector: String,
  });
  const inCell = fc.tuple(fc.nat(4), fc.integer({ min: 5, max: 10 }));

  test('boxes anywhere, seen from anywhere', () => {
    fc.assert(
      fc.property(
        boxesApart,
        fc.array(fc.tuple(inCell, inCell, inCell), { minLength: 24, maxLength: 24 }),
        fc.integer({ min: 1, max: 359 }).filter((yaw) => yaw % 90 !== 0),
        fc.integer({ min: -80, max: 80 }).filter((pitch) => pitch !== 0),
        (cells, sizes, yaw, pitch) => {
          const boxes = cells.map((cell, i): BodyBox => {
            const size = sizes[i]!;
            const corner = (end: 0 | 1): Vector3 =>
              [0, 1, 2].map((k) => cell[k]! * 10 + size[k]![end]) as unknown as Vector3;
            return {
              name: `box ${i}`,
              role: 'solid',
              element: 'cage',
              box: boxFromCorners(corner(0), corner(1)),
            };
          });
          const points = Array.from(
            { length: 60 },
            (_, k): PaperPoint => [((k * 37) % 97) - 40, ((k * 53) % 89) - 40],
          );
          expectTrue(boxes, eyeAt(front, yaw, pitch), points);
        },
      ),
      { numRuns: 60 },
    );
  });

  const kinds = ['card', 'cooler', 'fan', 'radiator', 'supply'];
  test.each(everyShelfEntry.filter(([, spec]) => kinds.includes(spec.kind)))('%s', (_, spec) => {
    const boxes = buildPart(spec).boxes.filter(({ role }) => role === 'solid');
    const eye = eyeAt(front, 35, 25);
    const paper = bodyPicture(boxes, eye).flatMap(({ corners }) => corners);
    const span = (i: 0 | 1) =>
      [Math.min(...paper.map((p) => p[i])), Math.max(...paper.map((p) => p[i]))] as const;
    const [u, v] = [span(0), span(1)];
    const at = ([low, high]: readonly [number, number], share: number) => low + (high - low) * share;
    const points = Array.from(
      { length: 150 },
      (_, k): PaperPoint => [at(u, ((k * 37) % 101) / 101), at(v, ((k * 61) % 103) / 103)],
    );
    expectTrue(boxes, eye, points);
  });
});

test('seams between pieces of one sheet are no edges', () => {
  const piece = (name: string, from: Vector3, to: Vector3): BodyBox => ({
    name,
    role: 'solid',
    element: 'floor',
    box: boxFromCorners(from, to),
  });
  const pieces = [piece('floor 1', [0, 0, 0], [10, 1, 10]), piece('floor 2', [10, 0, 0], [30, 1, 10])];
  const [first] = bodyPicture(pieces, eyeAt(front, 30, 30)).filter(
    ({ body, axis }) => body.name === 'floor 1' && axis === 1,
  );
  expect(first?.edges).toHaveLength(3);
});
