import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { strToU8, zipSync } from 'fflate';
import { beforeEach, describe, expect, test } from 'vitest';
import type { PartSpec } from '../../geometry';
import { readLibrary, restoreLibrary, undoRestore } from '../../src/shelf/library-backup';
import { type Library, packLibrary, unpackLibrary } from '../../src/shelf/library-file';
import { earlierVersions } from '../../src/shelf/own-parts';
import { keepPhoto } from '../../src/shelf/photos';
import { recordEvidence, takeIntoSheet } from '../../src/shelf/record-evidence';
import { changeOwnPart, keepOwnPart, keepOwnParts, remark, shelfStore } from '../../src/shelf/shelf-store';
import { closePlanDatabase, planDatabase } from '../../src/store/plan-database';
import { addPlan, findPlan, listPlans, putPlan } from '../../src/store/plan-library';

const fan = (model: string, thickness = 25): PartSpec => ({
  kind: 'fan',
  maker: 'Quayside',
  model,
  size: 120,
  thickness,
});
const plan = (name: string) => ({ format: 1 as const, name, parts: {} });
const picture = { type: 'image/jpeg', width: 2, height: 2, bytes: new Uint8Array([1, 2, 3]) } as const;

async function freshDatabase(): Promise<void> {
  await closePlanDatabase();
  globalThis.indexedDB = new IDBFactory();
  shelfStore.setState({ entries: [], problems: [], loaded: false, remarks: new Map() });
}

beforeEach(freshDatabase);

/** A library with one of everything. */
async function fill(): Promise<{ planId: string; partId: string }> {
  const planId = await addPlan(plan('Chart table'));
  const { id: partId } = await keepOwnPart(fan('Breeze'));
  await changeOwnPart(partId, fan('Breeze', 26), 1, 'label read again');
  await recordEvidence(partId, {
    title: 'Thickness',
    path: 'thickness',
    value: 26.1,
    unit: 'mm',
    plusMinus: 0.05,
    who: 'M.',
    when: '2026-03-01',
    how: 'caliper',
    photo: picture,
  });
  await remark(partId, (before) => ({
    ...before,
    favourite: true,
    price: { amount: 12.5, currency: 'EUR' },
  }));
  return { planId, partId };
}

function unpacked(data: Uint8Array): Library {
  const read = unpackLibrary(data);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.library;
}

describe('the library as a file', () => {
  test('comes back as it was, byte for byte', async () => {
    await fill();
    const library = await readLibrary();
    expect(library.photos).toHaveLength(1);
    expect(library.remarks[0]?.evidence).toHaveLength(1);
    expect(unpacked(packLibrary(library))).toEqual(library);
  });

  const good: Library = { plans: [], parts: [], versions: [], remarks: [], photos: [] };
  const textFile = (value: unknown, more: Record<string, Uint8Array> = {}) =>
    zipSync({ 'library.json': strToU8(typeof value === 'string' ? value : JSON.stringify(value)), ...more });
  const part = { id: 'a', spec: fan('Breeze'), revision: 1, savedAt: 1 };
  const described = { id: 'p', entry: 'a', type: 'image/jpeg', width: 2, height: 2 };

  test.each<[string, Uint8Array, string, RegExp]>([
    ['no archive', strToU8('{"format":1}'), 'file', /not a zip archive/],
    ['nothing', new Uint8Array(), 'file', /not a zip archive/],
    ['another archive', zipSync({ 'notes.txt': strToU8('x') }), 'file', /has no library\.json/],
    [
      'half of it',
      packLibrary({ ...good, parts: [part] }).slice(0, 150),
      'file',
      /too early|damaged|cut off/,
    ],
    ['no JSON', textFile('{"format":'), 'library.json', /not JSON/],
    ['deep nesting', textFile('['.repeat(100_000)), 'library.json', /not JSON/],
    ['a list', textFile([]), 'library.json', /object/],
    ['another format', textFile({ ...good, format: 99 }), 'format', /one of 1/],
    [
      'a field nobody knows',
      textFile({ ...good, format: 1, extra: 1 }),
      'library.json',
      /unknown field 'extra'/,
    ],
    [
      'a part that is none',
      textFile({
        ...good,
        format: 1,
        parts: [part, { ...part, id: 'b', spec: { ...part.spec, size: 121 } }],
      }),
      'parts.1.spec.size',
      /121/,
    ],
    [
      'a figure without end',
      textFile(
        JSON.stringify({ ...good, format: 1, parts: [part] }).replace('"savedAt":1', '"savedAt":1e999'),
      ),
      'parts.0.savedAt',
      /./,
    ],
    [
      'a plan that is none',
      textFile({
        ...good,
        format: 1,
        plans: [{ id: 'a', revision: 1, savedAt: 1, plan: { format: 1, parts: {} } }],
      }),
      'plans.0.plan.name',
      /missing/,
    ],
    [
      'a photo without its picture',
      textFile({ ...good, format: 1, photos: [described] }),
      'photos.0',
      /no picture/,
    ],
    [
      'a photo that is too large',
      textFile({ ...good, format: 1, photos: [described] }, { 'photos/p': new Uint8Array(1_000_001) }),
      'file',
      /larger than 1000000/,
    ],
    [
      'too many files',
      zipSync(Object.fromEntries(Array.from({ length: 5100 }, (_, i) => [`${i}`, new Uint8Array()]))),
      'file',
      /too many/,
    ],
  ])('with %s is refused by name', (_, data, path, message) => {
    const read = unpackLibrary(data);
    if (read.ok) throw new Error('it was taken');
    expect(read.problems[0]?.path).toBe(path);
    expect(read.problems[0]?.message).toMatch(message);
  });

  test.each([
    ['says so', (data: Uint8Array) => data],
    [
      'lies about it',
      (data: Uint8Array) => {
        // The size before packing, in the header of the first file (APPNOTE 6.3.10, 4.3.7, offset 22).
        new DataView(data.buffer).setUint32(22, 10, true);
        return data;
      },
    ],
  ])('that would unpack to more than it may, and %s, is stopped', (_, change) => {
    const bomb = change(zipSync({ 'library.json': [new Uint8Array(110_000_000), { level: 9 }] }));
    expect(bomb.length).toBeLessThan(500_000);
    const read = unpackLibrary(bomb);
    expect(read).toMatchObject({
      ok: false,
      problems: [{ path: 'file', message: expect.stringMatching(/larger/) }],
    });
  });
});

