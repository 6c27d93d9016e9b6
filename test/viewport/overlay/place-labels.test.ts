import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeLabels, type Rectangle } from '../../../src/viewport/overlay/place-labels';

const room: Rectangle = { left: 10, top: 10, width: 780, height: 580 };

function share(a: Rectangle, b: Rectangle): number {
  const width = Math.min(a.left + a.width, b.left + b.width) - Math.max(a.left, b.left);
  const height = Math.min(a.top + a.height, b.top + b.height) - Math.max(a.top, b.top);
  return Math.max(0, width) * Math.max(0, height);
}

const wish = fc.record({
  anchor: fc.tuple(
    fc.double({ min: 0, max: 800, noNaN: true }),
    fc.double({ min: 0, max: 600, noNaN: true }),
  ),
  width: fc.constant(130),
  height: fc.constant(26),
  aside: fc.constantFrom<readonly [number, number]>([0, -1], [0.7, 0.7], [-1, 0]),
  distance: fc.constant(26),
});

test('six labels never hide each other and stay in the room, wherever they point', () => {
  fc.assert(
    fc.property(fc.array(wish, { minLength: 1, maxLength: 6 }), (wishes) => {
      const labels = placeLabels(wishes, room);
      expect(labels).toHaveLength(wishes.length);
      for (const [index, label] of labels.entries()) {
        expect(label.left).toBeGreaterThanOrEqual(room.left);
        expect(label.top).toBeGreaterThanOrEqual(room.top);
        expect(label.left + label.width).toBeLessThanOrEqual(room.left + room.width);
        expect(label.top + label.height).toBeLessThanOrEqual(room.top + room.height);
        for (const other of labels.slice(index + 1)) expect(share(label, other)).toBe(0);
      }
    }),
  );
});

test('the first place asked for is taken when it is free', () => {
  const [label] = placeLabels(
    [{ anchor: [400, 300], width: 100, height: 20, aside: [0, -1], distance: 30 }],
    room,
  );
  expect(label).toEqual({ left: 350, top: 250, width: 100, height: 20 });
});

test('a label keeps off what must not be hidden', () => {
  const taken = { left: 340, top: 240, width: 120, height: 40 };
  const [label] = placeLabels(
    [{ anchor: [400, 300], width: 100, height: 20, aside: [0, -1], distance: 30 }],
    room,
    [taken],
  );
  expect(label && share(label, taken)).toBe(0);
});

test('without any room the label with the least in its way is still placed', () => {
  const narrow = { left: 0, top: 0, width: 100, height: 20 };
  const same = { anchor: [50, 10], width: 100, height: 20, aside: [0, 1], distance: 5 } as const;
  expect(placeLabels([same, same], narrow)).toHaveLength(2);
});
