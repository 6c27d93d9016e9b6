import { describe, expect, test, vi } from 'vitest';
import type { PartSpec } from '../../../geometry';
import { blankDraft } from '../../../src/views/part-form/draft';
import { fillDraft } from '../../../src/views/part-form/fill-draft';
import { type FormHandle, PartForm } from '../../../src/views/part-form/part-form';
import { askedFields } from '../../../src/views/part-form/sheet-order';
import { readForm, specField } from '../../../src/views/part-form/spec-field';
import { doing, render, type } from '../render';

const card: PartSpec = {
  kind: 'card',
  maker: 'Quayside',
  model: 'Tern',
  interface: 'x16',
  length: 300,
  height: 130,
  thickness: 55,
  bracketSlots: 3,
};

async function openForm(spec: PartSpec = card) {
  const onSave = vi.fn();
  let handle: FormHandle | undefined;
  const host = await render(
    <PartForm
      kind={spec.kind}
      start={spec}
      onDirty={() => {}}
      onSave={onSave}
      tools={(form) => {
        handle = form;
        return null;
      }}
    >
      <button type="submit" value="save">
        Save
      </button>
    </PartForm>,
  );
  const field = (path: string) => host.querySelector<HTMLInputElement>(`[id="field-${path}"]`)!;
  const dimension = (title: string) =>
    [...host.querySelectorAll('.dimension')].find((one) => one.getAttribute('aria-label')?.startsWith(title));
  const save = () => doing(() => host.querySelector<HTMLButtonElement>('button[type="submit"]')?.click());
  return { host, onSave, save, field, dimension, form: () => handle! };
}

describe('the drawing follows the form', () => {
  test('a figure typed anew stands on its dimension at once', async () => {
    const { field, dimension } = await openForm();
    expect(dimension('Length')?.textContent).toBe('300');
    await type(field('length'), '12 in');
    expect(dimension('Length')?.textContent).toBe('304.8');
  });

  test('what cannot be read keeps the last good drawing and says so', async () => {
    const { host, field, dimension } = await openForm();
    await type(field('length'), '3oo');
    expect(dimension('Length')?.textContent).toBe('300');
    expect(host.querySelector('.part-drawing')?.getAttribute('data-stale')).toBe('true');
    await type(field('length'), '310');
    expect(dimension('Length')?.textContent).toBe('310');
    expect(host.querySelector('.part-drawing')?.getAttribute('data-stale')).toBe('false');
  });

  test('a dimension leads to its field, and the field in hand marks its dimension', async () => {
    const { field, dimension } = await openForm();
    await doing(() => dimension('Height')?.dispatchEvent(new MouseEvent('click', { bubbles: true })));
    expect(document.activeElement).toBe(field('height'));
    expect(dimension('Height')?.getAttribute('data-active')).toBe('true');
    expect(dimension('Length')?.getAttribute('data-active')).toBe('false');
  });

  test('a default of the standard stands in brackets, beside its field with its source', async () => {
    const { host, dimension } = await openForm({ kind: 'fan', maker: 'Quayside', model: 'Vane', size: 120 });
    expect(dimension('Thickness')?.textContent).toBe('(25)');
    const row = host.querySelector('[data-path="thickness"]');
    expect(row?.querySelector('.form-default')?.textContent).toMatch(/default 25 mm, /);
    expect(row?.querySelector('input')?.getAttribute('placeholder')).toBe('25');
  });

  test('a part without a name is drawn all the same, and refused when it is saved', async () => {
    const { host, field, dimension, onSave, save } = await openForm();
    await type(field('maker'), '');
    await type(field('length'), '280');
    expect(dimension('Length')?.textContent).toBe('280');
    await save();
    expect(onSave).not.toHaveBeenCalled();
    expect(host.querySelector('[role="alert"]')?.textContent).toContain('Maker');
  });
});

describe('numbers as people write them', () => {
  test.each([
    ['120+25', 145],
    ['112,5*2', 225],
    ['11 13/16"', 300.0375],
  ])('%s is saved as %d', async (text, value) => {
    const { field, save, onSave } = await openForm();
    await type(field('length'), text);
    await save();
    expect(onSave.mock.lastCall?.[0].length).toBe(value);
  });

  test('two sizes in one field are refused by the name of the field', async () => {
    const { host, field, save, onSave } = await openForm();
    await type(field('length'), '300 x 130');
    await save();
    expect(onSave).not.toHaveBeenCalled();
    expect(host.querySelector('[role="alert"]')?.textContent).toContain('Length holds more than one size');
  });
});

describe('what matters is asked first', () => {
  test('a card: length, height, thickness in the order of a sheet; nothing that must be filled in is folded away', () => {
    const field = specField('card');
    if (field.type !== 'object') throw new Error('a card has one form');
    const { first, more } = askedFields('card', field);
    expect(first.slice(0, 5).map(([key]) => key)).toEqual([
      'maker',
      'model',
      'length',
      'height',
      'thickness',
    ]);
    expect(more.filter(([, { optional }]) => !optional)).toEqual([]);
  });

  test('the fold says how much of it stands at its default', async () => {
    const { host } = await openForm();
    expect(host.querySelector('.form-more summary')?.textContent).toMatch(
      /\d+ fields, all at their defaults/,
    );
  });
});

describe('a draft filled from outside', () => {
  test('goes to its fields in one step of undo, and what has no field is handed back', async () => {
    const { host, field, form } = await openForm();
    let left: readonly string[] = [];
    await doing(() => {
      left = form().fill([
        { path: 'length', value: 322, source: 'sheet' },
        { path: 'power.0.type', value: 'card 8-pin' },
        { path: 'power.0.at', value: 200 },
        { path: 'power.0.edge', value: 'top' },
        { path: 'fins', value: 3 },
      ]);
    });
    expect(left).toEqual(['fins']);
    expect(field('length').value).toBe('322');
    expect(field('power.0.at').value).toBe('200');
    await doing(() =>
      [...host.querySelectorAll('button')]
        .find(({ textContent }) => textContent === 'Undo in the form')
        ?.click(),
    );
    expect(field('length').value).toBe('300');
    expect(host.querySelector('[id="field-power.0.at"]')).toBeNull();
  });

  test('never takes a value of the wrong kind', () => {
    const field = specField('card');
    const { unplaced } = fillDraft(field, blankDraft(field), [
      { path: 'interface', value: 'x99' },
      { path: 'length', value: true },
      { path: 'lowProfile', value: 'yes' },
      { path: 'power.5.at', value: 3 },
      { path: 'length.deeper', value: 3 },
    ]);
    expect(unplaced).toEqual(['interface', 'length', 'lowProfile', 'power.5.at', 'length.deeper']);
    expect(readForm(field, blankDraft(field)).ok).toBe(false);
  });
});