describe('restoring', () => {
  test('by replacing: what was here is gone, and comes back when it is taken back', async () => {
    const { partId } = await fill();
    const saved = unpacked(packLibrary(await readLibrary()));
    await freshDatabase();
    await keepOwnPart(fan('Local'));
    const local = await addPlan(plan('Local'));
    const before = await restoreLibrary(saved, 'replace');
    expect((await listPlans()).map(({ name }) => name)).toEqual(['Chart table']);
    expect(await readLibrary()).toEqual(saved);
    expect(await earlierVersions(partId)).toHaveLength(1);
    await undoRestore(before);
    expect((await listPlans()).map(({ id }) => id)).toEqual([local]);
    expect((await readLibrary()).parts.map(({ spec }) => spec.model)).toEqual(['Local']);
    expect((await readLibrary()).photos).toEqual([]);
  });

  test('by replacing raises the revision of a plan that is open in a tab, so that the tab does not overwrite it', async () => {
    const { planId } = await fill();
    const saved = await readLibrary();
    await putPlan(planId, plan('Edited'), 1);
    await restoreLibrary(saved, 'replace');
    expect(await putPlan(planId, plan('Overwritten'), 2)).toEqual({ saved: false, found: 3 });
    expect((await findPlan(planId))?.plan.name).toBe('Chart table');
  });

  test('by merging: the same twice changes nothing', async () => {
    await fill();
    const saved = await readLibrary();
    await restoreLibrary(unpacked(packLibrary(saved)), 'merge');
    expect(await readLibrary()).toEqual(saved);
  });

  test('by merging: what differs comes beside as a copy with its remarks, what is here stays', async () => {
    const { planId, partId } = await fill();
    const saved = await readLibrary();
    await changeOwnPart(partId, fan('Breeze', 30), 2);
    await putPlan(planId, plan('Edited here'), 1);
    await restoreLibrary(saved, 'merge');
    const { plans, parts, remarks } = await readLibrary();
    expect(plans.map((one) => one.plan.name).sort()).toEqual(['Chart table, from the backup', 'Edited here']);
    expect(parts.map(({ spec }) => (spec.kind === 'fan' ? spec.thickness : 0)).sort()).toEqual([26, 30]);
    expect(parts.find(({ id }) => id === partId)?.revision).toBe(3);
    const copy = parts.find(({ id }) => id !== partId);
    expect(remarks.find(({ entry }) => entry === copy?.id)?.favourite).toBe(true);
  });

  test('that fails midway leaves everything as it was', async () => {
    await fill();
    const saved = await readLibrary();
    const odd = { ...saved.parts[0]!, id: 'own-odd', spec: { ...fan('Odd'), run: () => 0 } as never };
    await expect(restoreLibrary({ ...saved, plans: [], parts: [odd] }, 'replace')).rejects.toThrow();
    expect(await readLibrary()).toEqual(saved);
  });

  test('fifty thousand parts go out and come in', async () => {
    await keepOwnParts(Array.from({ length: 50_000 }, (_, index) => fan(`Breeze ${index}`)));
    const library = await readLibrary();
    expect(unpacked(packLibrary(library)).parts).toHaveLength(50_000);
  });
});

describe('a measurement', () => {
  const measured = {
    title: 'Thickness',
    path: 'thickness',
    value: 25.4,
    unit: 'mm',
    who: 'M.',
    when: '2026-03-01',
    how: 'caliper',
  } as const;

  test('goes into the sheet of an own part, with who, when and how as its note', async () => {
    const entry = await keepOwnPart(fan('Breeze'));
    expect(await takeIntoSheet(entry, { ...measured, plusMinus: 0.05 })).toBeUndefined();
    expect(shelfStore.getState().entries[0]?.spec).toMatchObject({
      thickness: { value: 25.4, plusMinus: 0.05, source: 'measured', note: 'caliper, M., 2026-03-01' },
    });
    expect((await earlierVersions(entry.id))[0]?.reason).toBe('Thickness measured');
    expect(await takeIntoSheet(entry, measured)).toMatch(/Another tab/);
  });

  test('that cannot be true is refused in words, and changes nothing', async () => {
    const entry = await keepOwnPart(fan('Breeze'));
    expect(await takeIntoSheet(entry, { ...measured, value: -1 })).toEqual(expect.any(String));
    expect(shelfStore.getState().entries[0]?.revision).toBe(1);
  });

  test('that cannot be kept leaves no photo behind', async () => {
    await expect(recordEvidence('a', { ...measured, when: 'yesterday', photo: picture })).rejects.toThrow();
    expect(await (await planDatabase()).count('photos')).toBe(0);
    await keepPhoto('a', picture);
    expect(await (await planDatabase()).count('photos')).toBe(1);
  });
});
