/** The estimates of a plan as they cross from the worker: plain data, without the placed bodies. */
import type {
  AirPicture,
  assumptionRanking,
  FanChange,
  FanPoint,
  Plan,
  PlanEstimates,
  Profile,
  RunningDetail,
  Sensitivity,
  SpeedAnswer,
  SpeedPoint,
} from '../../geometry';

export interface EstimatesRequest {
  readonly plan: Plan;
  readonly profile: Profile;
  /** ISO date, to let a quote run out. */
  readonly today: string;
}

export interface SoundRow {
  readonly id: string;
  readonly label: string;
  /** dB at 1 m from the machine. */
  readonly atOneMetre: number;
  readonly share?: number;
  readonly starved: boolean;
}

/** A change of fans, and what the new or turned fan would run into. */
export interface FanChangeRow extends Omit<FanChange, 'changed'> {
  /** Label of the part it would overlap; absent when it goes in, or when nothing is put in. */
  readonly inTheWay?: string;
}

/** A gap below a drooping card: as placed, with the tip sunk, and with a prop under the tip. mm. */
export interface DroopRow {
  readonly card: string;
  readonly label: string;
  /** 'card to what lies below, Drive' */
  readonly title: string;
  readonly placed: number;
  readonly sunk: number;
  readonly propped: number;
  readonly wanted: number;
}

export interface EstimatesAnswer extends Pick<PlanEstimates, 'topics' | 'wishes' | 'refused' | 'profile'> {
  /** Nothing is placed, so there is nothing to estimate. */
  readonly empty: boolean;
  /** Of the amounts; empty when nobody has said. */
  readonly currency: string;
  readonly power: Omit<PlanEstimates['power'], 'cards'>;
  /** Absent when the machine cannot be run. */
  readonly running?: Pick<RunningDetail, 'breaths' | 'spaces' | 'beating'> & {
    readonly picture: AirPicture;
    readonly fans: readonly FanPoint[];
    /** Loudest first. */
    readonly sounds: readonly SoundRow[];
    /** The highest speed of case and cooler fans at which the noise wish of the brief is met. */
    readonly speeds: SpeedAnswer;
    /** Temperatures and sound for any such speed. */
    readonly sweep: readonly SpeedPoint[];
    readonly changes: readonly FanChangeRow[];
    /** Labels of what has a temperature in the sweep of speeds, and the limits, deg C. */
    readonly watched: readonly { readonly part: string; readonly label: string; readonly limit: number }[];
  };
  readonly droops: readonly DroopRow[];
  /** The strongest assumption behind the figure at the head of each topic. */
  readonly strongest: readonly Sensitivity[];
  /** Which assumption to measure first: share of the bands that it answers for. */
  readonly ranking: ReturnType<typeof assumptionRanking>;
}

export interface AirRequest {
  readonly plan: Plan;
  readonly profile: Profile;
}

/** The arrows, or why there are none. */
export interface AirAnswer {
  readonly picture?: AirPicture;
  readonly because?: string;
}

export type EstimatesMessage =
  | ({ readonly kind: 'estimates' } & EstimatesRequest)
  | ({ readonly kind: 'air' } & AirRequest);

export type EstimatesReply<Answer> =
  | { readonly ok: true; readonly answer: Answer }
  | { readonly ok: false; readonly message: string };
