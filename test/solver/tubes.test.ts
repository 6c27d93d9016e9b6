import { describe, expect, it } from 'vitest';
import { buildPart } from '../../geometry/parts/build-part';
import type { PartSpec } from '../../geometry/parts/part-spec';
import { partSpecSchema } from '../../geometry/parts/part-spec';
import { solve } from '../../geometry/solver/solve';
import { translationBy } from '../../geometry/space/transform';
import { type DrawnPart, sceneOf } from './scene-of-boxes';

const built = (id: string, spec: unknown, at: readonly [number, number, number]): DrawnPart => {
  const parsed: PartSpec = partSpecSchema.parse(spec);
  const { boxes, features } = buildPart(parsed);
  return { id, kind: parsed.kind, boxes, features, spec: parsed, pose: translationBy(at) };
};

const made = { maker: 'Test', model: 'Wet' };

/** Fittings leave to +x and end 15.3 mm or so beyond the block: wherever they end, that is where the tube starts. */
const block = (length: number) =>
  built(
    'cooler',
    {
      kind: 'cooler',
      style: 'liquid block',
      ...made,
      patterns: ['square-78'],
      width: 60,
      depth: 60,
      height: 40,
      tubes: { diameter: 12, length, bendRadius: 40, leaves: '+x' },
    },
    [0, 0, 0],
  );

const radiator = (x: number, id = 'radiator') =>
  built(id, { kind: 'radiator', ...made, row: '240', length: 277, fitting: 15 }, [x, 0, 20]);

/** Straight line between the fittings: the radiator's end at x + 277 / 2 + 15, the block's at 30 + its own fitting. */
function straight(x: number): number {
  const tubes = block(400).boxes.filter((body) => body.element === 'tube' && body.role === 'solid');
  const end = Math.max(...tubes.map((body) => body.box.centre[0] + body.box.half[0]));
  const height = tubes[0]?.box.centre[2] ?? Number.NaN;
  return Math.hypot(x + 138.5 + 15 - end, 20 - height);
}

const tubes = (parts: readonly DrawnPart[]) =>
  solve(sceneOf(parts)).findings.filter((finding) => finding.kind === 'tubes');

describe('tubes of a liquid cooler', () => {
  it('are a fault when they are shorter than the straight line', () => {
    const [found] = tubes([block(400), radiator(300)]);
    expect(found).toMatchObject({ id: 'tubes/cooler/radiator', weight: 'fault' });
    expect(found?.millimetres).toBeCloseTo(400 - straight(300), 6);
    expect(found?.millimetres).toBeLessThan(0);
  });

  it('are a caution when they could reach only without a bend', () => {
    const line = straight(250);
    expect(tubes([block(line * 1.05), radiator(250)])[0]?.weight).toBe('caution');
  });

  it('are fine with length in hand', () => {
    const line = straight(250);
    expect(tubes([block(line * 1.2), radiator(250)])).toEqual([]);
  });

  it('are not judged when two radiators could be meant', () => {
    expect(tubes([block(100), radiator(300), radiator(600, 'radiator-2')])).toEqual([]);
  });
});
