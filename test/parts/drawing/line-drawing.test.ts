import fc from 'fast-check';
import Module from 'manifold-3d';
import { beforeAll, describe, expect, test } from 'vitest';
import type { BodyBox } from '../../../geometry/parts/body';
import { buildPart } from '../../../geometry/parts/build-part';
import { type LineDrawing, lineDrawing, type PaperLine } from '../../../geometry/parts/drawing/line-drawing';
import { inView, type PartView, rangeAlong, viewsOf } from '../../../geometry/parts/drawing/views';
import { boundsOfBox, boundsOfBoxes, boxFromCorners } from '../../../geometry/space/oriented-box';
import { cross, distance, type Vector3 } from '../../../geometry/space/vector';
import { everyShelfEntry } from '../../views/every-shelf-entry';

const solidsOf = (spec: Parameters<typeof buildPart>[0]): readonly BodyBox[] =>
  buildPart(spec).boxes.filter(({ role }) => role === 'solid');

const vectorOf = ({ axis, sign }: PartView['right']): Vector3 => {
  const vector: [number, number, number] = [0, 0, 0];
  vector[axis] = sign;
  return vector;
};

let wasm: Awaited<ReturnType<typeof Module>>;
beforeAll(async () => {
  wasm = await Module();
  wasm.setup();
});

/** Area of the shadow along the line of sight, from a mesh library that shares no line with the drawing. */
function shadowOf(boxes: readonly BodyBox[], view: PartView): number {
  const solids = boxes.map(({ box }) => {
    const { min, max } = boundsOfBox(box);
    const corner = (point: Vector3) => inView(view, point);
    const [a, b] = [corner(min), corner(max)];
    const low = a.map((value, i) => Math.min(value, b[i] ?? 0)) as [number, number, number];
    const size = a.map((value, i) => Math.abs(value - (b[i] ?? 0))) as [number, number, number];
    return wasm.Manifold.cube(size).translate(low);
  });
  return wasm.Manifold.union(solids).project().area();
}

const box = (name: string, from: Vector3, to: Vector3): BodyBox => ({
  name,
  role: 'solid',
  element: 'cage',
  box: boxFromCorners(from, to),
});
const anySpec = everyShelfEntry[0]![1];
/** u = x, v = y, depth = z. */
const plain: PartView = viewsOf({ ...anySpec, kind: 'radiator' } as typeof anySpec)[0];

const says = (lines: readonly PaperLine[]) =>
  lines.map(({ along, at, from, to }) => `${along} ${at}: ${from}..${to}`).sort();

describe('the three views', () => {
  test.each(everyShelfEntry)('%s: right, up and towards are a right-handed frame in each', (_, spec) => {
    for (const view of viewsOf(spec))
      expect(distance(cross(vectorOf(view.right), vectorOf(view.up)), vectorOf(view.towards))).toBe(0);
  });
});

describe('a drawing of a part on the shelf', () => {
  test.each(everyShelfEntry)(
    '%s: as large as its boxes, and its shadow as large as a mesh casts',
    (_, spec) => {
      const boxes = solidsOf(spec);
      const whole = boundsOfBoxes(boxes.map((body) => body.box))!;
      for (const view of viewsOf(spec)) {
        const drawing = lineDrawing(boxes, view);
        for (const [along, axis] of [
          ['u', view.right],
          ['v', view.up],
        ] as const) {
          const ends = drawing.visible
            .filter((line) => line.along === along)
            .flatMap(({ from, to }) => [from, to]);
          const [low, high] = rangeAlong(axis, whole);
          expect(Math.min(...ends)).toBeCloseTo(low, 6);
          expect(Math.max(...ends)).toBeCloseTo(high, 6);
        }
        const shadow = shadowOf(boxes, view);
        expect(Math.abs(drawing.area - shadow)).toBeLessThan(1e-3 + shadow * 1e-6);
      }
    },
  );

  test.each(everyShelfEntry)(
    '%s: its boxes lie along the axes, so nothing is drawn larger than it is',
    (_, spec) => {
      for (const {
        box: { rotation, half, centre },
      } of solidsOf(spec)) {
        expect(
          rotation.every((value) => Math.abs(value) < 1e-9 || Math.abs(Math.abs(value) - 1) < 1e-9),
        ).toBe(true);
        expect([...half, ...centre].every(Number.isFinite)).toBe(true);
      }
    },
  );
});

