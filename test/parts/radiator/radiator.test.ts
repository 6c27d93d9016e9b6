import { describe, expect, it } from 'vitest';
import { buildFan } from '../../../geometry/parts/fan/fan';
import { fanSpecSchema } from '../../../geometry/parts/fan/spec';
import { buildRadiator } from '../../../geometry/parts/radiator/radiator';
import { radiatorSpecSchema } from '../../../geometry/parts/radiator/spec';
import { seatPose } from '../../../geometry/plan/mounting';
import { boundsOfBox, transformBox } from '../../../geometry/space/oriented-box';
import { identityTransform } from '../../../geometry/space/transform';
import { expectSoundModel, solidSpan, spanOf } from '../model-rules';

const made = { kind: 'radiator', maker: 'Generic', model: 'Test' } as const;
const build = (spec: object, adjust = {}) =>
  buildRadiator(radiatorSpecSchema.parse({ ...made, ...spec }), adjust);

describe('a radiator', () => {
  it('is longer than its name: 275 for 240, 315 for 280, 155 for 120 (spec sheets and drawings)', () => {
    for (const [row, length, width] of [
      ['240', 275, 120],
      ['280', 315, 140],
      ['120', 155, 120],
    ] as const) {
      const model = build({ row, fitting: 0 });
      expectSoundModel(model);
      const { min, max } = solidSpan(model);
      expect(max[0] - min[0]).toBeCloseTo(length, 9);
      expect(max[1] - min[1]).toBeCloseTo(width, 9);
      expect(max[2] - min[2]).toBeCloseTo(27, 9);
    }
  });

  it('has outermost hole columns 225, 345 and 264.5 apart (105 + 120, 105 + 240, 124.5 + 140)', () => {
    for (const [row, columns] of [
      ['240', 225],
      ['360', 345],
      ['280', 264.5],
    ] as const) {
      const xs = (build({ row }).feet[0]?.points ?? []).map((point) => point.at[0]);
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(columns, 9);
    }
  });

  it('carries one fan a place on both faces; 27 + 25 is a stack of 52 (an enclosure maker’s article)', () => {
    const model = build({ row: '240' });
    expect(model.mounts.map((mount) => mount.id)).toEqual(['near 1', 'near 2', 'far 1', 'far 2']);
    const fan = buildFan(fanSpecSchema.parse({ kind: 'fan', maker: 'Generic', model: 'Test', size: 120 }));
    const foot = fan.feet[0];
    const frame = fan.boxes[0];
    if (foot === undefined || frame === undefined) throw new Error('a fan has a foot and a frame');
    for (const mount of model.mounts) {
      const bounds = boundsOfBox(transformBox(seatPose(identityTransform, mount, foot), frame.box));
      const stack = mount.id.startsWith('far') ? bounds.max[2] + 13.5 : 13.5 - bounds.min[2];
      expect(stack).toBeCloseTo(52, 9);
    }
  });

  it('moves off its rail to make room for fans there', () => {
    const z = (adjust: object) => build({ row: '240' }, adjust).feet[0]?.frame.translation[2];
    expect(z({})).toBe(-13.5);
    expect(z({ 'gap to the rail': 25 })).toBe(-38.5);
    expect(z({ 'gap to the rail': 500 })).toBe(-13.5 - 38);
  });

  it('keeps room for its tubes to turn beyond the fittings', () => {
    const model = build({ row: '240' });
    const bend = spanOf(model, 'bend space, tubes');
    expect(bend.min[0]).toBeCloseTo(275 / 2 + 15, 9);
    expect(bend.max[0]).toBeCloseTo(275 / 2 + 15 + 35, 9);
  });

  it('is refused when it is shorter than its fans', () => {
    const result = radiatorSpecSchema.safeParse({ ...made, row: '280', length: 275 });
    expect(result.error?.issues[0]?.message).toMatch(/Length.*275.*Fan row.*280/);
  });
});
