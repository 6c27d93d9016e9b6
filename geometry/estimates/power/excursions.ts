/** Short peaks of all parts together against what a supply must ride through. */
import { powerExcursions, sixteenPinRequiredAbove } from '../../standards/supply-guide';
import type { Demand } from './demand';

export interface ExcursionRow {
  readonly microseconds: number;
  /** Share of the time it may last. */
  readonly dutyCycle: number;
  /** All parts at their peak of that duration together, W. */
  readonly load: number;
  /** Load over rating that the guide asks of the supply. */
  readonly allowedShare: number;
}

/** Peak of one part that lasts this long, W. */
export function peakLasting(demand: Demand, microseconds: number): number {
  const { sustained, peak, fades } = demand;
  const rise = peak - sustained;
  if (microseconds <= 1_000) return peak;
  if (microseconds <= 10_000) return sustained + rise * fades.at10ms;
  if (microseconds <= 100_000) return sustained + rise * fades.at100ms;
  return sustained;
}

/** Whether the guide's larger excursions are asked of a supply. */
export function ridesLargerExcursions(rated: number, has16Pin: boolean): boolean {
  return rated > sixteenPinRequiredAbove.value && has16Pin;
}

export function excursionRows(
  demands: readonly Demand[],
  extraWatts: number,
  larger: boolean,
): readonly ExcursionRow[] {
  return powerExcursions.value.map((row) => ({
    microseconds: row.microseconds,
    dutyCycle: row.dutyCycle,
    load: demands.reduce((sum, demand) => sum + peakLasting(demand, row.microseconds), extraWatts),
    allowedShare: larger ? row.above450With16Pin : row.smallOrWithout16Pin,
  }));
}

/** Load whose heating is that of a high load for a share of the time and a low one for the rest. */
export function effectiveLoad(low: number, high: number, highShare: number): number {
  return Math.sqrt((1 - highShare) * low ** 2 + highShare * high ** 2);
}

/** 'continuous', '100 ms', '100 µs' */
export function durationName(microseconds: number): string {
  if (!Number.isFinite(microseconds)) return 'continuous';
  return microseconds >= 1000 ? `${microseconds / 1000} ms` : `${microseconds} µs`;
}
