/**
 * Leads: how long and how thick they are, how tightly they bend, how much room a bundle takes, mm. A sheet that states
 * a length prevails over what stands here.
 */
import { leadPractice } from './assembly-practice';
import { commonPractice, fromMemory, noStandard, supplyGuideAtx3 } from './cited-documents';
import { citing, type Published } from './published';
import type { SupplyForm } from './supply-forms';

const seen = citing(noStandard);

/** What a lead is made of, as far as routing asks. */
export interface LeadBuild {
  /** Round bundle, over all its wires. */
  readonly diameter: Published<number>;
  /** Least bend radius to the centre line, as a multiple of the diameter. */
  readonly bendFactor: Published<number>;
}

/** Bundles bend as their wires do, which slide past one another: the factor counts on the bundle only in part. */
const looseBundle = commonPractice(2, { note: 'of the bundle: its wires slide past one another' });

export const leadBuilds = {
  'main 24-pin': { diameter: fromMemory(14), bendFactor: looseBundle },
  'processor 8-pin': { diameter: fromMemory(9), bendFactor: looseBundle },
  'processor 4-pin': { diameter: fromMemory(7), bendFactor: looseBundle },
  'card 6-pin': { diameter: fromMemory(8), bendFactor: looseBundle },
  'card 8-pin': { diameter: fromMemory(9), bendFactor: looseBundle },
  'card 16-pin': { diameter: fromMemory(12), bendFactor: looseBundle },
  'drive power': { diameter: fromMemory(6), bendFactor: looseBundle },
  'peripheral 4-pin': { diameter: fromMemory(6), bendFactor: looseBundle },
  'fan 4-pin': { diameter: fromMemory(4), bendFactor: looseBundle },
  data: { diameter: fromMemory(7), bendFactor: commonPractice(3) },
  'front panel': { diameter: fromMemory(5), bendFactor: looseBundle },
  'front USB': { diameter: fromMemory(7), bendFactor: commonPractice(4) },
} as const satisfies Readonly<Record<string, LeadBuild>>;
export type LeadBuildName = keyof typeof leadBuilds;

type SupplyLead = 'main 24-pin' | 'processor' | 'card' | 'drive power';

/**
 * What the guide asks of a harness: no length is required of it, only that it is long enough to be plugged without
 * tension, and a least length is recommended, from the exit of the case to the wire side of the first plug.
 */
export const leastLeadLength = citing(supplyGuideAtx3)(150, 'one source', 'chapter DC connectors', {
  note: 'for all leads of general-use supplies; the guide of 2004 had 280 for the 12 V lead and 250 for the others',
});

const compactKits = { via: 'usual sets of leads', note: 'sets differ: measure before ordering' };

/**
 * Length of a supply's leads when its sheet states none, supply to first plug. The guide leaves lengths to the maker;
 * compact sets are made for compact enclosures, and are often short in larger ones.
 */
export const supplyLeadLengths: Readonly<
  Record<'ATX' | 'SFX' | 'other', Readonly<Record<SupplyLead, Published<number>>>>
> = {
  ATX: {
    'main 24-pin': seen(600, 'common practice', undefined, compactKits),
    processor: seen(650, 'common practice', undefined, compactKits),
    card: seen(600, 'common practice', undefined, compactKits),
    'drive power': seen(450, 'common practice', undefined, compactKits),
  },
  SFX: {
    'main 24-pin': seen(300, 'common practice', undefined, compactKits),
    processor: seen(400, 'common practice', undefined, compactKits),
    card: seen(400, 'common practice', undefined, compactKits),
    'drive power': seen(300, 'common practice', undefined, compactKits),
  },
  other: {
    'main 24-pin': seen(300, 'common practice', undefined, compactKits),
    processor: seen(350, 'common practice', undefined, compactKits),
    card: seen(350, 'common practice', undefined, compactKits),
    'drive power': seen(300, 'common practice', undefined, compactKits),
  },
};

/** Leads that belong to other parts. */
export const otherLeadLengths = {
  fan: fromMemory(400, { note: '300 to 500' }),
  coolerFan: fromMemory(250, { note: '200 to 300' }),
  data: fromMemory(450, { note: '300 to 500, sold apart' }),
  front: fromMemory(500, { note: 'from the front of the enclosure' }),
} as const;

/** Forms whose leads come in the lengths of the small ones. */
export function lengthFamily(form: SupplyForm): 'ATX' | 'SFX' | 'other' {
  if (form === 'ATX') return 'ATX';
  return form === 'SFX' || form === 'SFX-L' ? 'SFX' : 'other';
}

/** Slack on top of the routed length: a share and a fixed piece. */
export const leadSlack = {
  share: leadPractice.slackShare.value[0],
  fixed: commonPractice(20),
} as const;

/**
 * Smallest circle round n equal circles, in their diameters (circle packing in a circle; proved for n up to 13 and 19).
 */
export const circlesInCircle = citing({
  document: 'Circle packing in a circle, best known packings',
})(
  [
    1, 2, 2.1547, 2.4142, 2.7013, 3, 3, 3.3048, 3.6131, 3.813, 3.9238, 4.029, 4.2361, 4.328, 4.521, 4.615,
    4.792, 4.8637, 4.8637, 5.122,
  ] as const,
  'two sources',
);

/** Diameter of a round bundle of n equal leads of diameter d: the table to 20, beyond it the usual rule 1.2 sqrt(n). */
export function bundleDiameter(n: number, d: number): number {
  if (n <= 0) return 0;
  const ratio = circlesInCircle.value[n - 1];
  return d * (ratio ?? Math.max(1.2 * Math.sqrt(n), circlesInCircle.value[19] ?? 0));
}

/** Diameter of a bundle of different leads: 1.2 times the root of the sum of squares, never less than the thickest two side by side. */
export function mixedBundleDiameter(diameters: readonly number[]): number {
  const sorted = [...diameters].sort((a, b) => b - a);
  const squares = sorted.reduce((sum, d) => sum + d * d, 0);
  return Math.max(
    1.2 * Math.sqrt(squares) * (sorted.length > 1 ? 1 : 1 / 1.2),
    (sorted[0] ?? 0) + (sorted[1] ?? 0),
  );
}
