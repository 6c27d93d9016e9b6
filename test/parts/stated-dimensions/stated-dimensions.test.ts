import { describe, expect, it } from 'vitest';
import { buildPart } from '../../../geometry/parts/build-part';
import type { PartSpec } from '../../../geometry/parts/part-spec';
import { partSpecSchema } from '../../../geometry/parts/part-spec';
import { withDimension, withStatement } from '../../../geometry/parts/stated-dimensions/change-dimension';
import { dimensionAt, dimensionsOf } from '../../../geometry/parts/stated-dimensions/stated-dimensions';
import { smallBuild } from '../../plan/small-build';
import { everyKind } from './every-kind';

function specOf(id: string): PartSpec {
  const part = smallBuild().parts[id];
  if (!part) throw new RangeError(id);
  return part.spec;
}

describe('dimensions of a sheet', () => {
  it('lists what the sheet states, with title, datum and the tolerance of its size', () => {
    expect(dimensionAt(specOf('enclosure'), 'interior.trayToSide')).toEqual({
      path: 'interior.trayToSide',
      title: 'Interior, tray to side panel',
      datum: 'mounting face of the tray to inner face of the side panel',
      nominal: 175,
      // ISO 2768-1:1989 table 1, class m, over 120 up to 400.
      plusMinus: 0.5,
      isDefault: true,
      source: 'sheet',
      sigmas: 3,
      isStated: true,
      isPosition: false,
    });
  });

  it('lists the published value where the sheet is silent', () => {
    // LGA1155 Thermal/Mechanical Specifications and Design Guidelines, table 5-2.
    const seat = dimensionAt(specOf('board'), 'socket.seat');
    expect(seat).toMatchObject({
      nominal: 3.4,
      plusMinus: 0.2,
      source: 'standard',
      isStated: false,
      isDefault: false,
    });
    const silent = partSpecSchema.parse({ ...specOf('processor'), height: undefined });
    expect(dimensionAt(silent, 'height')).toMatchObject({
      nominal: 4.381,
      plusMinus: 0.269,
      source: 'standard',
    });
    // ATX12V Power Supply Design Guide 2.0, figure 8.
    const supply = everyKind().find((spec) => spec.kind === 'supply');
    expect(supply && dimensionAt(supply, 'depth')).toMatchObject({
      nominal: 140,
      plusMinus: 1,
      source: 'standard',
    });
  });

  it('takes a band, a source and a count of sigmas from the sheet', () => {
    const long = { value: 150, plusMinus: 0.4, source: 'measured' } as const;
    const measured = withStatement(specOf('cooler'), 'height', long);
    expect(dimensionAt(measured, 'height')).toMatchObject({ plusMinus: 0.4, sigmas: 2, isDefault: false });
    const three = withStatement(specOf('cooler'), 'height', { ...long, sigmas: 3 });
    expect(dimensionAt(three, 'height').sigmas).toBe(3);
    expect(partSpecSchema.safeParse(three).success).toBe(true);
    expect(
      partSpecSchema.safeParse(withStatement(three, 'height', { ...long, sigmas: 4 as 3 })).success,
    ).toBe(false);
  });

  it('gives no band to a size of nothing, but one to a place at zero', () => {
    const flush = withDimension(specOf('card'), 'backplate', 0);
    expect(dimensionAt(flush, 'backplate').plusMinus).toBe(0);
    const place = withDimension(specOf('board'), 'socket.at.0', 0);
    expect(dimensionAt(place, 'socket.at.0').plusMinus).toBe(0.1);
  });

  it('tells entries of lists apart by name', () => {
    const titles = dimensionsOf(specOf('enclosure')).map(({ title }) => title);
    expect(titles).toContain('Fan seats rear fan, position on the face, first coordinate');
    expect(new Set(titles).size).toBe(titles.length);
  });
});

describe('changing one dimension', () => {
  it('builds the very same body when a silent field is filled with the value that stands in', () => {
    let tried = 0;
    for (const spec of everyKind()) {
      for (const { path, nominal, isStated } of dimensionsOf(spec)) {
        const same = withDimension(spec, path, nominal);
        expect(buildPart(same), `${spec.kind} ${path}`).toEqual(buildPart(spec));
        if (!isStated) tried++;
      }
    }
    expect(tried).toBeGreaterThan(25);
  });

  it('leaves the original alone and keeps band and source', () => {
    const before = withStatement(specOf('card'), 'length', { value: 300, plusMinus: 2, source: 'assumed' });
    const after = withDimension(before, 'length', 310);
    expect(dimensionAt(before, 'length').nominal).toBe(300);
    expect(dimensionAt(after, 'length')).toMatchObject({ nominal: 310, plusMinus: 2, source: 'assumed' });
  });

  it('refuses paths that lead nowhere', () => {
    expect(() => withDimension(specOf('enclosure'), 'fanSeats.7.at.0', 1)).toThrow(RangeError);
    expect(() => withDimension(specOf('card'), 'maker', 1)).toThrow(RangeError);
    expect(() => dimensionAt(specOf('card'), 'nothing')).toThrow(RangeError);
  });
});
