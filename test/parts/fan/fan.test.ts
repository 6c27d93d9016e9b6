import { describe, expect, it } from 'vitest';
import { buildFan } from '../../../geometry/parts/fan/fan';
import { fanSpecSchema } from '../../../geometry/parts/fan/spec';
import { seatPose } from '../../../geometry/plan/mounting';
import { boundsOfBox, transformBox } from '../../../geometry/space/oriented-box';
import { identityTransform, transformDirection } from '../../../geometry/space/transform';
import { expectSoundModel, solidSpan, spanOf } from '../model-rules';

const build = (size: number, thickness?: number) =>
  buildFan(fanSpecSchema.parse({ kind: 'fan', maker: 'Generic', model: 'Test', size, thickness }));

/** Pose of a fan on a seat at the origin whose z points into the enclosure. */
function onSeat(footId: string) {
  const model = build(120);
  const foot = model.feet.find((candidate) => candidate.id === footId);
  const seat = { id: 'seat', label: 'Seat', patterns: ['fan 120'], frame: identityTransform };
  if (foot === undefined) throw new Error('no such foot');
  return { model, pose: seatPose(identityTransform, seat, foot) };
}

describe('a fan', () => {
  it('is its frame by 25 thick unless the sheet says otherwise', () => {
    expectSoundModel(build(120));
    expect(solidSpan(build(120)).max).toEqual([60, 60, 12.5]);
    expect(solidSpan(build(140, 15)).max).toEqual([70, 70, 7.5]);
  });

  it('has the hole pitch of its frame: 105 for 120, 124.5 for 140, 82.5 for 92', () => {
    for (const [size, pitch] of [
      [120, 105],
      [140, 124.5],
      [92, 82.5],
    ] as const) {
      for (const { at } of build(size).feet[0]?.points ?? []) {
        expect(at.map(Math.abs)).toEqual([pitch / 2, pitch / 2]);
      }
    }
  });

  it('stands inside its seat both ways round, and blows the way its foot says', () => {
    for (const [foot, sense] of [
      ['blows in', 1],
      ['blows out', -1],
    ] as const) {
      const { model, pose } = onSeat(foot);
      const frame = model.boxes.find((box) => box.name === 'frame');
      if (frame === undefined) throw new Error('a fan has a frame');
      const bounds = boundsOfBox(transformBox(pose, frame.box));
      expect([bounds.min[2], bounds.max[2]]).toEqual([0, 25]);
      expect(transformDirection(pose, [0, 0, 1])[2]).toBe(sense);
    }
  });

  it('keeps its breathing space before the intake face', () => {
    const air = spanOf(build(120), 'breathing space, intake');
    expect(air.max[2]).toBe(-12.5);
    const swept = air.max[0] - air.min[0];
    // Curtain pi D g equals annulus pi (D^2 - d^2) / 4 with a hub of 35 in 95.
    const gap = air.max[2] - air.min[2];
    expect(Math.PI * swept * gap).toBeCloseTo((Math.PI / 4) * (swept ** 2 - ((35 / 95) * swept) ** 2), 6);
  });
});
