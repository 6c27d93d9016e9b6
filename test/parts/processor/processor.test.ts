import { describe, expect, it } from 'vitest';
import { buildProcessor } from '../../../geometry/parts/processor/processor';
import { processorSpecSchema } from '../../../geometry/parts/processor/spec';
import { expectSoundModel, solidSpan } from '../model-rules';

const spec = processorSpecSchema.parse({
  kind: 'processor',
  maker: 'Generic',
  model: 'Test',
  socket: 'square-75',
  width: 37.5,
  depth: 37.5,
  class: 65,
});

describe('a processor in its socket', () => {
  const model = buildProcessor(spec);

  it('puts the lid 7.781 above the board: seat 3.4 and package 4.381 (LGA1155 guide, table 5-2)', () => {
    const lid = model.mounts[0]?.frame.translation[2] ?? Number.NaN;
    expect(3.4 + lid).toBeCloseTo(7.781, 9);
    expect(solidSpan(model).max[2]).toBe(lid);
  });

  it('enters the socket and carries coolers of its own hole pattern, any quarter turn', () => {
    expectSoundModel(model);
    expect(model.boxes.every((box) => box.engages)).toBe(true);
    expect(model.feet[0]?.pattern).toBe('processor square-75');
    expect(model.mounts[0]?.patterns).toEqual(['cooler square-75']);
    expect(model.mounts[0]?.turns).toEqual([0, 90, 180, 270]);
  });

  it('follows a package height from the sheet', () => {
    const tall = buildProcessor({ ...spec, height: { value: 5, plusMinus: 0.2, source: 'measured' } });
    expect(tall.mounts[0]?.frame.translation[2]).toBe(5);
  });
});
