import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { partKinds } from '../../geometry';
import { guessKind } from '../../geometry/sheet-text/guess-kind';
import { readSheets, scoreSheet } from './score-sheets';
import { sheetReport } from './sheet-report';

const sheets = readSheets();
const readme = new URL('./README.md', import.meta.url);
const MARKS = /(<!-- table -->\n)[\s\S]*(\n<!-- end of table -->)/;

test('there are at least sixty sheets, of every kind that has sheets, in at least four languages', () => {
  expect(sheets.length).toBeGreaterThanOrEqual(60);
  const kinds = new Set(sheets.map(({ truth }) => truth.kind));
  expect([...kinds].toSorted()).toEqual(partKinds.filter((kind) => kind !== 'adapter').toSorted());
  expect(new Set(sheets.map(({ truth }) => truth.language)).size).toBeGreaterThanOrEqual(4);
});

describe('no value is wrong in silence', () => {
  test.each(sheets)('$name', (sheet) => {
    expect(scoreSheet(sheet).filter(({ verdict }) => verdict === 'wrong')).toEqual([]);
  });
});

test('what a sheet leaves open is asked', () => {
  const open = sheets.flatMap(scoreSheet).filter(({ isQuestion }) => isQuestion);
  expect(open.filter(({ verdict }) => verdict !== 'right')).toEqual([]);
  expect(open.length).toBeGreaterThan(30);
});

test('nine tenths of what is stated is read, and the table in the README is what this reader does', () => {
  const stated = sheets.flatMap(scoreSheet).filter(({ isQuestion }) => !isQuestion);
  const right = stated.filter(({ verdict }) => verdict === 'right').length;
  expect(right / stated.length).toBeGreaterThan(0.9);
  const text = readFileSync(readme, 'utf8');
  if (process.env.WRITE_REPORT) writeFileSync(readme, text.replace(MARKS, `$1${sheetReport()}$2`));
  expect(readFileSync(readme, 'utf8')).toContain(sheetReport());
});

test('a guess at the kind is right or not made', () => {
  const guesses = sheets.map(({ text, truth }) => ({ guess: guessKind(text), kind: truth.kind }));
  const made = guesses.filter(({ guess }) => guess !== undefined);
  const wrong = made.filter(({ guess, kind }) => guess !== kind);
  expect(made.length).toBeGreaterThan(sheets.length / 3);
  expect(wrong.length / made.length).toBeLessThan(0.1);
});
