import { expect, test } from 'vitest';
import { nearestPlace } from '../../../src/viewport/pointer/nearest-place';

const places = [
  { key: 'slot 1', at: [100, 100] },
  { key: 'slot 2', at: [100, 130] },
  { key: 'behind the eye', at: undefined },
] as const;

test('the nearest place within reach', () => {
  expect(nearestPlace(places, [102, 104], 50)?.key).toBe('slot 1');
  expect(nearestPlace(places, [102, 128], 50)?.key).toBe('slot 2');
  expect(nearestPlace(places, [102, 190], 50)).toBeUndefined();
  expect(nearestPlace([], [0, 0], 50)).toBeUndefined();
});

test('a hand between two places stays with the one it has', () => {
  expect(nearestPlace(places, [100, 116], 50)?.key).toBe('slot 2');
  expect(nearestPlace(places, [100, 116], 50, 'slot 1')?.key).toBe('slot 1');
  expect(nearestPlace(places, [100, 119], 50, 'slot 1')?.key).toBe('slot 2');
});
