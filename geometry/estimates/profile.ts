/** What an estimate is asked for: load, room, height, distance of the ear, how fast the fans may turn. */
import type { Plan } from '../plan/plan-schema';
import type { AssumptionValues } from './assumptions';

export type Load = 'idle' | 'game' | 'render' | 'worst';

export const loads: readonly Load[] = ['idle', 'game', 'render', 'worst'];

export interface Profile {
  readonly load: Load;
  /** Room temperature, deg C; the brief's, else the assumption. */
  readonly room?: number;
  /** Height above sea level, m; the brief's, else 0. */
  readonly altitude?: number;
  /**
   * Cap on case and cooler fans, share of top speed: case fans turn at it, cooler fans up to it. When absent, case fans
   * turn as the load asks and cooler fans as the processor asks.
   */
  readonly fanCap?: number;
  /** Share of top speed by part id, whatever else is said: 0 stops a fan. */
  readonly fanShares?: Readonly<Record<string, number>>;
  /** Ear to machine, m; the brief's, else the assumption. */
  readonly earDistance?: number;
  readonly mains?: 115 | 230;
}

/** Share of top speed that boards give case fans at each load, when nobody has set a curve. */
export const caseFanShares: Readonly<Record<Load, number>> = { idle: 0.4, game: 0.7, render: 0.7, worst: 1 };

export interface Circumstances {
  readonly room: number;
  readonly roomStated: boolean;
  readonly altitude: number;
  readonly distance: number;
  readonly distanceStated: boolean;
  readonly mains: 115 | 230;
}

export function circumstancesOf(plan: Plan, profile: Profile, values: AssumptionValues): Circumstances {
  const { brief } = plan;
  const room = profile.room ?? brief?.roomTemperature;
  const distance = profile.earDistance ?? brief?.noiseWish?.metres;
  return {
    room: room ?? values.roomTemperature,
    roomStated: room !== undefined,
    altitude: profile.altitude ?? brief?.altitude ?? 0,
    distance: distance ?? values.earDistance,
    distanceStated: distance !== undefined,
    mains: profile.mains ?? brief?.mains ?? 230,
  };
}

/** Shares of sustained power at a load. */
export function loadShares(
  load: Load,
  values: AssumptionValues,
): { processor: number; card: number; drive: number; others: number } {
  switch (load) {
    case 'idle':
      return {
        processor: values.idleProcessor,
        card: values.idleCard,
        drive: values.idleDrive,
        others: values.idleOthers,
      };
    case 'game':
      return { processor: values.gameProcessor, card: 1, drive: values.busyDrive, others: 1 };
    case 'render':
      return { processor: 1, card: values.renderCard, drive: values.busyDrive, others: 1 };
    case 'worst':
      return { processor: 1, card: 1, drive: 1, others: 1 };
  }
}
