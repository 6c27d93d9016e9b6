import { describe, expect, test } from 'vitest';
import { boundsOfBoxes, lengthPaths, modelOf, viewsOf } from '../../../geometry';
import { dimensionTexts } from '../../../src/views/part-drawing/dimension-texts';
import { layOutSheet, onPaper, onSheet } from '../../../src/views/part-drawing/sheet-layout';
import { isAlwaysDrawn } from '../../../src/views/part-form/sheet-order';
import { everyShelfEntry } from '../every-shelf-entry';

const widths = [280, 360, 560, 800];

describe.each(everyShelfEntry)('%s', (_, spec) => {
  const shown = lengthPaths(spec).filter((path) => isAlwaysDrawn(spec.kind, path));
  const texts = dimensionTexts(spec, shown, undefined);
  const whole = boundsOfBoxes(modelOf(spec).boxes.map(({ box }) => box))!;

  test.each(widths)('at %d pixels: views apart and on the sheet, first-angle, dimensions true', (width) => {
    const layout = layOutSheet(viewsOf(spec), whole, texts, width, width);
    const [front, plan, side] = layout.views.map((view) => {
      const [left, top] = onSheet(view, view.u[0], view.v[1]);
      const [right, bottom] = onSheet(view, view.u[1], view.v[0]);
      return { left, top, right, bottom };
    });
    if (!front || !plan || !side) throw new Error('three views');
    // ISO 5456-2, first-angle: from above goes below, from the left goes to the right.
    expect(plan.top).toBeGreaterThan(front.bottom);
    expect(side.left).toBeGreaterThan(front.right);
    expect(plan.left).toBeCloseTo(front.left, 6);
    expect(side.top).toBeCloseTo(front.top, 6);
    for (const { left, top, right, bottom } of [front, plan, side]) {
      expect(left).toBeGreaterThanOrEqual(0);
      expect(top).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(width + 1e-6);
      expect(bottom).toBeLessThanOrEqual(layout.height + 1e-6);
    }
    const scale = layout.views[0]?.scale ?? Number.NaN;
    for (const { dimension, from, to } of layout.dimensions)
      expect((to - from) / scale, dimension.path).toBeCloseTo(Math.abs(dimension.nominal), 4);
  });

  test('no two dimension lines of one row run into one another', () => {
    const { dimensions } = layOutSheet(viewsOf(spec), whole, texts, 560, 560);
    for (const [i, a] of dimensions.entries())
      for (const b of dimensions.slice(i + 1)) {
        if (a.along !== b.along || Math.abs(a.at - b.at) > 1) continue;
        expect(
          a.to <= b.from + 1e-6 || b.to <= a.from + 1e-6,
          `${a.dimension.path} and ${b.dimension.path}`,
        ).toBe(true);
      }
  });
});

test('a point goes to the sheet and comes back', () => {
  const [, spec] = everyShelfEntry[0]!;
  const whole = boundsOfBoxes(modelOf(spec).boxes.map(({ box }) => box))!;
  const [view] = layOutSheet(viewsOf(spec), whole, [], 500, 500).views;
  const [x, y] = onSheet(view!, 12.5, 80);
  expect(onPaper(view!, x, y).map((value) => Number(value.toFixed(9)))).toEqual([12.5, 80]);
});
