import { describe, expect, test } from 'vitest';
import type { MountEnvelope } from '../../../geometry';
import { envelopeGroups } from '../../../src/views/upgrade-envelope/envelope-groups';
import { atMost, behindWords, bindingWords, largest } from '../../../src/views/upgrade-envelope/limit-words';

type Limit = MountEnvelope['limits'][number];

const step = (value: number, binds: string, wanted = 0): Limit['steps'][number] => ({
  value,
  binds,
  bindingPart: 'fan',
  faces: [
    { part: 'card', box: 'shroud' },
    { part: 'fan', box: 'frame' },
  ],
  wanted,
});

const limit = (more: Partial<Limit>): Limit => ({
  part: 'card',
  path: 'length',
  title: 'Length',
  datum: undefined,
  sense: 'largest',
  standing: 304,
  steps: [step(314.66, 'the front fan', 3), step(339.69, 'the front panel')],
  sentence: '',
  ...more,
});

describe('the cells of the upgrade envelope', () => {
  test('never promise more than fits', () => {
    expect(atMost(314.69)).toBe('314.6');
    expect(atMost(314.6 - 1e-9), 'roundoff costs no tenth').toBe('314.6');
  });

  test('name what binds with the gap it wants, and what comes behind', () => {
    expect(bindingWords(limit({}))).toBe('the front fan, 3.0 wanted');
    expect(behindWords(limit({}))).toBe('339.6: the front panel');
    expect(behindWords(limit({ steps: [step(314.6, 'the front wall')] }))).toBe('nothing within 1 m');
  });

  test('say so when nothing binds, or when the sheet would contradict itself first', () => {
    const free = limit({ steps: [] });
    expect(largest(free)).toBeUndefined();
    expect(bindingWords(free)).toBe('nothing binds within 1 m');
    const own = limit({ ownSheet: { value: 310, reason: 'the shroud is longer than the card' } });
    expect(largest(own)).toBe(310);
    expect(bindingWords(own)).toBe('the shroud is longer than the card');
  });
});

test('mounts are grouped by what goes on them, cards first, kinds without a mount left out', () => {
  const mount = (kind: MountEnvelope['kind'], id: string): MountEnvelope => ({
    on: 'board',
    mount: id,
    label: id,
    kind,
    limits: [],
  });
  const groups = envelopeGroups([mount('fan', 'front'), mount('card', 'slot 1'), mount('card', 'slot 2')]);
  expect(groups.map(({ title, mounts }) => [title, mounts.length])).toEqual([
    ['Card', 2],
    ['Fan', 1],
  ]);
});
