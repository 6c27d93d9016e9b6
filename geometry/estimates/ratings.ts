/**
 * Reading a rating off a sheet for an estimate: present and believable, missing, or refused by name. The schema has
 * already thrown out what is negative; here goes what no part of that kind can have.
 */
import { type Dimension, nominal, sourceOf } from '../parts/dimension';
import type { PlacedPart, Scene } from '../plan/scene';
import type { EstimateInput } from './estimate';

export type Reading =
  | { readonly known: true; readonly value: number; readonly input: EstimateInput }
  | { readonly known: false; readonly because: string };

export interface RatingBounds {
  readonly least: number;
  readonly most: number;
}

export function readRating(
  part: PlacedPart,
  title: string,
  dimension: Dimension | undefined,
  unit: NonNullable<EstimateInput['unit']>,
  { least, most }: RatingBounds,
): Reading {
  if (dimension === undefined)
    return { known: false, because: `the sheet of ${part.label} states no ${title}` };
  const value = nominal(dimension);
  if (!Number.isFinite(value) || value < least || value > most)
    return {
      known: false,
      because: `the ${title} of ${part.label}, ${value} ${unit}, cannot be (${least} to ${most} ${unit})`,
    };
  return {
    known: true,
    value,
    input: { name: `${part.label}, ${title}`, value, unit, source: sourceOf(dimension) },
  };
}

/** What a rating of a kind can be at all. From memory: wider than anything on sale for desktops. */
export const believable = {
  processorWatts: { least: 1, most: 500 },
  processorPeak: { least: 1, most: 1000 },
  cardWatts: { least: 1, most: 675 },
  cardPeak: { least: 1, most: 2000 },
  memoryWatts: { least: 0.1, most: 25 },
  driveWatts: { least: 0.1, most: 40 },
  boardWatts: { least: 1, most: 150 },
  supplyWatts: { least: 50, most: 3000 },
  fanFlow: { least: 1, most: 600 },
  fanPressure: { least: 0.5, most: 500 },
  fanSpeed: { least: 100, most: 10_000 },
  sound: { least: 5, most: 90 },
  coolerWatts: { least: 5, most: 600 },
  resistance: { least: 0.005, most: 5 },
  mass: { least: 1, most: 40_000 },
} as const satisfies Record<string, RatingBounds>;

export interface RefusedRating {
  readonly part: string;
  readonly message: string;
}

/** Every rating of the scene that contradicts another or cannot be, by name. */
export function refusedRatings(scene: Scene): readonly RefusedRating[] {
  return scene.parts.flatMap((part) => {
    const refuse = (message: string): RefusedRating => ({ part: part.id, message });
    const checks = checksOf(part);
    return checks.flatMap((reading) =>
      reading.known || reading.because.includes('states no') ? [] : [refuse(reading.because)],
    );
  });
}

function checksOf(part: PlacedPart): readonly Reading[] {
  const { spec } = part;
  const read = (
    title: string,
    dimension: Dimension | undefined,
    unit: NonNullable<EstimateInput['unit']>,
    bounds: RatingBounds,
  ) => readRating(part, title, dimension, unit, bounds);
  const mass = read('mass', spec.mass, 'g', believable.mass);
  switch (spec.kind) {
    case 'processor':
      return [
        mass,
        read('sustained power', spec.sustained, 'W', believable.processorWatts),
        read('peak power', spec.peak, 'W', peakBounds(spec.sustained, believable.processorPeak)),
      ];
    case 'card':
      return [
        mass,
        read('sustained power', spec.sustained, 'W', believable.cardWatts),
        read('peak power', spec.peak, 'W', peakBounds(spec.sustained, believable.cardPeak)),
      ];
    case 'fan':
      return [
        mass,
        read('free flow', spec.flow, 'm³/h', fanFlowBounds(spec.size)),
        read('shut-off pressure', spec.pressure, 'Pa', believable.fanPressure),
        read('top speed', spec.speed, 'rpm', believable.fanSpeed),
        read('sound', spec.sound, 'dB', believable.sound),
      ];
    case 'supply':
      return [mass, read('rated power', spec.watts, 'W', believable.supplyWatts)];
    case 'memory':
      return [mass, read('power', spec.watts, 'W', believable.memoryWatts)];
    case 'drive':
      return [mass, read('power', spec.watts, 'W', believable.driveWatts)];
    case 'cooler':
      return [mass, read('heat it is made for', spec.watts, 'W', believable.coolerWatts)];
    default:
      return [mass];
  }
}

/** A peak is never less than what is sustained. */
export function peakBounds(sustained: Dimension | undefined, bounds: RatingBounds): RatingBounds {
  return sustained === undefined ? bounds : { ...bounds, least: Math.max(bounds.least, nominal(sustained)) };
}

/** Fastest mean air through a fan's frame, m/s: no axial fan for desktops moves more. From memory. */
const FASTEST_MEAN_AIR = 12;

/** No fan of a frame moves more than this through it. */
export function fanFlowBounds(frameMm: number): RatingBounds {
  return {
    least: believable.fanFlow.least,
    most: Math.round((frameMm / 1000) ** 2 * FASTEST_MEAN_AIR * 3600),
  };
}
