/** What is put in or taken out as one piece. */
import type { PartKind } from '../../../parts/part-spec';
import type { Vector3 } from '../../../space/vector';

/** A part, or a piece of one that comes off by itself: a panel, the sink over a drive, a plug in its socket. */
export type UnitKind = PartKind | 'panel' | 'slot cover' | 'M.2 sink' | 'cooler fan' | 'plug';

export interface AssemblyUnit {
  readonly index: number;
  /** Part id, and behind a slash the piece: 'cooler', 'enclosure/side panel', 'board/plug main 24-pin'. */
  readonly id: string;
  readonly kind: UnitKind;
  /** As it stands in a sentence: 'the cooler', 'memory 2'. */
  readonly name: string;
  /** Index of the part it belongs to, in the scene. */
  readonly part: number;
  /** Its solid boxes, as numbers into `Scene.boxes`. */
  readonly boxes: readonly number[];
  /** Unit it sits on. Undefined for what sits on the enclosure itself. */
  readonly on?: number;
  /** For a plug: the socket it is in. */
  readonly plug?: PlugSeat;
}

/** A plug in its socket. */
export interface PlugSeat {
  /** Id of the lead it ends. */
  readonly lead: string;
  /** Way it comes off, unit vector in the world. */
  readonly out: Vector3;
  /** How far it stands in the way off, mm. */
  readonly depth: number;
  /** The unit at the other end that the lead cannot leave, for a lead that is fixed there. */
  readonly fixedTo?: number;
}
