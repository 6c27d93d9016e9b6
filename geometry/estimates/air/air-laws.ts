/** Laws of moving air: watts, kelvins, pascals, cubic metres a second, square metres, kilograms a cubic metre. */
import {
  airSpecificHeat,
  FREE_FALL,
  KELVIN_AT_ZERO_CELSIUS,
  makersAirDensity,
} from '../../standards/standard-atmosphere';

/** Cubic metres a second in one cubic foot a minute, exactly. */
export const CUBIC_METRES_PER_SECOND_PER_CFM = 0.3048 ** 3 / 60;

export const SECONDS_PER_HOUR = 3600;

/** Rise of an air stream that takes up `watts`: P / (rho c Q). */
export function airRise(watts: number, flow: number, density = makersAirDensity.value): number {
  return watts / (density * airSpecificHeat.value * flow);
}

/** Flow that takes up `watts` with a rise of `kelvins`. */
export function flowForRise(watts: number, kelvins: number, density = makersAirDensity.value): number {
  return watts / (density * airSpecificHeat.value * kelvins);
}

/** What a change of speed by `ratio` does to a fan: flow, pressure and power by the first, second and third power. */
export function fanLaws(ratio: number): { flow: number; pressure: number; power: number } {
  return { flow: ratio, pressure: ratio ** 2, power: ratio ** 3 };
}

/** Pressure an opening of effective area `area` (coefficient times open area) takes at a flow: rho/2 (Q/A)^2. */
export function openingLoss(flow: number, area: number, density = makersAirDensity.value): number {
  return (density / 2) * (flow / area) ** 2;
}

/** Flow through an opening of effective area at a pressure, with its sign. */
export function openingFlow(pressure: number, area: number, density = makersAirDensity.value): number {
  return Math.sign(pressure) * area * Math.sqrt((2 * Math.abs(pressure)) / density);
}

/** Effective area of openings one behind the other: 1/A^2 adds up. */
export function areaInSeries(areas: readonly number[]): number {
  return 1 / Math.sqrt(areas.reduce((sum, area) => sum + 1 / area ** 2, 0));
}

/** Effective area of openings side by side. */
export function areaInParallel(areas: readonly number[]): number {
  return areas.reduce((sum, area) => sum + area, 0);
}

/** Pressure of a column of warm air `height` m high, `rise` K above a surrounding air of `celsius`. */
export function stackPressure(
  height: number,
  rise: number,
  celsius: number,
  density = makersAirDensity.value,
): number {
  return (density * FREE_FALL * height * rise) / (celsius + KELVIN_AT_ZERO_CELSIUS);
}

/** Rise of an inlet that draws a share of its own exhaust, which is `rise` K above that inlet: share rise / (1 - share). */
export function rebreathingRise(share: number, rise: number): number {
  return (share * rise) / (1 - share);
}
