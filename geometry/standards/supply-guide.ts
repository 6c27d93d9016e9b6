/** Electrical tables for sizing a supply: short excursions, processor current, efficiency. */
import { supplyGuideAtx3, supplyGuideSingleRail } from './cited-documents';
import { citing, type Published } from './published';

const multiRail = citing(supplyGuideAtx3);
const singleRail = citing(supplyGuideSingleRail);

/** How far above its rating a supply must carry the load for a short time. */
export interface PowerExcursion {
  readonly microseconds: number;
  /** Share of time the excursion may last, 0 to 1. */
  readonly dutyCycle: number;
  /** Load over rating for a supply up to 450 W, or without the 16-pin connector. */
  readonly smallOrWithout16Pin: number;
  /** Load over rating for a supply above 450 W with the 16-pin connector. */
  readonly above450With16Pin: number;
}

function excursion(microseconds: number, dutyCycle: number, small: number, large: number): PowerExcursion {
  return { microseconds, dutyCycle, smallOrWithout16Pin: small, above450With16Pin: large };
}

export const powerExcursions: Published<readonly PowerExcursion[]> = singleRail(
  [
    excursion(100, 0.05, 1.5, 2),
    excursion(1_000, 0.08, 1.45, 1.8),
    excursion(10_000, 0.125, 1.35, 1.6),
    excursion(100_000, 0.25, 1.1, 1.2),
    excursion(Number.POSITIVE_INFINITY, 1, 1, 1),
  ],
  'primary',
  'table 3-3, page 23',
  { note: 'document 336521 is remembered to carry the same table' },
);

/** 12 V current a supply must give the processor, by the processor's rated power. */
export interface ProcessorCurrent {
  readonly ratedWatts: number;
  /** For longer than one second. */
  readonly continuousAmperes: number;
  /** For at most 10 ms. */
  readonly peakAmperes: number;
}

export const processorCurrents: Published<readonly ProcessorCurrent[]> = multiRail(
  [
    { ratedWatts: 35, continuousAmperes: 11, peakAmperes: 19 },
    { ratedWatts: 65, continuousAmperes: 23, peakAmperes: 34 },
    { ratedWatts: 125, continuousAmperes: 26, peakAmperes: 39 },
    { ratedWatts: 165, continuousAmperes: 37.5, peakAmperes: 40 },
  ],
  'primary',
  'table 2-1, page 17',
);

/** Rating above which the 16-pin connector is required, W. */
export const sixteenPinRequiredAbove = multiRail(450, 'primary', 'section 5.2.2.4.3');

/** Voltage band at the card, as shares of 12 V. */
export const cardVoltageBand = multiRail({ below: 0.08, above: 0.05 } as const, 'primary', 'table 3-5');

export type EfficiencyLevel = 'base' | 'Bronze' | 'Silver' | 'Gold' | 'Platinum' | 'Titanium';

/** Least efficiency, 0 to 1, at shares of the rated load; `at10` only where the level sets one. */
export interface EfficiencyPoints {
  readonly at10?: number;
  readonly at20: number;
  readonly at50: number;
  readonly at100: number;
}

function points(at20: number, at50: number, at100: number, at10?: number): EfficiencyPoints {
  const three = { at20: at20 / 100, at50: at50 / 100, at100: at100 / 100 };
  return at10 === undefined ? three : { at10: at10 / 100, ...three };
}

const programme = citing({ document: '80 PLUS efficiency levels, internal supplies' });

export const efficiency115Volt: Published<Readonly<Record<EfficiencyLevel, EfficiencyPoints>>> = programme(
  {
    base: points(80, 80, 80),
    Bronze: points(82, 85, 82),
    Silver: points(85, 88, 85),
    Gold: points(87, 90, 87),
    Platinum: points(90, 92, 89),
    Titanium: points(92, 94, 90, 90),
  },
  'two sources',
  '115 V internal',
  { via: 'two articles', note: 'one article prints 87 for Silver at full load' },
);

export const efficiency230Volt: Published<Readonly<Record<EfficiencyLevel, EfficiencyPoints>>> = programme(
  {
    base: points(82, 85, 82),
    Bronze: points(85, 88, 85),
    Silver: points(87, 90, 87),
    Gold: points(90, 92, 89),
    Platinum: points(92, 94, 90),
    Titanium: points(94, 96, 94, 90),
  },
  'one source',
  '230 V EU internal',
  { via: 'one article', note: 'Titanium at full load is 94 as printed' },
);
