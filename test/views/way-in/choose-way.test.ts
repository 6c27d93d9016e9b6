import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Plan, poseOnPath, readPlan } from '../../../geometry';
import { chooseWay, unitsOn } from '../../../src/views/way-in/choose-way';
import { momentWords, stationsOf } from '../../../src/views/way-in/way-stations';
import { answerAssembly, answerWay } from '../../../src/workers/answer-assembly';
import type { AssemblyAnswer } from '../../../src/workers/assembly-request';

function example(name: string): Plan {
  const read = readPlan(readFileSync(new URL(`../../../public/plans/${name}.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.plan;
}

describe('the ways of the demo plan', () => {
  const plan = example('demo');
  let answer: AssemblyAnswer;
  beforeAll(() => {
    answer = answerAssembly(plan);
  });

  it('every step has one that is certified free past what is there, and the drawing leaves out the rest', () => {
    for (const { key, unit, takenOff } of answer.subjects) {
      const way = chooseWay(answer, { kind: 'step', key });
      expect(way, key).toBeDefined();
      if (!way) continue;
      const path = answerWay(plan, way.question);
      expect(path.proof, `${key}: ${path.sentence}`).toBe('certified free');
      expect(way.takenOff).toBe(takenOff);
      expect(way.moving.has(unit)).toBe(true);
      for (const id of way.moving) expect(way.absent.has(id), `${key} ${id}`).toBe(false);
    }
  });

  it('on the bench only what lies there is shown, and no enclosure', () => {
    const way = chooseWay(answer, { kind: 'part', part: 'processor' });
    expect(way?.enclosure).toBe(false);
    const shown = answer.units.filter(({ id }) => !way?.absent.has(id)).map(({ id }) => id);
    expect(shown).toContain('board');
    const onBoard = unitsOn(answer.units, 'board');
    for (const id of shown) expect(onBoard.has(id), id).toBe(true);
  });

  it('a part goes in as the sheet has it: what comes later is left out', () => {
    const way = chooseWay(answer, { kind: 'part', part: 'drive' });
    expect(way?.absent.has('cooler')).toBe(true);
    expect(chooseWay(answer, { kind: 'part', part: 'enclosure' })).toBeUndefined();
    expect(chooseWay(answer, { kind: 'step', key: 'put in nobody' })).toBeUndefined();
  });
});

describe('a plan that cannot be built', () => {
  it('shows how far the card comes, past everything else in its place, and what it meets', () => {
    const plan = example('blocked');
    const answer = answerAssembly(plan);
    const way = chooseWay(answer, { kind: 'part', part: 'card' });
    expect(way?.step).toBeUndefined();
    expect(way?.absent.has('enclosure/side panel')).toBe(true);
    expect(way?.absent.has('cooler')).toBe(false);
    if (!way) return;
    const path = answerWay(plan, way.question);
    expect(path.furthest?.name).toBe('the block crossbar');
    const reached = poseOnPath(path, path.furthest?.t ?? 1).translation;
    expect(Math.hypot(...reached)).toBeCloseTo(path.furthest?.left ?? 0, 3);
    expect(path.sentence).toContain('within these bounds');
  });
});

describe('time along a path', () => {
  const path = {
    reach: 100,
    motions: [
      { kind: 'slide', by: [0, 0, -300] },
      { kind: 'turn', point: [0, 0, 0], axis: [0, 1, 0], degrees: -(300 / 100) * (180 / Math.PI) * (1 / 3) },
    ],
  } as const;

  it('is shared by the length of each motion: 300 mm of slide, 100 mm of arc', () => {
    expect(stationsOf(path, 1)).toEqual([0, expect.closeTo(0.75, 9), 1]);
    expect(stationsOf(path, 0.5)).toEqual([0, 0.5]);
  });

  it('says what is being done and how much of it is left', () => {
    expect(momentWords(path, 0)).toBe('Sliding, 300 mm to go');
    expect(momentWords(path, 0.375)).toBe('Sliding, 150 mm to go');
    expect(momentWords(path, 0.875)).toBe('Turning, 29° to go');
    expect(momentWords(path, 1)).toBe('Seated');
  });
});
