import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PartKind } from '../../../geometry';
import type { FileReading } from '../../../src/shelf/part-files/part-file';
import { lookAtTable, readTable } from '../../../src/shelf/part-files/read-table';
import { leavesOf } from '../../../src/shelf/part-files/spec-leaves';
import { writeTable } from '../../../src/shelf/part-files/write-table';
import { everyShelfEntry } from '../../views/every-shelf-entry';

const specs = everyShelfEntry.map(([, spec]) => spec);

function look(text: string, kind?: PartKind) {
  const found = lookAtTable(text, kind);
  if (typeof found === 'string') throw new Error(found);
  return found;
}

function read(text: string, kind?: PartKind): FileReading {
  const { plan, hasUnitRow } = look(text, kind);
  return readTable(text, plan, hasUnitRow);
}

const lines = (...all: string[]) => `${all.join('\r\n')}\r\n`;

describe('a table as this page writes it', () => {
  test('gives every part of the shelf back equal', () => {
    const reading = read(writeTable(specs));
    expect(reading.faults).toEqual([]);
    expect(reading.specs).toEqual(specs);
  });

  test('has every column matched by itself', () => {
    expect(look(writeTable(specs)).columns.filter(({ path }) => path === undefined)).toEqual([]);
  });

  test('cells that a spreadsheet would run are written as text, and come back as they were', () => {
    const remarks = ['=1+1', '+A1', '-A1', '@SUM(A1)', '\tx', '=HYPERLINK("x")'];
    const nasty = remarks.map((remark) => ({ ...specs.find(({ kind }) => kind === 'fan')!, remark }));
    const text = writeTable(nasty);
    for (const cell of text.split(/[,\n]/)) expect(cell).not.toMatch(/^"?[=+@]/);
    expect(read(text).specs.map(({ remark }) => remark?.trim())).toEqual(
      remarks.map((remark) => remark.trim()),
    );
  });
});

describe('a table from elsewhere', () => {
  const fans = lines(
    'Brand;Model name;Size (mm);Thickness [mm];RPM;Airflow (CFM);Noise dB(A);Weight (kg);Colour',
    'Tarnwater;Reed 12;120;25;1.500;56,3;24,6;0,15;grey',
    'Tarnwater;Reed 14;140;25;1.200;70,8;22,1;0,18;grey',
  );

  test('is matched by its words, units and decimal commas', () => {
    const { columns } = look(fans, 'fan');
    expect(columns.map(({ path }) => path)).toEqual([
      'maker',
      'model',
      'size',
      'thickness',
      'speed',
      'flow',
      'sound',
      'mass',
      undefined,
    ]);
    const [first] = read(fans, 'fan').specs;
    expect(first).toMatchObject({
      kind: 'fan',
      maker: 'Tarnwater',
      size: 120,
      speed: 1500,
      sound: 24.6,
      mass: 150,
    });
    // 1 CFM is 0.3048³ x 60 m³/h.
    expect(first?.kind === 'fan' && first.flow).toBeCloseTo(56.3 * 0.3048 ** 3 * 60, 4);
  });

  test('may carry its units in a row of their own, and inches become millimetres', () => {
    const text = lines('model,maker,size,thickness,speed', ',,mm,in,rpm', 'A,Tarnwater,120,1,1500');
    expect(look(text, 'fan').hasUnitRow).toBe(true);
    expect(read(text, 'fan').specs).toEqual([
      { kind: 'fan', maker: 'Tarnwater', model: 'A', size: 120, thickness: 25.4, speed: 1500 },
    ]);
  });

  test('may carry a unit in each cell', () => {
    const text = lines('maker,model,size,thickness', 'Tarnwater,A,120 mm,0.984 in');
    const [spec] = read(text, 'fan').specs;
    expect(spec?.kind === 'fan' && spec.thickness).toBeCloseTo(24.9936, 4);
  });

  test('a bad row is named by its line, field and cell, and never stops the good ones', () => {
    const text = lines(
      'maker,model,size,thickness',
      'Tarnwater,A,120,25',
      'Tarnwater,B,121,25',
      ',C,120,25',
      'Tarnwater,D,120,NaN',
      'Tarnwater,E,120,Infinity',
      'Tarnwater,F,120,-3',
      'Tarnwater,G,120,25',
    );
    const reading = read(text, 'fan');
    expect(reading.specs.map(({ model }) => model)).toEqual(['A', 'G']);
    expect(reading.badRows).toBe(5);
    expect(reading.faults.map(({ row, field }) => [row, field])).toEqual([
      [3, 'size'],
      [4, 'maker'],
      [5, 'thickness'],
      [6, 'thickness'],
      [7, 'thickness'],
    ]);
    expect(reading.faults[2]?.message).toContain("'NaN'");
  });

  test('a number that can be read in two ways is not guessed at', () => {
    const text = lines('maker,model,size,speed', 'Tarnwater,A,120,1.500');
    expect(read(text, 'fan').faults[0]).toMatchObject({
      row: 2,
      field: 'speed',
      message: expect.stringContaining('two ways'),
    });
  });

  test('a row whose kind is none, or that has a field of another kind, is refused by name', () => {
    const text = lines('kind,maker,model,size,row', 'fan,T,A,120,', 'toaster,T,B,120,', 'fan,T,C,120,240');
    const reading = read(text);
    expect(reading.specs).toHaveLength(1);
    expect(reading.faults.map(({ row, field }) => [row, field])).toEqual([
      [3, 'kind'],
      [4, 'row'],
    ]);
  });

  test('script in a name is a name', () => {
    const text = lines('maker,model,size', '<script>alert(1)</script>,A,120');
    expect(read(text, 'fan').specs[0]?.maker).toBe('<script>alert(1)</script>');
  });
});

describe('a hostile table', () => {
  test('cannot reach the workings of objects by its header', () => {
    const text = lines(
      'maker,model,size,__proto__.polluted,constructor.prototype.polluted,a.__proto__.b',
      'T,A,120,1,1,1',
    );
    read(text, 'fan');
    expect(Object.prototype).not.toHaveProperty('polluted');
    expect(look(text, 'fan').columns.filter(({ path }) => path?.includes('proto'))).toEqual([]);
    read(`kind,${text}`);
    expect(Object.prototype).not.toHaveProperty('polluted');
  });

  test('with too many columns, rows or one endless cell is refused or contained', () => {
    expect(lookAtTable(`${'a,'.repeat(700)}\n${'1,'.repeat(700)}\n`, 'fan')).toContain('columns');
    const many = lines('maker,model,size', ...Array.from({ length: 60_050 }, () => 'T,A,120'));
    expect(read(many, 'fan').refused).toContain('more than');
    const endless = lines('maker,model,size', `"${'x'.repeat(1_000_000)}`);
    expect(lookAtTable(endless, 'fan')).toContain('no row');
    const long = lines('maker,model,size', `${'x'.repeat(5000)},A,120`, 'T,A,120');
    expect(read(long, 'fan')).toMatchObject({ badRows: 1, specs: [{ maker: 'T' }] });
  });

  test('whatever the text, it is looked at and read without throwing', () => {
    const cell = fc.oneof(
      fc.string(),
      fc.constantFrom('maker', 'size (mm)', '"', ',', ';', '\t', '1.200', '=1', '\u0000'),
    );
    const text = fc.array(
      fc.array(cell, { maxLength: 6 }).map((cells) => cells.join(',')),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(text, (rows) => {
        const found = lookAtTable(rows.join('\n'), 'fan');
        if (typeof found !== 'string') readTable(rows.join('\n'), found.plan, found.hasUnitRow);
      }),
      { numRuns: 500 },
    );
  });
});

test('the columns a table may have are all fields of the spec', () => {
  expect(leavesOf('fan').get('size')).toMatchObject({ type: 'choice', unit: 'mm' });
  expect(leavesOf('card').get('power.*.type')).toMatchObject({ type: 'choice' });
  expect(leavesOf('cooler').get('style')?.options).toEqual(['tower', 'top flow', 'liquid block']);
  expect(leavesOf('board').get('memory.at.*')).toMatchObject({ type: 'quantity' });
});
