import { describe, expect, it } from 'vitest';
import { buildMemory } from '../../../geometry/parts/memory/memory';
import { memorySpecSchema } from '../../../geometry/parts/memory/spec';
import { expectSoundModel, solidSpan, spanOf } from '../model-rules';

const bare = { kind: 'memory', maker: 'Generic', model: 'Test', form: 'DIMM', thickness: 3.9 } as const;

describe('a memory module', () => {
  it('is 133.35 long and 31.25 high when bare (MO-161, MO-309)', () => {
    const model = buildMemory(memorySpecSchema.parse(bare));
    expectSoundModel(model);
    const { min, max } = solidSpan(model);
    expect(max[0] - min[0]).toBeCloseTo(133.35, 9);
    expect([min[2], max[2]]).toEqual([0, 31.25]);
    expect(max[1] - min[1]).toBeCloseTo(3.9, 9);
  });

  it('enters the socket with its contact edge alone: seat 2.5 to socket top 6 (one open drawing)', () => {
    const model = buildMemory(memorySpecSchema.parse(bare));
    expect(model.boxes.filter((box) => box.engages).map((box) => box.name)).toEqual(['contact edge']);
    expect(2.5 + spanOf(model, 'module').min[2]).toBeCloseTo(6, 9);
  });

  it('stands as high as its spreader', () => {
    const dressed = buildMemory(memorySpecSchema.parse({ ...bare, height: 44, thickness: 8 }));
    expect(solidSpan(dressed).max[2]).toBe(44);
    expect(dressed.feet[0]?.pattern).toBe('memory DIMM');
  });

  it('is shorter and lower as a small-outline module', () => {
    const { min, max } = solidSpan(buildMemory(memorySpecSchema.parse({ ...bare, form: 'SO-DIMM' })));
    expect(max[0] - min[0]).toBeCloseTo(69.6, 9);
    expect(max[2]).toBe(30);
  });
});
