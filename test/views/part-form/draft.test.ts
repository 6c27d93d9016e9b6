import { describe, expect, test } from 'vitest';
import { partKinds } from '../../../geometry';
import type { VariantsField } from '../../../src/views/part-form/describe-schema';
import {
  asObject,
  blankDraft,
  type Draft,
  type ObjectDraft,
  switchVariant,
  toDraft,
  toValue,
} from '../../../src/views/part-form/draft';
import { readForm, specField } from '../../../src/views/part-form/spec-field';
import { everyShelfEntry } from '../every-shelf-entry';

const card = {
  kind: 'card',
  maker: 'Quayside',
  model: 'Tern',
  interface: 'x16',
  length: 300,
  height: { value: 130, plusMinus: 0.5, source: 'measured', note: 'caliper' },
  thickness: 55,
  bracketSlots: 3,
  fans: { count: 2, diameter: 90 },
  power: [{ type: 'card 8-pin', edge: 'top', at: 250 }],
} as const;

const field = specField('card');
const draftOf = () => asObject(toDraft(field, card));
const faultsOf = (draft: Draft) => {
  const result = readForm(field, draft);
  return result.ok ? [] : result.faults;
};
const withQuantity = (key: string, change: object): ObjectDraft => {
  const draft = draftOf();
  return { ...draft, [key]: { ...(draft[key] as object), ...change } as Draft };
};

describe('a part through the form', () => {
  test.each(everyShelfEntry)('%s comes back equal', (_, spec) => {
    const form = specField(spec.kind);
    const result = readForm(form, toDraft(form, spec));
    expect(result).toEqual({ ok: true, spec });
  });

  test('a bare number stays bare, a stated one keeps its band, source and note', () => {
    expect(toValue(field, draftOf())).toEqual(card);
  });

  test.each(partKinds)('a form of kind %s that was never filled in is refused, naming fields', (kind) => {
    const form = specField(kind);
    const result = readForm(form, blankDraft(form));
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.faults.map((fault) => fault.title)).toContain('Maker');
  });
});

describe('what is typed', () => {
  test('a comma is a point, a source makes a bare number a stated one', () => {
    const draft = withQuantity('length', { value: '301,5', source: 'measured' });
    expect(toValue(field, draft)).toMatchObject({ length: { value: 301.5, source: 'measured' } });
  });

  test('choosing the sheet for a bare number leaves it bare', () => {
    expect(toValue(field, withQuantity('length', { source: 'sheet' }))).toMatchObject({ length: 300 });
  });

  test('an emptied optional field is gone, an emptied required one is named', () => {
    const draft = { ...draftOf(), remark: '' };
    expect(toValue(field, draft)).not.toHaveProperty('remark');
    expect(faultsOf(withQuantity('length', { value: '' }))).toMatchObject([{ title: 'Length' }]);
  });
});

describe('what is wrong', () => {
  test.each([
    ['length', { value: '-3' }, 'Length'],
    ['length', { value: '1e9' }, 'Length'],
    ['length', { value: 'NaN' }, 'Length'],
    ['length', { value: 'Infinity' }, 'Length'],
    ['thickness', { value: 'about 50' }, 'Thickness'],
    ['height', { plusMinus: '-1' }, 'Height'],
  ])('%s with %j is refused by the title of its field', (key, change, title) => {
    const faults = faultsOf(withQuantity(key, change));
    // A wrong figure may contradict others as well; its own field is named in any case.
    expect(faults.map((fault) => fault.title.split(',')[0])).toContain(title);
  });

  test('inside a list is named by its place in it', () => {
    const draft = draftOf();
    const [socket] = draft.power as readonly ObjectDraft[];
    const at = { ...(socket?.at as object), value: 'x' } as Draft;
    const faults = faultsOf({ ...draft, power: [{ ...socket, at }] });
    expect(faults).toMatchObject([{ path: 'power.0.at', title: 'Power sockets, 1, Place along the edge' }]);
  });

  test('the draft keeps what was typed', () => {
    const draft = withQuantity('length', { value: 'three hundred' });
    readForm(field, draft);
    expect(draft.length).toMatchObject({ value: 'three hundred' });
  });
});

describe('another style', () => {
  test('keeps what both have, drops what it has not, and asks for what is missing', () => {
    const variants = specField('cooler') as VariantsField;
    const tower = asObject(
      toDraft(variants, {
        kind: 'cooler',
        style: 'tower',
        maker: 'Quayside',
        model: 'Mast',
        patterns: ['square-75'],
        height: 150,
        width: 120,
        finBottom: 40,
        stacks: [{ depth: 50 }],
        fans: [],
      }),
    );
    const topFlow = switchVariant(variants, tower, 'top flow');
    expect(topFlow).toMatchObject({ style: 'top flow', maker: 'Quayside', height: { value: '150' } });
    expect(topFlow).not.toHaveProperty('stacks');
    const result = readForm(variants, topFlow);
    expect(result.ok ? [] : result.faults.map((fault) => fault.path)).toEqual(
      expect.arrayContaining(['depth', 'fan.size']),
    );
  });
});
