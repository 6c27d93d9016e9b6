import { expect, test } from 'vitest';
import { parseComputedColour } from '../../src/viewport/palette';

test.each([
  ['rgb(255, 0, 51)', [1, 0, 0.2]],
  ['rgb(255 0 51 / 1)', [1, 0, 0.2]],
  ['rgba(0, 102, 255, 0.5)', [0, 0.4, 1]],
  ['#ff0033', [1, 0, 0.2]],
])('%s', (text, expected) => {
  const colour = parseComputedColour(text);
  for (const [index, channel] of expected.entries()) expect(colour?.[index]).toBeCloseTo(channel, 9);
});

test.each(['', 'red', 'var(--ink)', 'rgb(x, 0, 0)'])('nothing is read from %j', (text) => {
  expect(parseComputedColour(text)).toBeUndefined();
});
