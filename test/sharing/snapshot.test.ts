import { readFileSync } from 'node:fs';
import { buf as crc32 } from 'crc-32';
import fc from 'fast-check';
import { deflateSync, strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { type Plan, planSchema, readPlan } from '../../geometry';
import { toBase64Url } from '../../src/sharing/base64url';
import { decodeSnapshot, encodeSnapshot } from '../../src/sharing/snapshot';
import { LARGEST_SNAPSHOT_TEXT, LONGEST_PAYLOAD } from '../../src/sharing/snapshot-format';

const DICTIONARY_BYTES = 32_680;
const DICTIONARY_CHECKSUM = -1_973_345_240;

const plan: Plan = {
  format: 1,
  name: 'Bench, naïve “test” 台',
  parts: {
    fan: {
      spec: {
        kind: 'fan',
        maker: 'Generic',
        model: '120 x 25',
        size: 120,
        thickness: { value: 25, plusMinus: 0.3 },
      },
      placement: { at: [0, 12.5, 0], rotate: [0, 90, 0] },
    },
  },
};

/** A payload whose checksum is right whatever the text is. */
function craft(text: string): string {
  const bytes = strToU8(text);
  const packed = deflateSync(bytes);
  const payload = new Uint8Array(4 + packed.length);
  new DataView(payload.buffer).setInt32(0, crc32(bytes));
  payload.set(packed, 4);
  return `p=1.${toBase64Url(payload)}`;
}

async function messageFor(fragment: string): Promise<string> {
  const result = await decodeSnapshot(fragment);
  expect(result.ok).toBe(false);
  return result.ok ? '' : result.message;
}

describe('snapshot link', () => {
  it('opens as the same plan', async () => {
    const fragment = await encodeSnapshot(plan);
    expect(await decodeSnapshot(`#${fragment}`)).toEqual({ ok: true, plan });
  });

  it('survives a line break put in by a phone', async () => {
    const fragment = await encodeSnapshot(plan);
    const broken = `${fragment.slice(0, 30)}\n ${fragment.slice(30)}`;
    expect(await decodeSnapshot(broken)).toEqual({ ok: true, plan });
  });

  it('refuses every truncation', async () => {
    const fragment = await encodeSnapshot(plan);
    for (let length = 0; length < fragment.length; length++) {
      expect((await decodeSnapshot(fragment.slice(0, length))).ok).toBe(false);
    }
  });

  it('refuses or exactly survives any one changed character', async () => {
    const fragment = await encodeSnapshot(plan);
    await fc.assert(
      fc.asyncProperty(fc.nat(fragment.length - 1), fc.constantFrom(...'AZaz09-_'), async (at, character) => {
        const result = await decodeSnapshot(fragment.slice(0, at) + character + fragment.slice(at + 1));
        if (result.ok) expect(result.plan).toEqual(plan);
      }),
      { seed: 11, numRuns: 400 },
    );
  });

  it('never throws on foreign text', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ maxLength: 400 }), async (text) => {
        await decodeSnapshot(text);
        await decodeSnapshot(`p=1.${text}`);
      }),
      { seed: 12, numRuns: 400 },
    );
  });

  it('says what it met', async () => {
    expect(await messageFor('page-2')).toContain('not a snapshot link');
    expect(await messageFor('p=2.AAAA')).toContain('newer version');
    expect(await messageFor('p=0.AAAA')).toContain('no snapshot format 0');
    expect(await messageFor('p=1.<script>')).toContain('damaged');
    expect(await messageFor(`p=1.${'A'.repeat(LONGEST_PAYLOAD + 4)}`)).toContain('characters long');
    expect(await messageFor(craft('{"format":7}'))).toContain('newer version');
    expect(
      await messageFor(craft('{"format":1,"name":"x","parts":{"fan":{"spec":{"kind":"fan"}}}}')),
    ).toContain('parts.fan');
  });

  it('stops inflating a bomb', async () => {
    const bomb = craft(' '.repeat(20 * LARGEST_SNAPSHOT_TEXT));
    expect(bomb.length).toBeLessThan(LONGEST_PAYLOAD);
    expect(await messageFor(bomb)).toContain('unpacks to more than');
  });
});

describe('released formats', () => {
  const example = (name: string): Plan => {
    const read = readPlan(readFileSync(new URL(`../../public/plans/${name}.json`, import.meta.url), 'utf8'));
    if (!read.ok) throw new Error(name);
    return read.plan;
  };

  it('never changes the dictionary of format 1, or old links would no longer open', () => {
    const words = readFileSync(new URL('../../src/sharing/dictionary-1.txt', import.meta.url));
    expect([words.length, crc32(words)]).toEqual([DICTIONARY_BYTES, DICTIONARY_CHECKSUM]);
  });

  it('still opens a link made when format 1 was released', async () => {
    const link = readFileSync(new URL('./format-1.link.txt', import.meta.url), 'utf8').trim();
    const result = await decodeSnapshot(link);
    if (!result.ok) throw new Error(result.message);
    const kept: unknown = JSON.parse(readFileSync(new URL('./format-1.plan.json', import.meta.url), 'utf8'));
    expect(result.plan).toEqual(kept);
  });

  it.each(['demo', 'faults', 'small'])('carries the example %s in at most 2,000 characters', async (name) => {
    const plan = example(name);
    const fragment = await encodeSnapshot(plan);
    expect(fragment.length).toBeLessThanOrEqual(2000);
    expect(await decodeSnapshot(fragment)).toEqual({ ok: true, plan });
  });

  it('carries a plan in which no number and no name is from the shelf', async () => {
    const plan = planSchema.parse(JSON.parse(JSON.stringify(example('demo')), renamed));
    const fragment = await encodeSnapshot(plan);
    expect(fragment.length).toBeLessThanOrEqual(4000);
    expect(await decodeSnapshot(fragment)).toEqual({ ok: true, plan });
  });
});

/** Changes every model name and every odd dimension, as if each part had been measured anew. */
function renamed(key: string, value: unknown): unknown {
  if (key === 'model' || key === 'maker') return [...String(value)].reverse().join('');
  if (typeof value === 'number' && !Number.isInteger(value)) return Math.round((value + 0.37) * 100) / 100;
  return value;
}
