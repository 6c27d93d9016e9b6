import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { freePart, placePlan, readPlan, rotationAbout, solve } from '../../../geometry';
import { faceWords } from '../../../src/views/clearances/face-words';

const read = readPlan(readFileSync('public/plans/demo.json', 'utf8'));
if (!read.ok) throw new Error('the demo plan cannot be read');
const scene = placePlan(read.plan);

describe('a face in words', () => {
  test('looks where a builder sees it look, however the part is turned', () => {
    // Height above the board is the cooler's own z, and the card lies on its side: its own -y looks down.
    expect(faceWords(scene, { part: 'cooler', box: 'fin stack 1', face: '+z' })).toBe(
      'Cooler, fin stack 1, face towards the side panel',
    );
    expect(faceWords(scene, { part: 'card', box: 'shroud', face: '-y' })).toBe('Card, shroud, lower face');
    expect(faceWords(scene, { part: 'card', box: 'shroud', face: '+x' })).toBe(
      'Card, shroud, face towards the front',
    );
    expect(faceWords(scene, { part: 'drive-2', box: 'case', face: '+z' })).toBe(
      'Drive 2, case, face towards the back panel',
    );
  });

  test('of a sheet is one face of one sheet, in however many pieces it is cut', () => {
    expect(faceWords(scene, { part: 'enclosure', box: 'tray 1', face: '+z' })).toMatch(
      /^Enclosure, tray, face/,
    );
    expect(faceWords(scene, { part: 'enclosure', box: 'side panel', face: '-z' })).toBe(
      'Enclosure, side panel, face towards the tray',
    );
  });

  test('askew is said to be so', () => {
    const pose = { rotation: rotationAbout('z', 30), translation: [0, 0, 0] } as const;
    const askew = placePlan(freePart(read.plan, 'fan', pose));
    expect(faceWords(askew, { part: 'fan', box: 'frame', face: '+x' })).toBe('Fan 1, frame, slanted face');
  });

  test('never shows the axes of the program', () => {
    for (const { from, to } of solve(scene).clearances)
      for (const face of [from, to]) expect(faceWords(scene, face)).not.toMatch(/[+-][xyz]/);
  });
});
