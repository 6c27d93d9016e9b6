/**
 * Outlines and mounting holes of 3.5 in and 2.5 in drives, mm.
 *
 * Drive frame: `along` from the connector end face, `across` from the left side face seen from above with the
 * connector end toward the viewer, `above` from the base. Bottom holes have `above` 0; side holes lie on both sides.
 */
import { drive25Inch, drive35Inch, noStandard } from './cited-documents';
import { citing, type Published } from './published';

export type DriveForm = '3.5 in' | '2.5 in';

export interface DriveHole {
  readonly face: 'bottom' | 'side';
  readonly along: number;
  readonly across: number;
  readonly above: number;
}

export interface DriveFormFactor {
  readonly length: Published<number>;
  readonly width: Published<number>;
  /** Height options, the usual one first. */
  readonly heights: Published<readonly [number, ...number[]]>;
  readonly holes: Published<readonly DriveHole[]>;
  readonly thread: Published<string>;
}

const sff8301 = citing(drive35Inch);
const sff8201 = citing(drive25Inch);
const copied = { via: 'one transcription of the table, row by row' };

function holePattern(
  width: number,
  bottom: { alongs: readonly number[]; inset: number },
  side: { alongs: readonly number[]; above: number },
): readonly DriveHole[] {
  const onBottom = bottom.alongs.flatMap((along): DriveHole[] => [
    { face: 'bottom', along, across: bottom.inset, above: 0 },
    { face: 'bottom', along, across: width - bottom.inset, above: 0 },
  ]);
  const onSides = side.alongs.flatMap((along): DriveHole[] => [
    { face: 'side', along, across: 0, above: side.above },
    { face: 'side', along, across: width, above: side.above },
  ]);
  return [...onBottom, ...onSides];
}

/** Rows of the tables the holes are made of. */
export const driveHoleRows = {
  '3.5 in': {
    A4: sff8301(95.25, 'near-primary', 'table 3-1', copied),
    A5: sff8301(3.18, 'near-primary', 'table 3-1', copied),
    A6: sff8301(44.45, 'near-primary', 'table 3-1', copied),
    A7: sff8301(41.28, 'near-primary', 'table 3-1', copied),
    A8: sff8301(28.5, 'near-primary', 'table 3-1', copied),
    A9: sff8301(101.6, 'near-primary', 'table 3-1', copied),
    A10: sff8301(6.35, 'near-primary', 'table 3-1', copied),
    A13: sff8301(76.2, 'near-primary', 'table 3-1', copied),
  },
  '2.5 in': {
    A23: sff8201(3, 'two sources', 'table 3-1', copied),
    A28: sff8201(4.07, 'near-primary', 'table 3-1', copied),
    A29: sff8201(61.72, 'near-primary', 'table 3-1', {
      ...copied,
      note: 'a list beside the table mistypes 61.92',
    }),
    A50: sff8201(14, 'two sources', 'table 3-1', copied),
    A51: sff8201(90.6, 'two sources', 'table 3-1', copied),
    A52: sff8201(14, 'two sources', 'table 3-1', copied),
    A53: sff8201(90.6, 'two sources', 'table 3-1', copied),
  },
} as const;

const rows35 = driveHoleRows['3.5 in'];
const rows25 = driveHoleRows['2.5 in'];

export const driveForms: Readonly<Record<DriveForm, DriveFormFactor>> = {
  '3.5 in': {
    length: sff8301(147, 'near-primary', 'table 3-1, A2', { ...copied, note: 'largest' }),
    width: sff8301(101.6, 'near-primary', 'table 3-1, A3', copied),
    heights: sff8301([26.1, 17.8, 42] as const, 'near-primary', 'table 3-1, A1', {
      ...copied,
      note: 'largest of each option',
    }),
    holes: sff8301(
      holePattern(
        101.6,
        {
          alongs: [rows35.A7.value, rows35.A7.value + rows35.A6.value, rows35.A7.value + rows35.A13.value],
          inset: rows35.A5.value,
        },
        { alongs: [rows35.A8.value, rows35.A8.value + rows35.A9.value], above: rows35.A10.value },
      ),
      'near-primary',
      'table 3-1, A4 to A10 and A13',
      { ...copied, note: 'middle and far bottom pairs are optional, one of the two is present' },
    ),
    thread: sff8301('6-32 UNC-2B', 'near-primary', undefined, { ...copied, note: 'penetration 3.0 to 3.8' }),
  },
  '2.5 in': {
    length: sff8201(100.45, 'near-primary', 'table 3-1, A6', { ...copied, note: 'largest' }),
    width: sff8201(69.85, 'two sources', 'table 3-1, A4', copied),
    heights: sff8201([7, 5, 9.5, 15] as const, 'near-primary', 'table 3-1, A1', copied),
    holes: sff8201(
      holePattern(
        69.85,
        { alongs: [rows25.A50.value, rows25.A51.value], inset: rows25.A28.value },
        { alongs: [rows25.A52.value, rows25.A53.value], above: rows25.A23.value },
      ),
      'near-primary',
      'table 3-1, A23, A28, A29, A50 to A53',
      copied,
    ),
    thread: sff8201('M3', 'near-primary', undefined, {
      ...copied,
      note: 'at least 3 deep in the side (2 up to 7 mm), 2.5 below',
    }),
  },
};

/** Envelope of a 5.25 in half-height bay device. */
export const halfHeightBayDevice = {
  width: citing(noStandard)(146.1, 'two sources', undefined, { via: 'two articles' }),
  height: citing(noStandard)(41.4, 'two sources', undefined, { via: 'two articles', note: '41.3 to 41.4' }),
  length: citing(noStandard)(203, 'two sources', undefined, { via: 'two articles', note: 'largest' }),
} as const;
