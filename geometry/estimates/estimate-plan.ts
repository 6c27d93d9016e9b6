/**
 * Everything that is estimated about a plan. Pure: the same plan, scene and profile give equal answers. With `bands`
 * (the default) every assumption is varied in turn, some fifty runs; without, only the middles are computed.
 */
import type { Plan } from '../plan/plan-schema';
import type { PlacedPart, Scene } from '../plan/scene';
import type { Topic } from './assumption';
import { type AssumptionId, type AssumptionValues, assumptionIds, middleValues } from './assumptions';
import { estimatesOf } from './banded';
import { briefWishes, type WishRow } from './brief/brief-wishes';
import type { Estimate } from './estimate';
import { massAssumptions } from './mass/mass-assumptions';
import { massFigures } from './mass/mass-figures';
import { moneyFigures } from './money/money-figures';
import { type CardPower, firstSupply } from './power/connectors';
import { type EfficiencyCurve, efficiencyCurve } from './power/efficiency-curve';
import type { ExcursionRow } from './power/excursions';
import { type PlugRow, plugRows, type SharedLead, sharedLeads } from './power/plugs';
import { powerAssumptions } from './power/power-assumptions';
import { type PowerModel, powerModel } from './power/power-figures';
import { circumstancesOf, type Profile } from './profile';
import { type RefusedRating, refusedRatings } from './ratings';
import { type AirPicture, airPicture } from './running/air-picture';
import { type Breath, breathsOf } from './running/breathing';
import { type BreathingSpace, breathingSpaces } from './running/breathing-space';
import { type FanPoint, fanPoints } from './running/fan-points';
import { type Run, runMachine } from './running/run';
import { runningEstimates } from './running/running-estimates';
import { beatingFans } from './running/sound-figures';
import { stillAirAssumptions, stillAirModel } from './running/still-air';
import type { SoundSource } from './sound/sources';
import { topicAnswer } from './topic-answer';

export interface EstimateOptions {
  readonly bands?: boolean;
  /** ISO date, to let a quote run out. */
  readonly today?: string;
}

export interface TopicEstimates {
  readonly topic: Topic;
  /** One line, with the words that it is an estimate. */
  readonly answer: string;
  readonly estimates: readonly Estimate[];
}

export interface PowerDetail {
  /** A bar for each part: sustained and peak, W. */
  readonly bars: readonly {
    readonly part: string;
    readonly label: string;
    readonly sustained: number;
    readonly peak: number;
  }[];
  readonly rated: number | undefined;
  readonly excursions: readonly ExcursionRow[];
  readonly plugs: readonly PlugRow[];
  readonly sharedLeads: readonly SharedLead[];
  readonly cards: readonly CardPower[];
  /** Absent without a supply. */
  readonly efficiency?: EfficiencyCurve;
}

export interface RunningDetail {
  readonly picture: AirPicture;
  readonly breaths: readonly Breath[];
  /** Narrowest first. */
  readonly spaces: readonly BreathingSpace[];
  readonly fans: readonly FanPoint[];
  /** Loudest first. */
  readonly sounds: readonly SoundSource[];
  readonly beating: readonly (readonly [string, string])[];
}

export interface PlanEstimates {
  readonly profile: Profile;
  readonly topics: Readonly<Record<Exclude<Topic, 'brief'>, TopicEstimates>>;
  readonly wishes: readonly WishRow[];
  readonly power: PowerDetail;
  /** Absent when the machine cannot be run; the air topic then says why. */
  readonly running?: RunningDetail;
  readonly refused: readonly RefusedRating[];
}

export function estimatePlan(
  plan: Plan,
  scene: Scene,
  profile: Profile,
  { bands = true, today }: EstimateOptions = {},
): PlanEstimates {
  const power = powerEstimates(plan, scene, profile, bands);
  const running = runningEstimates(plan, scene, profile, bands);
  const stillAir = stillAirModel(plan, scene, profile);
  const still = estimatesOf((values) => [stillAir(values)], bands ? stillAirAssumptions : []);
  const mass = massEstimates(plan, scene, bands);
  const money = estimatesOf(() => moneyFigures(plan, scene, today), []);
  const topics = {
    power: topicOf('power', power.estimates),
    air: topicOf('air', [...running.filter(({ topic }) => topic === 'air'), ...still]),
    heat: topicOf(
      'heat',
      running.filter(({ topic }) => topic === 'heat'),
    ),
    sound: topicOf(
      'sound',
      running.filter(({ topic }) => topic === 'sound'),
    ),
    mass: topicOf('mass', mass),
    money: topicOf('money', money),
  };
  const all = Object.values(topics).flatMap(({ estimates }) => estimates);
  const run = runMachine(plan, scene, profile, middleValues);
  const detail = powerDetail(plan, scene, profile, power.model);
  return {
    profile,
    topics,
    wishes: briefWishes(
      plan,
      all,
      profile.room,
      detail.plugs.flatMap(({ sentence }) => sentence ?? []),
    ),
    power: detail,
    ...(run.ok ? { running: runningDetail(run.run) } : {}),
    refused: refusedRatings(scene),
  };
}

function topicOf(topic: Exclude<Topic, 'brief'>, estimates: readonly Estimate[]): TopicEstimates {
  return { topic, estimates, answer: topicAnswer(topic, estimates) };
}

const idsOf = (table: object): readonly AssumptionId[] => assumptionIds.filter((id) => id in table);

/** Assumptions that move power at the load asked. */
const loadIds: readonly AssumptionId[] = [
  'idleProcessor',
  'gameProcessor',
  'idleCard',
  'renderCard',
  'idleDrive',
  'busyDrive',
  'idleOthers',
];

function powerEstimates(plan: Plan, scene: Scene, profile: Profile, bands: boolean) {
  const figures = (values: AssumptionValues) => powerModel(plan, scene, profile, values).figures;
  const varied = bands ? [...idsOf(powerAssumptions), ...loadIds] : [];
  return {
    model: powerModel(plan, scene, profile, middleValues),
    estimates: estimatesOf(figures, varied),
  };
}

function massEstimates(plan: Plan, scene: Scene, bands: boolean): readonly Estimate[] {
  return estimatesOf((values) => massFigures(plan, scene, values), bands ? idsOf(massAssumptions) : []);
}

function powerDetail(plan: Plan, scene: Scene, profile: Profile, model: PowerModel): PowerDetail {
  const supply = firstSupply(scene);
  const spec = supply?.spec.kind === 'supply' ? supply.spec : undefined;
  const output = [...model.heats.values()].reduce((sum, watts) => sum + watts, middleValues.extrasWatts);
  const { mains } = circumstancesOf(plan, profile, middleValues);
  return {
    bars: model.demands.map(({ part, sustained, peak }) => ({
      part: part.id,
      label: part.label,
      sustained,
      peak,
    })),
    rated: ratedOf(supply),
    excursions: model.rows,
    plugs: spec ? plugRows(scene, spec) : [],
    sharedLeads: supply ? sharedLeads(scene, supply) : [],
    cards: model.cards,
    ...(spec ? { efficiency: efficiencyCurve(spec, output, mains, middleValues) } : {}),
  };
}

function ratedOf(supply: PlacedPart | undefined): number | undefined {
  if (supply?.spec.kind !== 'supply') return undefined;
  const { watts } = supply.spec;
  return typeof watts === 'number' ? watts : watts.value;
}

function runningDetail(run: Run): RunningDetail {
  return {
    picture: airPicture(run),
    breaths: breathsOf(run),
    spaces: breathingSpaces(run),
    fans: fanPoints(run),
    sounds: run.sources,
    beating: beatingFans(run),
  };
}
