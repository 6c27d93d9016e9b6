import { expect, test, vi } from 'vitest';
import { lookAtTable } from '../../../src/shelf/part-files/read-table';
import { writeTable } from '../../../src/shelf/part-files/write-table';
import { ColumnTable } from '../../../src/views/part-files/column-table';
import { everyShelfEntry } from '../every-shelf-entry';
import { doing, render, type } from '../render';

function look(text: string, kind?: 'fan') {
  const found = lookAtTable(text, kind);
  if (typeof found === 'string') throw new Error(found);
  return found;
}

async function show(text: string, kind?: 'fan') {
  const found = look(text, kind);
  const onPlan = vi.fn();
  const host = await render(
    <ColumnTable look={found} plan={found.plan} recalled={false} onPlan={onPlan} onKind={() => {}} />,
  );
  return { host, onPlan };
}

test('a column is given another field, and the plan of the table follows', async () => {
  const { host, onPlan } = await show('maker,model,size,thing\nT,A,120,25', 'fan');
  expect(host.textContent).toContain('3 of 4 columns are matched');
  const select = host.querySelector<HTMLSelectElement>('[aria-label="Field of thing"]')!;
  await doing(() => select.focus());
  await type(select, 'thickness');
  expect(onPlan.mock.calls[0]?.[0].columns[3]).toMatchObject({ header: 'thing', path: 'thickness' });
});

test('a table of every kind, hundreds of columns wide, is shown in few elements', async () => {
  const { host } = await show(writeTable(everyShelfEntry.map(([, spec]) => spec)));
  expect(host.querySelectorAll('tbody tr').length).toBeGreaterThan(300);
  expect(host.querySelectorAll('[aria-label^="Field of"] option').length).toBeLessThan(1000);
});
