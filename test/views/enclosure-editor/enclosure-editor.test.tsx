import { describe, expect, test, vi } from 'vitest';
import type { EnclosureSpec } from '../../../geometry';
import { enclosureOverlay } from '../../../src/views/enclosure-editor/enclosure-overlay';
import { EnclosureTools } from '../../../src/views/enclosure-editor/enclosure-tools';
import { newFitting, newFittings } from '../../../src/views/enclosure-editor/new-fitting';
import { toDraft } from '../../../src/views/part-form/draft';
import { fillDraft } from '../../../src/views/part-form/fill-draft';
import { PartForm } from '../../../src/views/part-form/part-form';
import { readForm, specField } from '../../../src/views/part-form/spec-field';
import { everyShelfEntry } from '../every-shelf-entry';
import { doing, press, render, type } from '../render';

const saltpan = everyShelfEntry.find(([id]) => id === 'tidewrack-saltpan-26')![1] as EnclosureSpec;

async function openEditor(start: EnclosureSpec | 'empty' = saltpan) {
  const onSave = vi.fn();
  const host = await render(
    <PartForm
      kind="enclosure"
      start={start === 'empty' ? undefined : start}
      onDirty={() => {}}
      onSave={onSave}
      tools={(form) => <EnclosureTools form={form} />}
      overlay={enclosureOverlay}
    >
      <button type="submit" value="save">
        Save
      </button>
    </PartForm>,
  );
  const saved = async (): Promise<EnclosureSpec> => {
    await doing(() => host.querySelector<HTMLButtonElement>('button[type="submit"]')?.click());
    return onSave.mock.lastCall?.[0];
  };
  const mark = (path: string) => host.querySelector(`.fitting[data-path="${path}"]`)!;
  const button = (words: string) =>
    [...host.querySelectorAll('button')].find(({ textContent }) => textContent === words)!;
  const field = (path: string) => host.querySelector<HTMLInputElement>(`[id="field-${path}"]`)!;
  return { host, onSave, saved, mark, button, field };
}

describe('fittings on the drawing', () => {
  test('every seat, vent and opening can be taken hold of and says where it is', async () => {
    const { host } = await openEditor();
    const paths = new Set([...host.querySelectorAll('.fitting')].map((one) => one.getAttribute('data-path')));
    const { fanSeats = [], driveSeats = [], vents = [], radiatorRails = [], supplyBays, tray } = saltpan;
    const count = [fanSeats, driveSeats, vents, radiatorRails, supplyBays, tray?.openings ?? []].reduce(
      (sum, { length }) => sum + length,
      1,
    );
    expect(paths.size).toBe(count);
    for (const one of host.querySelectorAll('.fitting'))
      expect(one.getAttribute('aria-label')).toMatch(/at .* mm on the/);
  });

  test('arrow keys move it by a millimetre, with Shift by a tenth, and the field follows', async () => {
    const { mark, field, saved } = await openEditor();
    // Seen from the left the first coordinate of a rear seat (y) is up, the second (z) to the right.
    await press(mark('fanSeats.0'), 'ArrowUp');
    await press(mark('fanSeats.0'), 'ArrowRight', { shiftKey: true });
    expect(field('fanSeats.0.at.0').value).toBe('273');
    expect(field('fanSeats.0.at.1').value).toBe('112.1');
    expect((await saved()).fanSeats?.[0]?.at).toEqual([273, 112.1]);
  });

  test('it stops at the wall instead of leaving the enclosure', async () => {
    // A 120 frame ends 60 above its middle, the inside at 352: from 291 one step of a millimetre is left.
    const [rear, ...others] = saltpan.fanSeats ?? [];
    const near = { ...saltpan, fanSeats: [{ ...rear!, at: [291, 112] as [number, number] }, ...others] };
    const { mark, saved } = await openEditor(near);
    for (let step = 0; step < 3; step++) await press(mark('fanSeats.0'), 'ArrowUp');
    expect((await saved()).fanSeats?.[0]?.at[0]).toBe(292);
  });

  test('undo takes back what the keys did, redo does it again', async () => {
    const { mark, button, field } = await openEditor();
    await press(mark('vents.0'), 'ArrowRight');
    expect(field('vents.0.from.0').value).toBe('7');
    expect(field('vents.0.to.0').value).toBe('151');
    await doing(() => button('Undo in the form').click());
    expect(field('vents.0.from.0').value).toBe('6');
    await doing(() => button('Redo').click());
    expect(field('vents.0.from.0').value).toBe('7');
  });

  test.each(newFittings)('a new %s is sound on some face of every enclosure of the shelf', (kind) => {
    const field = specField('enclosure');
    for (const [id, spec] of everyShelfEntry) {
      if (spec.kind !== 'enclosure') continue;
      const sound = (['rear', 'front', 'top', 'floor', 'side', 'back'] as const).some((face) => {
        const { draft, unplaced } = fillDraft(field, toDraft(field, spec), newFitting(spec, kind, face));
        return unplaced.length === 0 && readForm(field, draft).ok;
      });
      expect(sound, `${kind} on ${id}`).toBe(true);
    }
  });
});

describe('an enclosure from published limits', () => {
  test('is built from an empty form, with unknown walls named and marked as assumed in the spec', async () => {
    const { host, button, field, saved } = await openEditor('empty');
    await type(field('limits.coolerHeight'), '165');
    await type(field('limits.cardLength'), '330');
    await type(field('limits.frontFan'), '25');
    await type(field('limits.behindTray'), '25');
    expect(host.querySelector('.face-report caption')?.textContent).toMatch(
      /^2 of six inner faces are still unknown/,
    );
    expect(host.querySelector('.face-report')?.textContent).toContain(
      'cooler height 165 + socket and processor',
    );
    await doing(() => button('Build the enclosure').click());
    // It has no name yet, and nobody makes one up.
    expect(await saved()).toBeUndefined();
    await type(field('maker'), 'Quayside');
    await type(field('model'), 'Breakwater');
    const spec = await saved();
    expect(spec.interior.trayToSide).toMatchObject({ source: 'sheet', value: 180.8558 });
    expect(spec.interior.behindTray).toMatchObject({ source: 'sheet', value: 25 });
    expect(spec.interior.height).toMatchObject({ source: 'assumed' });
  });

  test('a figure that cannot be is refused beside its field', async () => {
    const { host, field } = await openEditor('empty');
    await type(field('limits.coolerHeight'), '-5');
    expect(field('limits.coolerHeight').getAttribute('aria-invalid')).toBe('true');
    expect(host.querySelector('.face-report')).toBeNull();
  });
});
