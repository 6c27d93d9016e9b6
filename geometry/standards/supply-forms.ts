/**
 * Power supply forms: envelopes, mounting holes, fans and vents, mm.
 *
 * Face frame: look at the mounting (rear) face from OUTSIDE the enclosure, origin at the lower left corner of
 * the face, `u` right, `v` up. Depth runs from that face into the enclosure. A supply turned over takes the same
 * table turned by 180 degrees, which for ATX lands on other holes.
 */
import {
  commonPractice,
  fromMemory,
  noStandard,
  supplyGuide2004,
  supplyGuideAtx3,
  supplyGuideThin,
} from './cited-documents';
import { citing, type Published } from './published';

export type SupplyForm = 'ATX' | 'PS3' | 'SFX' | 'SFX-L' | 'TFX' | 'Flex ATX' | 'CFX' | 'LFX';

/** A hole in the mounting face. */
export interface FaceHole {
  readonly u: number;
  readonly v: number;
}

export interface SupplyFormFactor {
  readonly width: Published<number>;
  readonly height: Published<number>;
  readonly depth: Published<number>;
  /** Empty where no drawing of the holes has been read. */
  readonly holes: Published<readonly FaceHole[]>;
  /** Frame size of the usual fan; the largest where several are usual. */
  readonly fanFrame: Published<number>;
}

const guide = citing(supplyGuide2004);
const listing = citing(noStandard);

const atxHoles = guide<readonly FaceHole[]>(
  [
    { u: 6, v: 16 },
    { u: 6, v: 80 },
    { u: 144, v: 80 },
    { u: 120, v: 6 },
  ],
  'primary',
  'figure 8',
);

const sfxHoles = listing<readonly FaceHole[]>(
  [
    { u: 6, v: 6 },
    { u: 6, v: 31.75 },
    { u: 6, v: 57.5 },
    { u: 119, v: 6 },
    { u: 119, v: 57.5 },
  ],
  'two sources',
  undefined,
  {
    plusMinus: 0.25,
    via: 'three transcriptions',
    note: 'the fifth hole is half-way up one side only; which side depends on the view, so an enclosure cuts both',
  },
);

const notRead = (form: string) =>
  listing<readonly FaceHole[]>([], 'memory', undefined, { note: `no drawing of the ${form} holes was read` });

const articles = (count: string, note?: string) => ({ via: count, ...(note === undefined ? {} : { note }) });

