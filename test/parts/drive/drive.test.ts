import { describe, expect, it } from 'vitest';
import { buildDrive } from '../../../geometry/parts/drive/drive';
import { driveSpecSchema } from '../../../geometry/parts/drive/spec';
import { expectSoundModel, solidSpan, spanOf } from '../model-rules';

const made = { kind: 'drive', maker: 'Generic', model: 'Test' } as const;
const build = (spec: object) => buildDrive(driveSpecSchema.parse({ ...made, ...spec }));

describe('a 3.5 inch drive (SFF-8301 revision 3.4)', () => {
  const model = build({ form: '3.5', height: 26.1 });

  it('is 147.00 by 101.60 by its height', () => {
    expectSoundModel(model);
    const { min, max } = solidSpan(model);
    expect(min).toEqual([0, -50.8, 0]);
    expect(max).toEqual([147, 50.8, 26.1]);
  });

  it('has base holes 41.28, 85.73 and 117.48 from the connector end, 95.25 across', () => {
    const at = model.feet[0]?.points?.map((point) => point.at) ?? [];
    expect([...new Set(at.map(([x]) => Number(x.toFixed(2))))]).toEqual([41.28, 85.73, 117.48]);
    const across = at.map(([, y]) => y);
    expect(Math.max(...across) - Math.min(...across)).toBeCloseTo(95.25, 1);
  });

  it('keeps its plugs and their bend clear of its connector end', () => {
    expect(spanOf(model, 'plug space, drive').max[0]).toBe(0);
    expect(spanOf(model, 'bend space, drive').max[0]).toBe(spanOf(model, 'plug space, drive').min[0]);
    expect(model.features[0]?.use).toHaveLength(2);
  });
});

describe('a 2.5 inch drive (SFF-8201 revision 3.4)', () => {
  it('is 100.45 by 69.85, with base holes at 14.00 and 90.60, 61.72 across', () => {
    const model = build({ form: '2.5', height: 7 });
    expectSoundModel(model);
    const { min, max } = solidSpan(model);
    expect(max[0] - min[0]).toBeCloseTo(100.45, 9);
    expect(max[1] - min[1]).toBeCloseTo(69.85, 9);
    const at = model.feet[0]?.points?.map((point) => point.at) ?? [];
    expect([...new Set(at.map(([x]) => x))]).toEqual([14, 90.6]);
    const across = at.map(([, y]) => y);
    expect(Math.max(...across) - Math.min(...across)).toBeCloseTo(61.72, 1);
  });
});

describe('an M.2 module', () => {
  it('is 22 wide, of its nominal length, and enters the socket with its contact edge', () => {
    const model = build({ form: 'M.2', length: 80 });
    expectSoundModel(model);
    const { min, max } = solidSpan(model);
    expect([min[0], max[0]]).toEqual([0, 80]);
    expect(max[1] - min[1]).toBeCloseTo(22, 9);
    expect(max[2]).toBeCloseTo(0.8 + 1.5, 9);
    expect(model.boxes.filter((box) => box.engages).map((box) => box.name)).toEqual(['contact edge']);
    expect(model.feet[0]?.pattern).toBe('M.2 22x80');
  });

  it('is as high as its own sink and as low as the parts on its back', () => {
    const model = build({ form: 'M.2', length: 80, below: 1.35, sink: 10.5 });
    expectSoundModel(model);
    expect(solidSpan(model).max[2]).toBeCloseTo(0.8 + 10.5, 9);
    expect(solidSpan(model).min[2]).toBeCloseTo(-1.35, 9);
  });

  it('is refused with a sink lower than its parts', () => {
    const result = driveSpecSchema.safeParse({ ...made, form: 'M.2', length: 80, above: 1.5, sink: 1 });
    expect(result.error?.issues[0]?.message).toMatch(/Own sink.*1 mm.*Parts above its board.*1.5 mm/);
  });
});
