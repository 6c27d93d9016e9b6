/** What the solver has to say about a scene. Lengths in mm, volumes in mm³, directions are unit vectors in the world. */
import type { FaceName } from '../space/oriented-box';
import type { Vector3 } from '../space/vector';

/** One face (or, without `face`, the whole box) of one part, named so that list and viewport mean the same thing. */
export interface FaceRef {
  readonly part: string;
  /** Name of the box within the part. */
  readonly box: string;
  readonly face?: FaceName;
}

export type FindingKind =
  /** Two solids overlap. */
  | 'interference'
  /** A solid stands in space reserved for a plug, a bend, air or a hand. */
  | 'intrusion'
  /** A part rises above a published component-height zone of the board. */
  | 'zone'
  /** A slot, socket or header that a body makes unusable, or usable only before that body goes in. */
  | 'covered'
  /** A standoff is missing under a hole, or stands where there is no hole. */
  | 'standoff'
  /** A part is not where its mount wants it, or its mount does not exist. */
  | 'seat'
  /** There is a gap, but a smaller one than wanted. */
  | 'tight'
  /** The tubes of a liquid cooler do not reach its radiator. */
  | 'tubes';

/** How much it matters: a fault stops the build, a caution asks for a decision, a note is good to know. */
export type Weight = 'fault' | 'caution' | 'note';

export interface Finding {
  /** Stable between edits as long as the same things meet: kind and names, never numbers. */
  readonly id: string;
  readonly kind: FindingKind;
  readonly weight: Weight;
  /** Ids of the parts concerned, the one to act on first. */
  readonly parts: readonly string[];
  /** The two faces (or boxes) that set the number. */
  readonly faces: readonly FaceRef[];
  /** Feature that is covered, by id within its part. */
  readonly feature?: string;
  /** Signed: negative is overlap. */
  readonly millimetres?: number;
  /** Volume of the overlap. */
  readonly volume?: number;
  /** The shortest move that frees the first part. */
  readonly escape?: { readonly direction: Vector3; readonly distance: number };
  /** Pairs of boxes (indices into `Scene.boxes`) that overlap, to draw them hatched. */
  readonly overlaps: readonly (readonly [number, number])[];
  /** One plain sentence a client understands, with the number. */
  readonly sentence: string;
  /** What could be done, best first; empty when nothing is known. */
  readonly waysOut: readonly string[];
}

/** Verdict on a clearance in the words of ISO 286-1; on nominal sizes only the first and last occur. */
export type Fit = 'clearance fit' | 'transition fit' | 'interference fit';

/** A signed gap along a direction between two faces. */
export interface Clearance {
  /** Stable: rule and part ids, or 'neighbour/<part>/<direction>'. */
  readonly id: string;
  /** Rule it comes from ('cooler to side panel'), the key of the wanted gap. */
  readonly rule: string;
  /** 'Cooler' and 'to side panel', for a row of two lines. */
  readonly title: string;
  readonly towards: string;
  /** Ids of the two parts. */
  readonly parts: readonly [string, string];
  readonly from: FaceRef;
  readonly to: FaceRef;
  /** From `from` to `to`. */
  readonly direction: Vector3;
  /** Signed gap, mm; negative is overlap. */
  readonly millimetres: number;
  /** Gap wanted between such a pair, mm. */
  readonly wanted: number;
  readonly fit: Fit;
  /** Ends of the dimension line, in the world: on the face of `from` and on the face of `to`. */
  readonly points: readonly [Vector3, Vector3];
  readonly sentence: string;
  /** 'A card up to 312.0 mm long fits; the front fan binds; without it, 337.0 mm.' */
  readonly limit?: string;
}

export type Direction = '-x' | '+x' | '-y' | '+y' | '-z' | '+z';

/** Nearest thing a part meets when moved along a world axis. */
export interface Neighbour {
  readonly part: string;
  readonly direction: Direction;
  /** Free travel, mm; undefined when nothing is met within the reach of the scene. */
  readonly millimetres?: number;
  readonly from?: FaceRef;
  readonly to?: FaceRef;
}

export interface Verdict {
  readonly fits: boolean;
  readonly faults: number;
  readonly cautions: number;
  /** 'Everything fits. Tightest: 3.2 mm between cooler and side panel.' */
  readonly headline: string;
  /** The rest of the story in one or two sentences, perhaps empty. */
  readonly detail: string;
  /** Id of the tightest clearance. */
  readonly tightest?: string;
}

export interface Solution {
  readonly verdict: Verdict;
  /** Faults first, then cautions, then notes; worst first within each. */
  readonly findings: readonly Finding[];
  /** Tightest first. */
  readonly clearances: readonly Clearance[];
  readonly neighbours: readonly Neighbour[];
}