export const supplyForms: Readonly<Record<SupplyForm, SupplyFormFactor>> = {
  ATX: {
    width: guide(150, 'primary', 'figure 8', { plusMinus: 1 }),
    height: guide(86, 'primary', 'figure 8', { plusMinus: 1 }),
    depth: guide(140, 'primary', 'figure 8', {
      plusMinus: 1,
      note: 'longer units of 160, 180 and 230 are sold',
    }),
    holes: atxHoles,
    fanFrame: commonPractice(140, { note: '120 to 140, in the wide face' }),
  },
  PS3: {
    width: listing(150, 'two sources', undefined, articles('two articles')),
    height: listing(86, 'two sources', undefined, articles('two articles')),
    depth: listing(100, 'two sources', undefined, articles('two articles', 'short ATX')),
    holes: guide(atxHoles.value, 'derived', 'figure 8', { note: 'the ATX face' }),
    fanFrame: fromMemory(120),
  },
  SFX: {
    width: listing(125, 'two sources', undefined, articles('three transcriptions')),
    height: listing(
      63.5,
      'two sources',
      undefined,
      articles('three transcriptions', 'one article prints 51.5: the hole spacing'),
    ),
    depth: listing(100, 'two sources', undefined, articles('three transcriptions')),
    holes: sfxHoles,
    fanFrame: fromMemory(92, { note: '80 or 92, slim' }),
  },
  'SFX-L': {
    width: listing(125, 'two sources', undefined, articles('one transcription and articles')),
    height: listing(63.5, 'two sources', undefined, articles('one transcription and articles')),
    depth: listing(
      130,
      'two sources',
      undefined,
      articles('one transcription and articles', 'not in any standard'),
    ),
    holes: listing(sfxHoles.value, 'derived', undefined, { note: 'the SFX face' }),
    fanFrame: fromMemory(120, { note: 'slim' }),
  },
  TFX: {
    width: listing(85, 'two sources', undefined, articles('three listings')),
    height: listing(65, 'two sources', undefined, articles('three listings', 'two others print 64')),
    depth: listing(175, 'two sources', undefined, articles('three listings')),
    holes: notRead('TFX'),
    fanFrame: citing(supplyGuideThin)(80, 'primary', 'section 3.5'),
  },
  'Flex ATX': {
    width: listing(81.5, 'two sources', undefined, {
      plusMinus: 0.3,
      via: "a maker's face drawing and an article",
    }),
    height: listing(40.5, 'two sources', undefined, {
      plusMinus: 0.3,
      via: "a maker's face drawing and an article",
      note: 'one transcription uses 40',
    }),
    depth: listing(150, 'two sources', undefined, articles('an article and two listings')),
    holes: listing<readonly FaceHole[]>(
      [
        { u: 4.4, v: 36 },
        { u: 15.2, v: 37 },
        { u: 76, v: 4.1 },
        { u: 76, v: 36.1 },
      ],
      'two sources',
      undefined,
      {
        plusMinus: 0.5,
        via: "a maker's face drawing and one transcription",
        note: 'mains inlet on the left; one file puts the right-hand pair at 77.1',
      },
    ),
    fanFrame: fromMemory(40),
  },
  CFX: {
    width: listing(150, 'two sources', undefined, articles('two listings')),
    height: listing(
      86,
      'two sources',
      undefined,
      articles('two listings', 'L-shaped: the stepped part is 101.6 wide'),
    ),
    depth: listing(96, 'two sources', undefined, articles('two listings', 'one prints 95')),
    holes: notRead('CFX'),
    fanFrame: fromMemory(80),
  },
  LFX: {
    width: listing(
      62,
      'two sources',
      undefined,
      articles('an article and two listings', 'another prints 72 x 62'),
    ),
    height: listing(72, 'two sources', undefined, articles('an article and two listings')),
    depth: listing(210, 'two sources', undefined, articles('an article and two listings', 'largest depth')),
    holes: notRead('LFX'),
    fanFrame: fromMemory(60),
  },
};

/** Depths of ATX supplies longer than the standard, as sold. */
export const longAtxDepths = listing([160, 180, 230] as const, 'two sources', undefined, {
  via: 'three listings for 180 and 230',
  note: '160 is common practice',
});

/** Width of the narrower, stepped part of a CFX supply. */
export const cfxSteppedWidth = listing(101.6, 'two sources', undefined, { via: 'two listings' });

/** Height an SFX supply reaches with a fan raised above its lid. */
export const sfxRaisedFanHeight = listing(80.6, 'one source', undefined, {
  via: 'one article',
  note: '63.5 + 17.1',
});

/** Details of the ATX outline. */
export const atxSupplyDetails = {
  /** Harness exit centre, from the side and from the top face. */
  harnessExitFromSide: guide(16, 'primary', 'figure 8', { note: 'reference dimension' }),
  harnessExitFromTop: guide(53, 'primary', 'figure 8', { note: 'reference dimension' }),
  /** Least share of open area of the rear inlet grill and of the top vent. */
  rearGrillOpenShare: guide(0.55, 'primary', 'figures 8 and 9'),
  topVentOpenShare: guide(0.6, 'primary', 'figures 8 and 9'),
  topVent: guide(
    { width: 114, depth: 80, fromMountingFace: 45, fromSide: 8 } as const,
    'primary',
    'figure 9',
    {
      note: '114 x 80, starting 45.0 and 8.0 in; which figure belongs to which edge is read from the sizes',
    },
  ),
  screw: guide('No. 6-32 UNC-2B', 'primary', 'figure 8'),
  screwClearanceHole: listing(3.7, 'two sources', undefined, { via: 'two transcriptions' }),
} as const;

/** Flat plate that carries an SFX face in an ATX opening; no standard describes one. */
export const sfxToAtxPlate = {
  thickness: fromMemory(1.2, { note: '1.0 to 1.5 mm steel' }),
  width: fromMemory(150),
  height: fromMemory(86),
} as const;

/** Shortest harness from the case exit to the wire side of the first plug. */
export const shortestHarness = {
  current: citing(supplyGuideAtx3)(150, 'primary', 'section 5.2.2', { note: 'every harness' }),
  olderTwelveVolt: guide(280, 'primary', 'page 32', { note: 'superseded' }),
  olderOthers: guide(250, 'primary', 'page 32', { note: 'superseded' }),
} as const;
