/** How parts of the shelf would sit in a plan: what crosses to the worker and comes back, all of it plain data. */
import type { PartSpec, Placement, Plan } from '../../geometry';

/** Something on the shelf that is to be tried in the plan. */
export interface ShelfCandidate {
  readonly id: string;
  readonly spec: PartSpec;
}

export interface SeatVerdict {
  /**
   * `mount`: on a free mount. `replace`: in the place of a part of its kind. `free`: stands by itself, as an
   * enclosure does. `none`: no mount of the plan takes it. `unbuildable`: its sheet contradicts itself.
   */
  readonly seat: 'mount' | 'replace' | 'free' | 'none' | 'unbuildable';
  /** 'Slot 2 on Board', or the label of the part that gives way; empty for the rest. */
  readonly where: string;
  /** Where it would go; only for `mount` and `free`. */
  readonly placement?: Placement;
  /** It has a seat, and nothing that stops the build comes of it. */
  readonly fits: boolean;
  /** The smallest signed gap between the part and anything else, mm: 'to side panel', or 'Cooler to card'. */
  readonly tightest?: { readonly millimetres: number; readonly between: string; readonly wanted: number };
  /** What stops the build, worst first, in sentences. */
  readonly faults: readonly string[];
  /** What becomes covered that was not, in sentences. */
  readonly covers: readonly string[];
}

/** `plan` is sent once; later requests with the same number mean the same plan. */
export interface ShelfRequest {
  readonly number: number;
  readonly planNumber: number;
  readonly plan?: Plan;
  /** Id of the part that one of its kind would take the place of. */
  readonly selected: string | undefined;
  /** The most urgent first. */
  readonly candidates: readonly ShelfCandidate[];
  /** Time after which no further candidate is begun, ms. At least one is always tried. */
  readonly budget: number;
}

export interface ShelfReply {
  readonly number: number;
  /** Of as many candidates as there was time for, in their order. */
  readonly verdicts: readonly SeatVerdict[];
}