describe('what hides what', () => {
  test('a box behind a larger one is drawn hidden, one before it visible', () => {
    const plate = box('plate', [0, 0, 0], [100, 50, 5]);
    const behind = box('behind', [20, 10, -20], [40, 30, -10]);
    const before = box('before', [60, 10, 10], [80, 30, 20]);
    const drawing = lineDrawing([plate, behind, before], plain);
    expect(says(drawing.hidden)).toEqual(['u 10: 20..40', 'u 30: 20..40', 'v 20: 10..30', 'v 40: 10..30']);
    expect(says(drawing.visible)).toEqual(
      expect.arrayContaining(['u 10: 60..80', 'u 30: 60..80', 'v 60: 10..30', 'v 80: 10..30']),
    );
  });

  test('pieces of one sheet show no seam, two things in one plane do', () => {
    const piece = (name: string, from: Vector3, to: Vector3): BodyBox => ({
      ...box(name, from, to),
      element: 'side panel',
    });
    const sheet = [
      piece('side panel 1', [0, 0, 0], [50, 50, 1]),
      piece('side panel 2', [50, 0, 0], [100, 50, 1]),
    ];
    expect(says(lineDrawing(sheet, plain).visible)).toEqual([
      'u 0: 0..100',
      'u 50: 0..100',
      'v 0: 0..50',
      'v 100: 0..50',
    ]);
    const pair = [box('one', [0, 0, 0], [50, 50, 1]), box('two', [50, 0, 0], [100, 50, 1])];
    expect(says(lineDrawing(pair, plain).visible)).toContain('v 50: 0..50');
  });

  test('no boxes, no lines', () => {
    expect(lineDrawing([], plain)).toEqual<LineDrawing>({ visible: [], hidden: [], area: 0 });
  });
});

/** Boxes on a coarse grid of whole millimetres: faces often meet, and points between are never on a face. */
const anyBoxes = fc.array(
  fc.tuple(
    fc.tuple(fc.nat(12), fc.nat(12), fc.nat(12)),
    fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 })),
  ),
  { minLength: 1, maxLength: 9 },
);

describe('against looking through the paper point by point', () => {
  test('a line is visible exactly where the nearest face changes across it', () => {
    fc.assert(
      fc.property(anyBoxes, (places) => {
        const boxes = places.map(([[x, y, z], [a, b, c]], i) =>
          box(`box ${i}`, [x, y, z], [x + a, y + b, z + c]),
        );
        const bounds = boxes.map((body) => boundsOfBox(body.box));
        const nearest = (u: number, v: number): string => {
          let best = 'paper';
          let depth = Number.NEGATIVE_INFINITY;
          bounds.forEach(({ min, max }, i) => {
            if (u > min[0] && u < max[0] && v > min[1] && v < max[1] && max[2] >= depth) {
              // Two things in one plane at one point overlap in space; whichever is drawn there, both say so.
              best = max[2] === depth ? 'shared' : `box ${i}`;
              depth = max[2];
            }
          });
          return best === 'paper' ? best : `${best} ${depth}`;
        };
        const { visible, hidden } = lineDrawing(boxes, plain);
        const on = (lines: readonly PaperLine[], along: 'u' | 'v', at: number, middle: number) =>
          lines.some(
            (line) => line.along === along && line.at === at && line.from < middle && line.to > middle,
          );
        for (let across = 0; across <= 18; across++)
          for (let step = 0; step < 18; step++) {
            const middle = step + 0.5;
            const sides = [nearest(middle, across - 0.5), nearest(middle, across + 0.5)] as const;
            if (sides.some((side) => side.startsWith('shared'))) continue;
            expect(on(visible, 'u', across, middle)).toBe(sides[0] !== sides[1]);
            if (sides[0] === sides[1] && sides[0] === 'paper')
              expect(on(hidden, 'u', across, middle)).toBe(false);
            const hiddenEdge = bounds.some(
              ({ min, max }) =>
                (min[1] === across || max[1] === across) && min[0] < middle && max[0] > middle,
            );
            if (sides[0] === sides[1]) expect(on(hidden, 'u', across, middle)).toBe(hiddenEdge);
          }
      }),
      { numRuns: 150 },
    );
  });
});
