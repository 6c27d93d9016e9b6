/** Air by height and temperature: kelvin inside, degrees Celsius, metres and pascals outside. */
import { fromMemory } from './cited-documents';
import { citing } from './published';

const isoAtmosphere = citing({
  document: 'ISO 2533 Standard Atmosphere',
  publisher: 'ISO',
  revision: '1975',
});
const note = 'constants remembered; the density ratio they give at 1500 m, 0.864, is a published one';

export const standardAtmosphere = {
  seaLevelPressure: isoAtmosphere(101_325, 'memory', undefined, { note }),
  seaLevelKelvin: isoAtmosphere(288.15, 'memory', undefined, { note }),
  kelvinPerMetre: isoAtmosphere(0.0065, 'memory', undefined, { note }),
  gasConstant: isoAtmosphere(287.053, 'memory', undefined, { note }),
} as const;

/** Standard acceleration of free fall, m/s2 (exact by definition). */
export const FREE_FALL = 9.80665;

/** Specific heat of dry air at constant pressure, J/(kg K). */
export const airSpecificHeat = fromMemory(1005, { note: 'dry air near 20 deg C' });

/** Density that makers' airflow rules are written for, kg/m3. */
export const makersAirDensity = fromMemory(1.2, { note: 'near 20 deg C at sea level' });

export const KELVIN_AT_ZERO_CELSIUS = 273.15;

/** Pressure of the standard atmosphere at a height in metres, Pa. */
export function standardPressure(metres: number): number {
  const { seaLevelPressure, seaLevelKelvin, kelvinPerMetre, gasConstant } = standardAtmosphere;
  const exponent = FREE_FALL / (gasConstant.value * kelvinPerMetre.value);
  return seaLevelPressure.value * (1 - (kelvinPerMetre.value * metres) / seaLevelKelvin.value) ** exponent;
}

/** Density of the standard atmosphere at a height in metres, with the standard's own (falling) temperature, kg/m3. */
export function standardDensity(metres: number): number {
  const kelvin = standardAtmosphere.seaLevelKelvin.value - standardAtmosphere.kelvinPerMetre.value * metres;
  return standardPressure(metres) / (standardAtmosphere.gasConstant.value * kelvin);
}

/** Density of the air of a room at a height in metres and a temperature in degrees Celsius, kg/m3. */
export function roomAirDensity(metres: number, celsius: number): number {
  const kelvin = celsius + KELVIN_AT_ZERO_CELSIUS;
  return standardPressure(metres) / (standardAtmosphere.gasConstant.value * kelvin);
}
