import { describe, expect, test } from 'vitest';
import { modelOf, type PartSpec } from '../../../geometry';
import { drawingOf } from '../../../src/viewport/drawing/part-drawing';
import { FILL_STYLE, fillKinds, STROKE_ENDS } from '../../../src/viewport/drawing/stroke-list';

const glassCase: PartSpec = {
  kind: 'enclosure',
  maker: 'Test',
  model: 'Glass',
  interior: { length: 300, height: 300, trayToSide: 150, behindTray: 20 },
  walls: { side: { material: 'glass' } },
  board: { standoff: 6.5, holes: 'BCFHJLMRS', slots: 4 },
  supplyBays: [],
};
const drawn = (spec: PartSpec) => drawingOf({ spec, model: modelOf(spec) });
const kinds = (spec: PartSpec) => {
  const { style } = drawn(spec).fills;
  return Array.from({ length: style.length / FILL_STYLE }, (_, index) => style[index * FILL_STYLE]);
};

describe('the drawing of a part', () => {
  test('is made once for each body', () => {
    const fan: PartSpec = { kind: 'fan', maker: 'Test', model: 'Fan', size: 120 };
    expect(drawn(fan)).toBe(drawn(fan));
  });

  test('shows ring, hub and blades on both faces of a fan', () => {
    const fan: PartSpec = { kind: 'fan', maker: 'Test', model: 'Fan', size: 120 };
    expect(kinds(fan).filter((kind) => kind === fillKinds.disc)).toHaveLength(2);
    expect(drawn(fan).strokes.count).toBeGreaterThan(12 + 2 * 100);
  });

  test('leaves the outside of every wall open, closes the inside, and sees through glass', () => {
    const all = kinds(glassCase);
    expect(all.filter((kind) => kind === fillKinds.sheer)).toHaveLength(1);
    expect(all.filter((kind) => kind === fillKinds.ground).length).toBeGreaterThanOrEqual(5);
    const { frames } = drawn(glassCase).fills;
    for (let fill = 0; fill < all.length; fill++) {
      if (all[fill] !== fillKinds.ground) continue;
      const [cx, cy, cz, ax, ay, az, bx, by, bz] = frames.subarray(
        fill * 9,
        fill * 9 + 9,
      ) as unknown as number[];
      const normal = [ay! * bz! - az! * by!, az! * bx! - ax! * bz!, ax! * by! - ay! * bx!] as const;
      const outer = [cx! < 0 ? -1 : cx! > 299 ? 1 : 0, cy! < 0 ? -1 : cy! > 299 ? 1 : 0, cz! > 149 ? 1 : 0];
      const facingOut = normal.some(
        (value, axis) => Math.sign(value) !== 0 && Math.sign(value) === outer[axis],
      );
      if (Math.max(...normal.map(Math.abs)) > 5000) expect(facingOut).toBe(false);
    }
  });

  test('has strokes of finite length only', () => {
    const { ends, count } = drawn(glassCase).strokes;
    expect(ends.length).toBe(count * STROKE_ENDS);
    expect(ends.every(Number.isFinite)).toBe(true);
  });
});
