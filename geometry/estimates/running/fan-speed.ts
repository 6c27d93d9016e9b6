/**
 * Temperature and sound against fan speed, and the speed at which the brief's wish is met. The two are solved together:
 * slower case fans make the air inside warmer, a card then turns its own fans up, and the sum may get louder again.
 */
import type { Plan } from '../../plan/plan-schema';
import type { Scene } from '../../plan/scene';
import { type AssumptionValues, middleValues } from '../assumptions';
import type { Profile } from '../profile';
import { type Run, runMachine } from './run';

export interface SpeedPoint {
  /** Cap on case and cooler fans, share of top speed. */
  readonly share: number;
  /** dB at the ear. */
  readonly level: number | undefined;
  /** deg C by part id, where known. */
  readonly temperatures: Readonly<Record<string, number>>;
  /** Share of top speed by device id. */
  readonly shares: Readonly<Record<string, number>>;
}

export type SpeedAnswer =
  | { readonly kind: 'met'; readonly point: SpeedPoint; readonly sweep: readonly SpeedPoint[] }
  /** Louder than the wish at any speed; the quietest is given. */
  | { readonly kind: 'not met'; readonly quietest: SpeedPoint; readonly sweep: readonly SpeedPoint[] }
  | { readonly kind: 'unknown'; readonly because: string };

export const sweepShares: readonly number[] = [0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.85, 1];

/** How near the level comes to the wish, dB. */
const NEAR_ENOUGH = 0.05;

const MOST_STEPS = 12;

/**
 * Highest cap, and so the coolest machine, at which the level at the ear is no more than the wish. `decibels` and the
 * distance default to the brief.
 */
export function fanSpeedFor(
  plan: Plan,
  scene: Scene,
  profile: Profile,
  decibels = plan.brief?.noiseWish?.decibels,
  values: AssumptionValues = middleValues,
): SpeedAnswer {
  if (decibels === undefined) return { kind: 'unknown', because: 'the brief states no noise wish' };
  const sweeper = new Sweeper(plan, scene, profile, values);
  const sweep: SpeedPoint[] = [];
  for (const share of sweepShares) {
    const point = sweeper.at(share);
    if (typeof point === 'string') return { kind: 'unknown', because: point };
    sweep.push(point);
  }
  const quiet = (point: SpeedPoint) => (point.level ?? Number.NEGATIVE_INFINITY) <= decibels;
  const index = sweep.findLastIndex(quiet);
  const under = sweep[index];
  if (under === undefined) {
    const quietest = sweep.reduce((best, point) => ((point.level ?? 0) < (best.level ?? 0) ? point : best));
    return { kind: 'not met', quietest, sweep };
  }
  const over = sweep[index + 1];
  const point = over ? refine(sweeper, under, over, decibels) : under;
  return { kind: 'met', point, sweep };
}

/** The sweep alone, for a chart. */
export function speedSweep(
  plan: Plan,
  scene: Scene,
  profile: Profile,
  values: AssumptionValues = middleValues,
): readonly SpeedPoint[] {
  const sweeper = new Sweeper(plan, scene, profile, values);
  return sweepShares.flatMap((share) => {
    const point = sweeper.at(share);
    return typeof point === 'string' ? [] : [point];
  });
}

/** Regula falsi kept between a speed that is quiet enough and one that is not; ends on the quiet side. */
function refine(sweeper: Sweeper, low: SpeedPoint, high: SpeedPoint, wish: number): SpeedPoint {
  let [under, over] = [low, high];
  for (let step = 0; step < MOST_STEPS && wish - (under.level ?? 0) > NEAR_ENOUGH; step++) {
    const span = (over.level ?? wish) - (under.level ?? wish);
    const linear = span > 0 ? (wish - NEAR_ENOUGH / 2 - (under.level ?? wish)) / span : 0.5;
    const share = under.share + Math.min(Math.max(linear, 0.1), 0.9) * (over.share - under.share);
    const point = sweeper.at(share);
    if (typeof point === 'string') return under;
    if ((point.level ?? 0) <= wish) under = point;
    else over = point;
  }
  return under;
}

class Sweeper {
  private last: Run | undefined;
  private readonly plan: Plan;
  private readonly scene: Scene;
  private readonly profile: Profile;
  private readonly values: AssumptionValues;

  constructor(plan: Plan, scene: Scene, profile: Profile, values: AssumptionValues) {
    this.plan = plan;
    this.scene = scene;
    this.profile = profile;
    this.values = values;
  }

  at(share: number): SpeedPoint | string {
    const profile = { ...this.profile, fanCap: share };
    const result = runMachine(this.plan, this.scene, profile, this.values, this.last?.state);
    if (!result.ok) return result.because;
    const { run } = result;
    this.last = run;
    return {
      share,
      level: run.level,
      temperatures: Object.fromEntries(
        run.temperatures.flatMap(({ part, celsius }) => (celsius === undefined ? [] : [[part.id, celsius]])),
      ),
      shares: Object.fromEntries(run.state.shares),
    };
  }
}
