import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, test } from 'vitest';
import type { PartSpec, PlanPart } from '../../geometry';
import { findDuplicates, mergeRemarks } from '../../src/shelf/duplicates';
import { mergeEntries, takeMergeBack } from '../../src/shelf/merge-entries';
import { findPhoto, keepPhoto, sizeWithin } from '../../src/shelf/photos';
import { entryOfPart, findShelfChange, takeOverFromShelf } from '../../src/shelf/shelf-change';
import type { ShelfEntry } from '../../src/shelf/shelf-entry';
import { changeOwnPart, keepOwnPart, remark, shelfStore } from '../../src/shelf/shelf-store';
import { differencesOf, isSameSpec } from '../../src/shelf/spec-differences';
import { findUses } from '../../src/shelf/where-used';
import { closePlanDatabase, planDatabase } from '../../src/store/plan-database';
import { addPlan } from '../../src/store/plan-library';
import { openPlan, planStore, undo } from '../../src/store/plan-store';

const fan = (model: string, thickness = 25, maker = 'Quayside'): PartSpec => ({
  kind: 'fan',
  maker,
  model,
  size: 120,
  thickness,
});
const entry = (id: string, spec: PartSpec, own = true): ShelfEntry => ({ id, spec, own });
const stateOf = (id: string) => shelfStore.getState().entries.find((one) => one.id === id);

beforeEach(async () => {
  await closePlanDatabase();
  globalThis.indexedDB = new IDBFactory();
  shelfStore.setState({ entries: [], problems: [], loaded: false, remarks: new Map() });
});

describe('duplicates', () => {
  const groups = (...entries: readonly ShelfEntry[]) =>
    findDuplicates(entries).map(({ entries: found, by }) => [by, ...found.map(({ id }) => id)]);

  test('are of one maker and model, however it is spelled', () => {
    expect(groups(entry('a', fan('Sea Breeze')), entry('b', fan('sea-breeze', 15)))).toEqual([
      ['name', 'a', 'b'],
    ]);
    expect(groups(entry('a', fan('Sea Breeze')), entry('b', fan('SeaBreeze')))).toEqual([
      ['equal', 'a', 'b'],
    ]);
  });

  test('or the same figures under another name, in any order of the fields', () => {
    const turned: PartSpec = { thickness: 25, size: 120, model: 'Gale', maker: 'Marram', kind: 'fan' };
    expect(groups(entry('a', fan('Breeze')), entry('b', turned), entry('c', fan('Calm', 15)))).toEqual([
      ['equal', 'a', 'b'],
    ]);
  });

  test('are not told of when none of them is own: nothing could be let go', () => {
    expect(groups(entry('a', fan('Breeze'), false), entry('b', fan('Breeze'), false))).toEqual([]);
    expect(groups(entry('a', fan('Breeze'), false), entry('b', fan('Breeze')))).toHaveLength(1);
  });

  test('merged: remarks and photos come together, plans still find the part, and all of it can be undone', async () => {
    const [one, two] = [await keepOwnPart(fan('Breeze')), await keepOwnPart(fan('Breeze', 15))];
    await remark(one.id, (before) => ({ ...before, note: 'mine' }));
    await remark(two.id, (before) => ({ ...before, note: 'theirs', mass: 140, favourite: true }));
    const photo = { type: 'image/jpeg', width: 2, height: 2, bytes: new Uint8Array([1, 2]) } as const;
    const picture = await keepPhoto(two.id, photo);
    const part: PlanPart = { spec: two.spec, shelf: two.id, placement: { at: [0, 0, 0] } };
    const planId = await addPlan({ format: 1, name: 'User', parts: { fan: part } });

    const merged = await mergeEntries(one.id, [two.id]);
    const { entries, remarks } = shelfStore.getState();
    expect(entries.map(({ id }) => id)).toEqual([one.id]);
    expect(remarks.get(one.id)).toEqual({
      entry: one.id,
      note: 'mine\ntheirs',
      mass: 140,
      favourite: true,
      formerIds: [two.id],
    });
    expect(await findPhoto(picture)).toMatchObject({ entry: one.id });
    expect(entryOfPart(part, entries, remarks)?.id).toBe(one.id);
    expect(await findUses(one, remarks.get(one.id)?.formerIds)).toEqual([
      { planId, planName: 'User', count: 1 },
    ]);

    await takeMergeBack(merged);
    expect(stateOf(two.id)?.spec).toEqual(two.spec);
    expect(shelfStore.getState().remarks.get(one.id)).toEqual({ entry: one.id, note: 'mine' });
    expect(shelfStore.getState().remarks.get(two.id)?.mass).toBe(140);
    expect(await findPhoto(picture)).toMatchObject({ entry: two.id });
  });

  test('remarks that repeat are not doubled', () => {
    const both = { entry: 'a', note: 'same', formerIds: ['x'] };
    expect(mergeRemarks(both, { ...both, entry: 'b' })).toEqual(both);
  });
});

