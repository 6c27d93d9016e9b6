import { readFileSync, writeFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { partKinds } from '../../../geometry';
import { fileLimits } from '../../../src/shelf/part-files/file-limits';
import { partFileSchema, readPartFile, writePartFile } from '../../../src/shelf/part-files/part-file';
import { everyShelfEntry } from '../../views/every-shelf-entry';

const specs = everyShelfEntry.map(([, spec]) => spec);
const served = new URL('../../../public/part-file.schema.json', import.meta.url);

describe('a part file', () => {
  test('holds every part of the shelf, and gives each back equal', () => {
    const reading = readPartFile(writePartFile(specs));
    expect(reading).toEqual({ specs, faults: [], badRows: 0 });
    expect(new Set(specs.map(({ kind }) => kind)).size).toBe(partKinds.length);
  });

  test('one bad part is named by its place and field, and the others are taken', () => {
    const text = JSON.stringify({ format: 1, parts: [specs[0], { ...specs[1], mass: -4 }, specs[2]] });
    const reading = readPartFile(text);
    expect(reading.specs).toEqual([specs[0], specs[2]]);
    expect(reading.badRows).toBe(1);
    expect(reading.faults[0]).toMatchObject({ row: 2, field: 'mass' });
  });

  test('a file that is none is refused whole', () => {
    for (const text of [
      '',
      'null',
      '3',
      '"x"',
      '{"parts": 3}',
      '{"format": 9, "parts": []}',
      '{',
      '[1,',
      '{"format":1}',
    ])
      expect(readPartFile(text).refused, text).toEqual(expect.any(String));
  });

  test('the schema that is served is the one the page reads by', () => {
    const schema = `${JSON.stringify(z.toJSONSchema(partFileSchema, { io: 'input', unrepresentable: 'throw', reused: 'ref' }))}
`;
    if (process.env.WRITE_REPORT) writeFileSync(served, schema);
    expect(JSON.parse(readFileSync(served, 'utf8'))).toEqual(JSON.parse(schema));
  });
});

describe('a hostile part file', () => {
  test('with brackets a hundred thousand deep is refused before it is parsed', () => {
    const text = `{"format":1,"parts":${'['.repeat(100_000)}${']'.repeat(100_000)}}`;
    expect(readPartFile(text).refused).toContain('deep');
  });

  test('brackets inside texts do not count', () => {
    const text = writePartFile([{ ...specs[0]!, remark: `${'['.repeat(200)}\\"{` }]);
    expect(readPartFile(text).specs).toHaveLength(1);
  });

  test('with more parts than a shelf holds is refused', () => {
    const text = `[${'0,'.repeat(fileLimits.parts)}0]`;
    expect(readPartFile(text).refused).toContain('the most');
  });

  test('with more bytes than it may have is refused', () => {
    expect(readPartFile(' '.repeat(fileLimits.bytes + 1)).refused).toContain('MB');
  });

  test('cannot reach the workings of objects', () => {
    const text =
      '[{"kind":"fan","maker":"a","model":"b","size":120,"__proto__":{"polluted":1},"constructor":{"x":1}}]';
    const reading = readPartFile(text);
    expect(Object.prototype).not.toHaveProperty('polluted');
    expect(reading.specs.every((spec) => !Object.hasOwn(spec, '__proto__'))).toBe(true);
    expect(JSON.stringify(reading.specs)).not.toContain('polluted');
  });

  test('whatever the text, it is read without throwing', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json({ maxDepth: 12 })), (text) => {
        const reading = readPartFile(text);
        expect(reading.refused !== undefined || reading.badRows + reading.specs.length >= 0).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  test('complaints are listed up to a limit, and all bad rows are counted', () => {
    const reading = readPartFile(`[${Array.from({ length: 3000 }, () => '{"kind":"fan"}').join(',')}]`);
    expect(reading.badRows).toBe(3000);
    expect(reading.faults.length).toBe(fileLimits.faults);
  });
});
