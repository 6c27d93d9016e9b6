import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { PartSpec } from '../../geometry';
import { earlierVersions, readOwnParts } from '../../src/shelf/own-parts';
import {
  changeOwnPart,
  dropOwnParts,
  keepOwnPart,
  keepOwnParts,
  loadShelf,
  reloadOwnShelf,
  remark,
  restoreOwnParts,
  shelfStore,
} from '../../src/shelf/shelf-store';
import { closePlanDatabase, planDatabase } from '../../src/store/plan-database';

const fan = (model: string, size: 80 | 120 = 120): PartSpec => ({
  kind: 'fan',
  maker: 'Quayside',
  model,
  size,
});
const models = () => shelfStore.getState().entries.map(({ spec }) => spec.model);
const storedModels = async () => (await readOwnParts()).map(({ spec }) => spec.model).sort();

beforeEach(async () => {
  await closePlanDatabase();
  globalThis.indexedDB = new IDBFactory();
  shelfStore.setState({ entries: [], problems: [], loaded: false, remarks: new Map() });
});

describe('own parts', () => {
  test('many are kept in one go, and read again in bites', async () => {
    const many = Array.from({ length: 1203 }, (_, index) => fan(`Breeze ${index}`));
    const entries = await keepOwnParts(many);
    expect(entries).toHaveLength(1203);
    expect(new Set(entries.map(({ id }) => id)).size).toBe(1203);
    expect(await readOwnParts()).toHaveLength(1203);
    expect(models()).toHaveLength(1203);
  });

  test('when the browser refuses one of many, none is kept and none is shown', async () => {
    const refused = { ...fan('Refused'), toString: () => 'functions cannot be stored' } as PartSpec;
    await expect(keepOwnParts([fan('One'), refused, fan('Three')])).rejects.toThrow();
    await closePlanDatabase();
    expect(await storedModels()).toEqual([]);
    expect(models()).toEqual([]);
  });

  test('a change keeps the version before, with why it gave way', async () => {
    const { id } = await keepOwnPart(fan('Breeze'));
    expect(await changeOwnPart(id, fan('Breeze', 80), 1, 'read the label again')).toEqual({
      saved: true,
      revision: 2,
    });
    expect(shelfStore.getState().entries).toMatchObject([{ id, revision: 2, spec: { size: 80 } }]);
    expect(await earlierVersions(id)).toMatchObject([
      { revision: 1, spec: { size: 120 }, reason: 'read the label again' },
    ]);
  });

  test('fifty earlier versions are kept, the newest', async () => {
    const { id } = await keepOwnPart(fan('Breeze'));
    for (let revision = 1; revision <= 53; revision++)
      await changeOwnPart(id, fan(`Breeze ${revision}`), revision);
    const versions = await earlierVersions(id);
    expect(versions).toHaveLength(50);
    expect(versions[0]?.revision).toBe(53);
    expect(versions.at(-1)?.revision).toBe(4);
  });

  test('a change that starts from an older version writes nothing, and shows what stands', async () => {
    const { id } = await keepOwnPart(fan('Breeze'));
    await changeOwnPart(id, fan('Theirs'), 1);
    expect(await changeOwnPart(id, fan('Mine'), 1)).toEqual({ saved: false, found: 2 });
    expect(models()).toEqual(['Theirs']);
    expect(await storedModels()).toEqual(['Theirs']);
  });

  test('what is dropped can be put back with its history and remarks', async () => {
    const { id } = await keepOwnPart(fan('Breeze'));
    await changeOwnPart(id, fan('Gale'), 1);
    await remark(id, (before) => ({ ...before, favourite: true }));
    const dropped = await dropOwnParts([id]);
    expect(models()).toEqual([]);
    expect(await earlierVersions(id)).toEqual([]);
    expect(await (await planDatabase()).count('remarks')).toBe(0);
    await restoreOwnParts(dropped);
    expect(models()).toEqual(['Gale']);
    expect(await earlierVersions(id)).toHaveLength(1);
    expect(shelfStore.getState().remarks.get(id)).toEqual({ entry: id, favourite: true });
  });

  test('a record that is no part is left alone and not shown', async () => {
    await (await planDatabase()).put('ownParts', { id: 'odd', spec: { kind: 'fan' } } as never);
    await keepOwnPart(fan('Breeze'));
    await reloadOwnShelf();
    expect(models()).toEqual(['Breeze']);
    expect(await (await planDatabase()).count('ownParts')).toBe(2);
  });
});

describe('remarks', () => {
  test('two edits of different fields at once both stay', async () => {
    await Promise.all([
      remark('one', (before) => ({ ...before, favourite: true })),
      remark('one', (before) => ({ ...before, note: 'rattles' })),
    ]);
    expect(shelfStore.getState().remarks.get('one')).toEqual({
      entry: 'one',
      favourite: true,
      note: 'rattles',
    });
  });

  test('what could not be read again is not written', async () => {
    await remark('one', (before) => ({ ...before, note: 'good' }));
    await expect(remark('one', (before) => ({ ...before, price: { amount: Number.NaN } }))).rejects.toThrow();
    expect(shelfStore.getState().remarks.get('one')).toEqual({ entry: 'one', note: 'good' });
  });
});

describe('storage of the first version', () => {
  test('is carried over: plans as they were, parts with a revision of their own', async () => {
    const old = await openDB('elbowroom', 1, {
      upgrade(db) {
        db.createObjectStore('plans', { keyPath: 'id' });
        db.createObjectStore('ownParts', { keyPath: 'id' });
        db.createObjectStore('settings');
      },
    });
    const plan = { id: 'p', revision: 7, savedAt: 5, plan: { format: 1, name: 'Old', parts: {} } };
    await old.put('plans', plan);
    await old.put('ownParts', { id: 'own-1', spec: fan('Breeze') });
    await old.put('settings', 'p', 'last plan');
    old.close();
    expect(await readOwnParts()).toMatchObject([{ id: 'own-1', revision: 1, spec: fan('Breeze') }]);
    const database = await planDatabase();
    expect(database.version).toBe(2);
    expect(await database.get('plans', 'p')).toEqual(plan);
    expect(await database.get('settings', 'last plan')).toBe('p');
    expect(await changeOwnPart('own-1', fan('Gale'), 1)).toEqual({ saved: true, revision: 2 });
  });
});

describe('another tab', () => {
  const tell = (entries: readonly string[] | undefined) => {
    const channel = new BroadcastChannel('elbowroom shelf');
    channel.postMessage({ entries });
    return channel;
  };

  test('that adds, changes or drops a part is followed', async () => {
    vi.stubGlobal('fetch', async () => new Response('[]'));
    await loadShelf();
    vi.unstubAllGlobals();
    const { id } = await keepOwnPart(fan('Breeze'));
    const database = await planDatabase();
    await database.put('ownParts', { id, spec: fan('Theirs'), revision: 2, savedAt: 1 });
    await database.put('ownParts', { id: 'own-2', spec: fan('Another'), revision: 1, savedAt: 1 });
    const channel = tell([id, 'own-2']);
    await vi.waitFor(() => expect(models()).toEqual(['Another', 'Theirs']));
    await database.delete('ownParts', id);
    channel.postMessage({ entries: undefined });
    await vi.waitFor(() => expect(models()).toEqual(['Another']));
    channel.close();
  });
});
