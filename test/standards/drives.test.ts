import { describe, expect, it } from 'vitest';
import { type DriveForm, driveForms } from '../../geometry/standards/drives';
import { m2StudDistance } from '../../geometry/standards/m2-modules';

const alongs = (form: DriveForm, face: 'bottom' | 'side') => [
  ...new Set(
    driveForms[form].holes.value
      .filter((hole) => hole.face === face)
      .map((hole) => Number(hole.along.toFixed(2))),
  ),
];
const acrossBottom = (form: DriveForm) => {
  const across = driveForms[form].holes.value
    .filter((hole) => hole.face === 'bottom')
    .map((hole) => hole.across);
  return Math.max(...across) - Math.min(...across);
};

describe('3.5 in drives (SFF-8301 revision 3.4, table 3-1)', () => {
  const drive = driveForms['3.5 in'];

  it('has outline A2, A3, A1: 147.00, 101.60, and 17.80, 26.10 or 42.00', () => {
    expect(drive.length.value).toBe(147);
    expect(drive.width.value).toBe(101.6);
    expect([...drive.heights.value].sort((a, b) => a - b)).toEqual([17.8, 26.1, 42]);
  });

  it('has bottom pairs at A7 41.28, A7 + A6 85.73 and A7 + A13 117.48', () => {
    expect(alongs('3.5 in', 'bottom')).toEqual([41.28, 85.73, 117.48]);
  });

  it('has side holes at A8 28.50 and A8 + A9 130.10, A10 6.35 above the base', () => {
    expect(alongs('3.5 in', 'side')).toEqual([28.5, 130.1]);
    expect(
      drive.holes.value.filter((hole) => hole.face === 'side').every((hole) => hole.above === 6.35),
    ).toBe(true);
  });

  it('agrees with itself: A3 - 2 A5 is A4 95.25 within the rounding of A5', () => {
    expect(Math.abs(acrossBottom('3.5 in') - 95.25)).toBeLessThan(0.011);
  });
});

describe('2.5 in drives (SFF-8201 revision 3.4, table 3-1)', () => {
  const drive = driveForms['2.5 in'];

  it('has outline A6, A4, A1: 100.45, 69.85, and 5, 7, 9.5 or 15', () => {
    expect(drive.length.value).toBe(100.45);
    expect(drive.width.value).toBe(69.85);
    expect([...drive.heights.value].sort((a, b) => a - b)).toEqual([5, 7, 9.5, 15]);
  });

  it('has holes at 14.00 and 90.60 on both faces, side ones 3.00 above the base (A50 to A53, A23)', () => {
    expect(alongs('2.5 in', 'bottom')).toEqual([14, 90.6]);
    expect(alongs('2.5 in', 'side')).toEqual([14, 90.6]);
    expect(drive.holes.value.filter((hole) => hole.face === 'side').every((hole) => hole.above === 3)).toBe(
      true,
    );
  });

  it('settles A29 for 61.72, not 61.92: A4 - 2 A28 within the rounding', () => {
    expect(Math.abs(acrossBottom('2.5 in') - 61.72)).toBeLessThan(0.011);
    expect(Math.abs(acrossBottom('2.5 in') - 61.92)).toBeGreaterThan(0.2);
  });
});

it('sets the M.2 stud 78.25 from the alignment posts for 80 mm (M.2 Specification 1.0, figure 38: length - 1.75)', () => {
  expect(m2StudDistance(80)).toBe(78.25);
  expect(m2StudDistance(110)).toBe(108.25);
});
