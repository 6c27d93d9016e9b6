/** Units that sheets use, and what they are in the units of the fields. */
import type { Unit } from '../parts/dimension';

/** What a unit measures. `foreign` is for units no field has (volts, hours): known, so that they are not misread. */
export type Measure =
  | 'length'
  | 'mass'
  | 'power'
  | 'speed'
  | 'flow'
  | 'pressure'
  | 'sound'
  | 'data'
  | 'temperature'
  | 'foreign';

export interface SheetUnit {
  readonly name: string;
  readonly measure: Measure;
  /** Field units in one of it: mm, g, W, rpm, m³/h, Pa, dB, GB, °C. */
  readonly factor: number;
}

/** International inch, pound and ounce (exact by definition, NIST Handbook 44, appendix C). */
const MM_PER_INCH = 25.4;
const GRAMS_PER_POUND = 453.59237;
/** A cubic foot a minute: 0.3048³ m³ x 60. */
const CUBIC_METRES_PER_HOUR_IN_CFM = 0.3048 ** 3 * 60;
/** Conventional water column (ISO 80000-4): 9.80665 Pa a millimetre. */
const PASCALS_PER_MM_WATER = 9.80665;

function unit(name: string, measure: Measure, factor = 1): SheetUnit {
  return { name, measure, factor };
}

const foreign = unit('another unit', 'foreign');

/** Folded, without spaces. */
const units: ReadonlyMap<string, SheetUnit> = new Map(
  (
    [
      [unit('mm', 'length'), 'mm millimeter millimeters millimetre millimetres'],
      [unit('cm', 'length', 10), 'cm'],
      [unit('m', 'length', 1000), 'm'],
      [unit('in', 'length', MM_PER_INCH), `in inch inches zoll pouces pouce po pulgadas pollici " ''`],
      [unit('g', 'mass'), 'g gr gram grams gramm grammes gramos grammi'],
      [unit('kg', 'mass', 1000), 'kg'],
      [unit('lb', 'mass', GRAMS_PER_POUND), 'lb lbs pound pounds'],
      [unit('oz', 'mass', GRAMS_PER_POUND / 16), 'oz'],
      [unit('W', 'power'), 'w watt watts vatios'],
      [unit('kW', 'power', 1000), 'kw'],
      [unit('rpm', 'speed'), 'rpm u/min 1/min r/min tr/min rev/min min-1 min-¹ giri/min tpm upm omw/min'],
      [unit('m³/h', 'flow'), 'm3/h m³/h m^3/h cbm/h'],
      [unit('m³/min', 'flow', 60), 'm3/min m³/min'],
      [unit('CFM', 'flow', CUBIC_METRES_PER_HOUR_IN_CFM), 'cfm'],
      [unit('l/s', 'flow', 3.6), 'l/s'],
      [unit('Pa', 'pressure'), 'pa'],
      [unit('mmH2O', 'pressure', PASCALS_PER_MM_WATER), 'mmh2o mmaq mm-h2o'],
      [unit('inH2O', 'pressure', PASCALS_PER_MM_WATER * MM_PER_INCH), 'inh2o inchh2o'],
      [unit('dB', 'sound'), 'db(a) db/a dba db db-a'],
      [unit('GB', 'data'), 'gb gib'],
      [unit('TB', 'data', 1000), 'tb'],
      [unit('°C', 'temperature'), '°c c'],
      [
        foreign,
        'v vdc vac a ma hz khz mhz ghz % h hrs hours years year jahre ans anos gb/s gbps gbit/s mb/s mt/s bit va k n sone ' +
          'mhz gbits ms days months nm mm2 mm²',
      ],
    ] as const
  ).flatMap(([one, names]) => names.split(' ').map((name) => [name, one] as const)),
);

/** Folded text at the place where a unit may stand. No part of it can be matched in two ways. */
const UNIT_HERE =
  /(?:db ?\(a\)|(?:mm|in|inch)[ -]?(?:h2o|aq)|(?:m3|m³|m\^3|cbm)\/(?:h|min)|(?:u|1|r|tr|rev|giri|omw) ?\/ ?min|min-[1¹]|db[/-]a|gb(?:it)?\/s|m[bt]\/s|l\/s|mm[2²]|°c|"|''|%|[a-z]{1,11})(?![a-z0-9³²])/y;

/** The unit that begins at this place, and where it ends. */
export function unitAt(
  folded: string,
  text: string,
  at: number,
): { readonly unit: SheetUnit; readonly end: number } | undefined {
  UNIT_HERE.lastIndex = at;
  const met = UNIT_HERE.exec(folded)?.[0];
  if (met === undefined) return undefined;
  const end = at + met.length;
  // French octets are written 'Go' and 'To'; in small letters they are words.
  const octets = text.slice(at, end);
  if (octets === 'Go') return { unit: unit('GB', 'data'), end };
  if (octets === 'To' && !/^ ?\d/.test(folded.slice(end, end + 2)))
    return { unit: unit('TB', 'data', 1000), end };
  const known = units.get(met.replaceAll(' ', ''));
  return known && { unit: known, end };
}

/** A unit spelled as a whole word: 'mm', 'U/min'. */
export function unitNamed(word: string): SheetUnit | undefined {
  return units.get(word.replaceAll(' ', ''));
}

export const fieldUnitOf: Readonly<Record<Exclude<Measure, 'foreign'>, Unit>> = {
  length: 'mm',
  mass: 'g',
  power: 'W',
  speed: 'rpm',
  flow: 'm³/h',
  pressure: 'Pa',
  sound: 'dB',
  data: 'GB',
  temperature: '°C',
};

/** What a number without a unit may be in, when lengths are meant. */
export const lengthUnits: readonly SheetUnit[] = ['mm', 'cm', 'in'].flatMap((name) => units.get(name) ?? []);

/** What a flow without a unit may be in. */
export const flowUnits: readonly SheetUnit[] = ['m3/h', 'cfm'].flatMap((name) => units.get(name) ?? []);
