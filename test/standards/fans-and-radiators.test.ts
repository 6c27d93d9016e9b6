import { describe, expect, it } from 'vitest';
import { fanFrames, fanHoles, fanRowHoleColumns } from '../../geometry/standards/fans';
import { outermostHoleColumns, type RadiatorPattern, radiators } from '../../geometry/standards/radiators';

// No standard covers fans: pitches as drawn in two or more open files, or one and common practice.
describe('fans', () => {
  it.each([
    [40, 32],
    [50, 40],
    [60, 50],
    [80, 71.5],
    [92, 82.5],
    [120, 105],
    [140, 124.5],
    [200, 154],
  ] as const)('a %d mm frame has its holes %d apart', (frame, pitch) => {
    expect(fanFrames[frame].pitch.value).toBe(pitch);
    const [a, b, c] = fanHoles(pitch);
    expect([b?.[0], a?.[0], c?.[1]]).toEqual([pitch / 2, -pitch / 2, pitch / 2]);
  });

  it('leaves 15 and 15.5 between the patterns of neighbouring 120 and 140 frames', () => {
    const columns120 = fanRowHoleColumns(120, 2);
    expect(columns120).toEqual([7.5, 112.5, 127.5, 232.5]);
    const columns140 = fanRowHoleColumns(140, 2);
    expect((columns140[2] ?? 0) - (columns140[1] ?? 0)).toBe(15.5);
  });
});

describe('radiators', () => {
  it.each([
    [240, 225],
    [360, 345],
    [280, 264.5],
  ] as const)('the outermost columns of a %d pattern stand %d apart', (pattern, distance) => {
    expect(outermostHoleColumns(pattern)).toBe(distance);
  });

  it('is longer than its fans by 30 to 40 mm of end tanks (articles)', () => {
    for (const pattern of Object.keys(radiators).map(Number) as RadiatorPattern[]) {
      const { fanFrame, fans, length } = radiators[pattern];
      const tanks = length.value - fanFrame * fans;
      expect(tanks).toBeGreaterThanOrEqual(30);
      expect(tanks).toBeLessThanOrEqual(40);
    }
  });
});
