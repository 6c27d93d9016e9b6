/** Frame sizes, hole pitches and usual thicknesses of axial fans, mm. Common practice, not one standard. */
import { commonPractice, noStandard } from './cited-documents';
import { citing, type Published } from './published';

export type FanFrame = 40 | 50 | 60 | 70 | 80 | 92 | 120 | 140 | 200 | 220;

type Thicknesses = readonly [number, ...number[]];

export interface FanFrameSize {
  /** Square hole pitch, centre to centre. */
  readonly pitch: Published<number>;
  /** Thicknesses on sale, the usual one first. */
  readonly thicknesses: Published<Thicknesses>;
}

const onSale = (...thicknesses: Thicknesses) =>
  commonPractice<Thicknesses>(thicknesses, { note: 'seen in open drawings, or remembered' });

const drawn = citing(noStandard);
const two = { via: 'two transcriptions' };
const one = { via: 'one transcription and memory' };

export const fanFrames: Readonly<Record<FanFrame, FanFrameSize>> = {
  40: { pitch: drawn(32, 'two sources', undefined, two), thicknesses: onSale(20, 10, 11, 15, 28) },
  50: { pitch: drawn(40, 'two sources', undefined, two), thicknesses: onSale(15, 10) },
  60: { pitch: drawn(50, 'two sources', undefined, two), thicknesses: onSale(25, 15, 20) },
  70: {
    pitch: drawn(60, 'one source', undefined, {
      via: 'one transcription',
      note: 'another draws 61.5: unresolved',
    }),
    thicknesses: onSale(15),
  },
  80: {
    pitch: drawn(71.5, 'two sources', undefined, { ...two, note: 'a third rounds to 72' }),
    thicknesses: onSale(25, 15, 38),
  },
  92: {
    pitch: drawn(82.5, 'one source', undefined, { ...one, note: 'another rounds to 83' }),
    thicknesses: onSale(25, 15),
  },
  120: {
    pitch: drawn(105, 'two sources', undefined, { via: 'three transcriptions' }),
    thicknesses: onSale(25, 15, 38),
  },
  140: {
    pitch: drawn(124.5, 'one source', undefined, { ...one, note: 'a shop guide rounds to 125' }),
    thicknesses: onSale(25, 15),
  },
  200: {
    pitch: drawn(154, 'one source', undefined, {
      ...one,
      note: 'some 200 mm frames use 170 or other pitches',
    }),
    thicknesses: onSale(20, 30),
  },
  220: { pitch: drawn(170, 'one source', undefined, { via: 'one transcription' }), thicknesses: onSale(20) },
};

/** Through-hole for the fan screw. */
export const fanScrewHole = drawn(4.4, 'two sources', undefined, {
  via: 'two transcriptions',
  note: 'one draws 4.5',
});

/** Thickness of the usual case fan and of the usual slim fan. */
export const fanThickness = {
  usual: drawn(25, 'two sources', undefined, { via: 'a transcription and an article' }),
  slim: drawn(15, 'one source', undefined, { via: 'one transcription; common practice' }),
} as const;

/** Places of the four screw holes about the centre of a frame of the given pitch. */
export function fanHoles(pitch: number): readonly (readonly [u: number, v: number])[] {
  const half = pitch / 2;
  return [
    [-half, -half],
    [half, -half],
    [half, half],
    [-half, half],
  ];
}

/** Hole positions along a row of fans set frame to frame, from the outer edge of the first frame. */
export function fanRowHoleColumns(frame: FanFrame, fans: number): readonly number[] {
  const pitch = fanFrames[frame].pitch.value;
  const inset = (frame - pitch) / 2;
  return Array.from({ length: fans }, (_, i) => [i * frame + inset, i * frame + inset + pitch]).flat();
}
