import { describe, expect, test, vi } from 'vitest';
import { PartForm } from '../../../src/views/part-form/part-form';
import { specField } from '../../../src/views/part-form/spec-field';
import { everyShelfEntry } from '../every-shelf-entry';
import { doing, render, type } from '../render';

const cardEntry = everyShelfEntry.find(([, spec]) => spec.kind === 'card')!;

async function openForm(spec = cardEntry[1]) {
  const onSave = vi.fn();
  const host = await render(
    <PartForm kind={spec.kind} start={spec} onDirty={() => {}} onSave={onSave}>
      <button type="submit" value="save">
        Save
      </button>
    </PartForm>,
  );
  const save = () => doing(() => host.querySelector<HTMLButtonElement>('button[type="submit"]')?.click());
  const field = (path: string) => {
    const input = [...host.querySelectorAll('input')].find((one) => one.id === `field-${path}`);
    if (!input) throw new Error(`no field ${path}`);
    return input;
  };
  return { host, onSave, save, field };
}

describe('the form of a part', () => {
  test.each(everyShelfEntry)('%s: shown and saved untouched, it is what it was', async (_, spec) => {
    const { onSave, save } = await openForm(spec);
    await save();
    expect(onSave.mock.calls).toEqual([[spec, 'save']]);
  });

  test('every field has a name of its own that can be read out', async () => {
    const { host } = await openForm();
    for (const input of host.querySelectorAll('input, select, textarea')) {
      const label =
        input.getAttribute('aria-label') ?? host.querySelector(`label[for="${input.id}"]`)?.textContent;
      expect(label, input.outerHTML).toBeTruthy();
    }
  });

  test('what is wrong is named, nothing is saved, and what was typed stays', async () => {
    const { host, onSave, save, field } = await openForm();
    await type(field('length'), '-12');
    await save();
    expect(onSave).not.toHaveBeenCalled();
    expect(host.querySelector('[role="alert"]')?.textContent).toContain('Length must be at least 0.01');
    expect(field('length').value).toBe('-12');
    expect(field('length').getAttribute('aria-invalid')).toBe('true');
  });

  test('mended, it is saved', async () => {
    const { onSave, save, field } = await openForm();
    await type(field('length'), 'x');
    await save();
    await type(field('length'), '311.5');
    await save();
    expect(onSave.mock.calls[0]?.[0]).toMatchObject({ kind: 'card' });
    expect(JSON.stringify(onSave.mock.calls[0]?.[0].length)).toContain('311.5');
  });

  test('a list grows and shrinks', async () => {
    const { host, onSave, save } = await openForm(
      everyShelfEntry.find(([, spec]) => spec.kind === 'board')![1],
    );
    const count = () => host.querySelectorAll('[aria-label^="Take out Expansion slots"]').length;
    const before = count();
    await doing(() => host.querySelector<HTMLElement>('[aria-label="Add to Expansion slots"]')?.click());
    expect(count()).toBe(before + 1);
    await save();
    expect(onSave).not.toHaveBeenCalled();
    await doing(() =>
      host.querySelector<HTMLElement>(`[aria-label="Take out Expansion slots ${before + 1}"]`)?.click(),
    );
    await save();
    expect(onSave).toHaveBeenCalledOnce();
  });
});

test('a form is read from the schema once', () => {
  expect(specField('fan')).toBe(specField('fan'));
});
