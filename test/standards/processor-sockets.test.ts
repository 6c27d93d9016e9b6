import { describe, expect, it } from 'vitest';
import { dimm, seatedDimmTop } from '../../geometry/standards/memory';
import {
  lidHeightStack,
  type SocketPattern,
  socketPatterns,
} from '../../geometry/standards/processor-sockets';

const extent = (pattern: SocketPattern, axis: 'x' | 'y') => {
  const places = socketPatterns[pattern].holes.value.map((hole) => hole[axis]);
  return Math.max(...places) - Math.min(...places);
};

describe('cooler hole patterns', () => {
  it.each([
    // Thermal/Mechanical Specifications, drawing E21319 revision L: 75.00 square
    ['square-75', 75, 75],
    // articles, two or more sources: 78 and 80 square, 54 x 90 with 90 along the memory
    ['square-78', 78, 78],
    ['square-80', 80, 80],
    ['rectangle-54x90', 90, 54],
  ] as const)('%s spans %d by %d about the socket centre', (pattern, x, y) => {
    expect(extent(pattern, 'x')).toBe(x);
    expect(extent(pattern, 'y')).toBe(y);
    const holes = socketPatterns[pattern].holes.value;
    expect(holes).toHaveLength(4);
    expect(holes.reduce((sum, hole) => sum + hole.x + hole.y, 0)).toBe(0);
  });

  it('has the printed hole of 4.03 and keep-in of 95 (drawing E21319 revision L)', () => {
    expect(socketPatterns['square-75'].holeDiameter.value).toBe(4.03);
    expect(socketPatterns['square-75'].keepIn.value).toBe(95);
  });
});

describe('lid height (LGA1155 Socket Thermal/Mechanical Specifications and Design Guidelines, table 5-2, note 2)', () => {
  const { socketSeatingPlane, packageLandsToLidTop, boardToLidTop } = lidHeightStack;

  it('adds 3.4 and 4.381 to the printed 7.781', () => {
    expect(socketSeatingPlane.value + packageLandsToLidTop.value).toBeCloseTo(7.781, 9);
    expect(boardToLidTop.value).toBe(7.781);
  });

  it('spreads by the printed 0.335, the root sum of squares of 0.2 and 0.269', () => {
    const spread = Math.hypot(socketSeatingPlane.plusMinus ?? 0, packageLandsToLidTop.plusMinus ?? 0);
    expect(spread).toBeCloseTo(0.335, 3);
    expect(boardToLidTop.plusMinus).toBe(0.335);
  });
});

it('has memory 133.35 long (MO-161) and 31.25 high (MO-309 raw card B1), its top 33.75 above the board (open drawing)', () => {
  expect(dimm.length.value).toBeCloseTo(5.25 * 25.4, 9);
  expect(dimm.height.value).toBe(31.25);
  expect(seatedDimmTop.value).toBe(33.75);
});
