/** What may be asked about a plan, and the kind of answer. All of it is plain data that can cross to a worker. */
import type {
  Change,
  DimensionChain,
  MountEnvelope,
  Plan,
  ShelfPart,
  StackUp,
  WorthMeasuring,
} from '../../geometry';

export type StudyRequest =
  /** Of every clearance of the plan. */
  | { readonly topic: 'stack-ups'; readonly plan: Plan }
  | { readonly topic: 'stack-up'; readonly plan: Plan; readonly clearance: string }
  /** Where the dimensions behind a clearance lie, to be drawn. */
  | { readonly topic: 'chain'; readonly plan: Plan; readonly clearance: string }
  /** What still goes on every mount. */
  | { readonly topic: 'envelope'; readonly plan: Plan }
  /** Of every clearance that is undecided. */
  | { readonly topic: 'worth measuring'; readonly plan: Plan }
  /** Out of a finding or a clearance, by its id; parts from the shelf may be tried in the place of others. */
  | {
      readonly topic: 'ways to change';
      readonly plan: Plan;
      readonly target: string;
      readonly shelf: readonly ShelfPart[];
    };

export type StudyTopic = StudyRequest['topic'];

interface Answers {
  readonly 'stack-ups': readonly StackUp[];
  readonly 'stack-up': StackUp | undefined;
  readonly chain: DimensionChain | undefined;
  readonly envelope: readonly MountEnvelope[];
  readonly 'worth measuring': readonly WorthMeasuring[];
  readonly 'ways to change': readonly Change[];
}

export type StudyAnswer<R extends StudyRequest> = Answers[R['topic']];

export interface StudyMessage {
  readonly number: number;
  readonly request: StudyRequest;
}

export type StudyReply =
  | { readonly number: number; readonly ok: true; readonly answer: unknown }
  | { readonly number: number; readonly ok: false; readonly message: string };