describe('differences between sheets', () => {
  test('name the field and say what it was and is', () => {
    const before = fan('Breeze');
    const after: PartSpec = {
      ...fan('Breeze'),
      thickness: { value: 25.3, plusMinus: 0.2, source: 'measured' },
      mass: 150,
    } as PartSpec;
    expect(differencesOf(before, after)).toEqual([
      { path: 'thickness', title: 'Thickness', before: '25', after: '25.3 ± 0.2 (measured)' },
      { path: 'mass', title: 'Mass', before: undefined, after: '150' },
    ]);
    expect(isSameSpec(before, { ...fan('Breeze') })).toBe(true);
  });
});

describe('a part that the plan took from the shelf', () => {
  test('is told to have changed on the shelf, with the difference, and takes it over in one undoable step', async () => {
    const { id, spec } = await keepOwnPart(fan('Breeze'));
    const part: PlanPart = { spec, shelf: id, placement: { at: [1, 2, 3] } };
    openPlan('p', { format: 1, name: 'User', parts: { fan: part } });
    expect(await findShelfChange(part, stateOf(id)!)).toBeUndefined();

    await changeOwnPart(id, fan('Breeze', 27), 1);
    const now = stateOf(id)!;
    expect(await findShelfChange(part, now)).toMatchObject({
      changed: 'shelf',
      differences: [{ path: 'thickness', before: '25', after: '27' }],
    });
    takeOverFromShelf('fan', now);
    const taken = planStore.getState().plan.parts.fan;
    expect(taken).toEqual({ spec: fan('Breeze', 27), shelf: id, placement: { at: [1, 2, 3] } });
    undo();
    expect(planStore.getState().plan.parts.fan).toBe(part);
  });

  test('whose figures were edited in the plan is told apart from that', async () => {
    const { id } = await keepOwnPart(fan('Breeze'));
    const part: PlanPart = { spec: fan('Breeze', 26), shelf: id, placement: { at: [0, 0, 0] } };
    expect(await findShelfChange(part, stateOf(id)!)).toMatchObject({ changed: 'plan' });
  });

  test('of another kind is not compared', async () => {
    const part: PlanPart = {
      spec: { kind: 'memory', maker: 'A', model: 'B', form: 'DIMM', thickness: 4 },
      shelf: 'x',
      placement: { at: [0, 0, 0] },
    };
    expect(await findShelfChange(part, entry('x', fan('Breeze')))).toBeUndefined();
  });
});

describe('photos', () => {
  test.each([
    [
      [4000, 3000],
      [1600, 1200],
    ],
    [
      [3000, 4000],
      [1200, 1600],
    ],
    [
      [800, 600],
      [800, 600],
    ],
    [
      [10_000, 1],
      [1600, 1],
    ],
  ])('%j becomes %j', ([width, height], [w, h]) => {
    expect(sizeWithin(width!, height!)).toEqual({ width: w, height: h });
  });

  test('one that is too large is not kept', async () => {
    const photo = { type: 'image/jpeg', width: 2, height: 2, bytes: new Uint8Array(1_000_001) } as const;
    await expect(keepPhoto('a', photo)).rejects.toThrow(/1000000/);
    expect(await (await planDatabase()).count('photos')).toBe(0);
  });
});
