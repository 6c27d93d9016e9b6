import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test } from 'vitest';
import { readOwnParts } from '../../../src/shelf/own-parts';
import { ImportSession } from '../../../src/shelf/part-files/answer-import';
import { fileLimits } from '../../../src/shelf/part-files/file-limits';
import type { ImportReply } from '../../../src/shelf/part-files/import-request';
import { readPartFile } from '../../../src/shelf/part-files/part-file';
import { recallColumns, rememberColumns } from '../../../src/shelf/part-files/remembered-columns';
import type { Column } from '../../../src/shelf/part-files/table-columns';
import { closePlanDatabase } from '../../../src/store/plan-database';

afterEach(async () => {
  await closePlanDatabase();
  await new Promise((resolve) => {
    indexedDB.deleteDatabase('elbowroom').onsuccess = resolve;
  });
});

const table = ['maker,model,size', 'Tarnwater,A,120', 'Tarnwater,B,121', 'Tarnwater,C,140'].join('\n');

function begin() {
  const told: ImportReply[] = [];
  const session = new ImportSession((reply) => told.push(reply));
  const look = (text: string, name = 'fans.csv') =>
    session.answer({ type: 'look', file: new Blob([text]), name, kind: 'fan' });
  return { session, told, look };
}

async function readWhole(session: ImportSession, reply: ImportReply): Promise<ImportReply> {
  if (reply.type !== 'table') throw new Error(`no table: ${reply.type}`);
  return session.answer({ type: 'read', plan: reply.plan, hasUnitRow: reply.look.hasUnitRow });
}

describe('a table on its way to the shelf', () => {
  test('is checked, then kept but for its bad row, then taken back', async () => {
    const { session, look } = begin();
    const report = await readWhole(session, await look(table));
    expect(report).toMatchObject({
      type: 'report',
      report: { good: 2, badRows: 1, faults: [{ row: 3, field: 'size' }] },
    });
    expect(await readOwnParts()).toEqual([]);
    expect(await session.answer({ type: 'keep' })).toEqual({ type: 'kept', count: 2 });
    expect((await readOwnParts()).map(({ spec }) => spec.model).toSorted()).toEqual(['A', 'C']);
    expect(await session.answer({ type: 'undo' })).toEqual({ type: 'undone', count: 2 });
    expect(await readOwnParts()).toEqual([]);
  });

  test('taking it back leaves what was there before', async () => {
    const first = begin();
    await readWhole(first.session, await first.look('maker,model,size\nTarnwater,Before,120'));
    await first.session.answer({ type: 'keep' });
    const second = begin();
    await readWhole(second.session, await second.look(table));
    await second.session.answer({ type: 'keep' });
    await second.session.answer({ type: 'undo' });
    expect((await readOwnParts()).map(({ spec }) => spec.model)).toEqual(['Before']);
  });

  test('a refused file changes nothing', async () => {
    const { session, look } = begin();
    const reply = await look('{"format": 99, "parts": []}', 'parts.json');
    expect(reply).toMatchObject({ type: 'report', report: { good: 0, refused: expect.any(String) } });
    expect(await session.answer({ type: 'keep' })).toEqual({ type: 'kept', count: 0 });
    expect(await readOwnParts()).toEqual([]);
  });

  test('a file too large is refused by its size, unread', async () => {
    const { session } = begin();
    const file = {
      size: fileLimits.bytes + 1,
      text: () => Promise.reject(new Error('was read')),
    } as unknown as Blob;
    const reply = await session.answer({ type: 'look', file, name: 'x.csv', kind: 'fan' });
    expect(reply).toMatchObject({ type: 'report', report: { refused: expect.stringContaining('MB') } });
  });

  test('own parts are written, and read back they are the same', async () => {
    const { session, look } = begin();
    await readWhole(session, await look(table));
    await session.answer({ type: 'keep' });
    const json = await session.answer({ type: 'write', format: 'json' });
    if (json.type !== 'written') throw new Error('not written');
    const own = (await readOwnParts()).map(({ spec }) => spec);
    expect(readPartFile(await json.file.text()).specs).toEqual(own);
    const csv = await session.answer({ type: 'write', format: 'csv' });
    if (csv.type !== 'written') throw new Error('not written');
    const again = begin();
    const back = await readWhole(again.session, await again.look(await csv.file.text()));
    expect(back).toMatchObject({ report: { good: own.length, badRows: 0 } });
  });

  test('a long table tells how far it has got', async () => {
    const { session, told, look } = begin();
    const rows = Array.from({ length: 3000 }, (_, index) => `Tarnwater,Reed ${index},120`);
    await readWhole(session, await look(['maker,model,size', ...rows].join('\n')));
    const shares = told.flatMap((reply) => (reply.type === 'share' ? [reply.share] : []));
    expect(shares.length).toBeGreaterThan(3);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBeGreaterThan(0.9);
  });
});

describe('how columns were matched', () => {
  const columns: readonly Column[] = [
    { header: 'Marke', path: 'maker', share: 'value', unit: undefined },
    { header: 'Was', path: undefined, share: 'value', unit: 'in' },
  ];

  test('is remembered for the same header, and for no other', async () => {
    expect(await recallColumns(columns)).toBeUndefined();
    await rememberColumns(columns);
    expect(await recallColumns(columns)).toEqual(columns);
    expect(
      await recallColumns([...columns, { header: 'x', path: undefined, share: 'value', unit: undefined }]),
    ).toBeUndefined();
  });
});
