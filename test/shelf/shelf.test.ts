import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { partKinds } from '../../geometry';
import { keyDimension } from '../../src/shelf/key-dimension';
import { readShelf } from '../../src/shelf/shelf-entry';

const fan = { kind: 'fan', maker: 'Quayside', model: 'Breeze', size: 120 };

describe('reading the shelf', () => {
  test('an entry that cannot be read is left out and named, the others stay', () => {
    const { entries, problems } = readShelf('fan', [
      { id: 'good', spec: fan },
      { id: 'wide', spec: { ...fan, size: 121 } },
      { id: 'negative', spec: { ...fan, thickness: -3 } },
      { id: 'foreign', spec: { kind: 'memory', maker: 'A', model: 'B', form: 'DIMM', thickness: 4 } },
      'nonsense',
    ]);
    expect(entries.map((entry) => entry.id)).toEqual(['good']);
    expect(problems.map((problem) => problem.path)).toEqual([
      'shelf/fan/1/spec.size',
      'shelf/fan/2/spec.thickness',
      'shelf/fan/3',
      'shelf/fan/4/plan',
    ]);
  });

  test('what is no list is no shelf', () => {
    expect(readShelf('fan', { length: 3 })).toMatchObject({ entries: [], problems: [{ path: 'shelf/fan' }] });
  });

  test.each(partKinds)('the shelf of kind %s that comes with the page has no problem', (kind) => {
    const { entries, problems } = readShelf(
      kind,
      JSON.parse(readFileSync(`public/shelf/${kind}.json`, 'utf8')),
    );
    expect(problems).toEqual([]);
    expect(entries.length).toBeGreaterThan(0);
    for (const entry of entries) expect(keyDimension(entry.spec)).not.toMatch(/undefined|NaN/);
  });
});

test('an enclosure is named by the room inside, in litres', () => {
  // 400 mm x 300 mm x (150 + 25) mm = 21 litres.
  const interior = { length: 400, height: 300, trayToSide: { value: 150, plusMinus: 1 }, behindTray: 25 };
  const spec = {
    kind: 'enclosure' as const,
    maker: 'Quayside',
    model: 'Locker',
    interior,
    board: { standoff: 6.5, holes: 'BCFHJLMRS', slots: 4 },
    supplyBays: [],
  };
  expect(keyDimension(spec)).toBe('21.0 L inside');
});
