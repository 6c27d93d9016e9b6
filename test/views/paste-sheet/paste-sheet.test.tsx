import { act } from 'react';
import { describe, expect, test, vi } from 'vitest';
import { type PartKind, type PartSpec, readSheetText } from '../../../geometry';
import { PartForm } from '../../../src/views/part-form/part-form';
import { limitsRead } from '../../../src/views/paste-sheet/limits-read';
import { PasteSheetTool } from '../../../src/views/paste-sheet/paste-sheet-tool';
import { everyShelfEntry } from '../every-shelf-entry';
import { doing, render } from '../render';

const sheet = [
  'Brand: Tarnwater',
  'Model: Gannet 300',
  'Dimensions (L x W x H): 311 x 131 x 52 mm',
  'Slots: 2.6',
  'Power connectors: 2 x 8-pin',
  'Total board power: 240 W',
  'Warranty: 3 years',
].join('\n');

/** The pane is a chunk of its own: it is there a moment after it is asked for. */
async function settle(host: HTMLElement): Promise<void> {
  for (let turn = 0; turn < 200 && !host.querySelector('.sheet-pane'); turn += 1)
    await act(() => new Promise<void>((resolve) => setTimeout(resolve, 10)));
}

async function openPane(kind: PartKind, text: string, isNew: boolean, start?: PartSpec) {
  const onSave = vi.fn();
  const onKind = vi.fn();
  const host = await render(
    <PartForm
      kind={kind}
      start={start ?? everyShelfEntry.find(([, spec]) => spec.kind === kind)?.[1]}
      onDirty={() => {}}
      onSave={onSave}
      tools={(form) => (
        <PasteSheetTool form={form} text={text} onText={() => {}} isNew={isNew} onKind={onKind} />
      )}
    >
      <button type="submit" value="save">
        Save
      </button>
    </PartForm>,
  );
  await settle(host);
  const button = (name: string) =>
    [...host.querySelectorAll('button')].find((one) => one.textContent?.includes(name));
  const input = (path: string) => host.querySelector<HTMLInputElement>(`[id="field-${path}"]`);
  return { host, onSave, onKind, button, input };
}

describe('the pane for a pasted sheet', () => {
  test('marks each phrase it read and says which field it goes to', async () => {
    const { host } = await openPane('card', sheet, true);
    const marks = [...host.querySelectorAll('mark.read')].map((one) => one.textContent);
    expect(marks.some((mark) => mark?.includes('311 x 131 x 52 mm'))).toBe(true);
    const rows = [...host.querySelectorAll('.sheet-values li')].map((one) => one.textContent);
    expect(rows.some((row) => row?.startsWith('Length311 mm'))).toBe(true);
    expect(host.querySelector('.sheet-reading details')?.textContent).toContain('Warranty');
  });

  test('fills the form: figures from the sheet with their phrase, everything else as assumed, no socket places guessed', async () => {
    const { button, input, host } = await openPane('card', sheet, true);
    await doing(() => button('Fill the form')?.click());
    expect(input('length')?.value).toBe('311');
    expect(input('height')?.value).toBe('131');
    expect(input('maker')?.value).toBe('Tarnwater');
    expect(host.querySelector('[role="status"]')?.textContent).toMatch(/fields filled from the sheet/);
    expect(host.textContent).toContain('Dimensions (L x W x H): 311 x 131 x 52 mm');
    expect(input('power.0.type')?.value).toBe('card 8-pin');
    expect(input('power.1.at')?.value).toBe('');
  });

  test('an open question fills nothing until it is answered', async () => {
    const { host, button, input } = await openPane('card', sheet, true);
    const before = input('bracketSlots')?.value;
    const question = [...host.querySelectorAll('fieldset.sheet-question')].find((one) =>
      one.textContent?.includes('How many has its bracket'),
    );
    expect(question).toBeDefined();
    const three = [...(question?.querySelectorAll('label') ?? [])].find((one) =>
      one.textContent?.endsWith('3'),
    );
    await doing(() => three?.querySelector('input')?.click());
    await doing(() => button('Fill the form')?.click());
    expect(input('bracketSlots')?.value).toBe('3');
    expect(before).not.toBe('');
  });

  test('on a part that is there already, what the sheet does not say stays as it was', async () => {
    const [, start] = everyShelfEntry.find(([, spec]) => spec.kind === 'fan')!;
    const { button, onSave, host } = await openPane('fan', 'Speed: 1234 rpm', false, start);
    await doing(() => button('Fill the form')?.click());
    await doing(() => host.querySelector<HTMLButtonElement>('button[type="submit"]')?.click());
    expect(onSave.mock.calls[0]?.[0]).toEqual({
      ...start,
      speed: { value: 1234, source: 'sheet', note: 'Speed: 1234 rpm' },
    });
  });

  test('a sheet of another kind is remarked on, and the kind changes only when asked', async () => {
    const { button, onKind } = await openPane(
      'cooler',
      'SFX power supply 650 W\nModular: yes\nWidth 125 mm\nHeight 63.5 mm\nDepth 100 mm\nEfficiency: gold\n4 x SATA',
      true,
    );
    expect(onKind).not.toHaveBeenCalled();
    await doing(() => button('Make it a')?.click());
    expect(onKind).toHaveBeenCalledWith('supply');
  });

  test('script in a sheet is shown as text', async () => {
    const { host } = await openPane('card', 'Model: <img src=x onerror=alert(1)>\nLength: 300 mm', true);
    expect(host.querySelector('img')).toBeNull();
    expect(host.textContent).toContain('<img src=x onerror=alert(1)>');
  });
});

describe('what an enclosure’s maker promises', () => {
  const text =
    'Max cooler height 165\nMax card length 330 with front fan\n25 mm behind the tray\nExpansion slots: 4';

  test('goes to the panel of published limits, the unstated fan as an assumption', () => {
    const filled = limitsRead(readSheetText(text, 'enclosure').values, text);
    expect(filled.map(({ path, value, source }) => [path, value, source])).toEqual([
      ['coolerHeight', 165, 'sheet'],
      ['behindTray', 25, 'sheet'],
      ['slots', 4, 'sheet'],
      ['cardLength', 330, 'sheet'],
      ['frontFan', 25, 'assumed'],
    ]);
  });
});
