/**
 * What a spec turns into: boxes with roles, the mounts a part offers, the feet by which it attaches, and the
 * features other parts may cover. All coordinates are millimetres in the part's own frame, which each kind
 * documents at the top of its file.
 */
import type { OrientedBox } from '../space/oriented-box';
import type { RigidTransform } from '../space/transform';

/** `solid` is material; every other role is space that must stay free for the reason it names. */
export type Role = 'solid' | 'plug space' | 'bend space' | 'breathing space' | 'hand space' | 'zone';

/**
 * What a box is a piece of. Clearance rules pick boxes by it and the viewport chooses the drawn detail by it,
 * so it names the thing, never the look.
 */
export type Element =
  | 'side panel'
  | 'back panel'
  | 'front wall'
  | 'rear wall'
  | 'top wall'
  | 'floor'
  | 'tray'
  | 'standoff'
  | 'shroud'
  | 'cage'
  | 'foot'
  | 'handle'
  | 'vent'
  | 'circuit board'
  | 'rear connectors'
  | 'regulator sink'
  | 'processor socket'
  | 'memory slot'
  | 'expansion slot'
  | 'm2 socket'
  | 'm2 sink'
  | 'header'
  | 'coin cell'
  | 'component zone'
  | 'processor'
  | 'cooler base'
  | 'fin stack'
  | 'fan'
  | 'pump block'
  | 'tube'
  | 'radiator core'
  | 'radiator tank'
  | 'memory module'
  | 'drive'
  | 'drive sink'
  | 'card board'
  | 'card shroud'
  | 'card backplate'
  | 'card bracket'
  | 'power socket'
  | 'plug'
  | 'supply case'
  | 'adapter plate'
  | 'riser';

export interface BodyBox {
  /** Unique within the part and stable between edits: findings name faces by it ('front fan', 'side panel 2'). */
  readonly name: string;
  readonly role: Role;
  readonly element: Element;
  readonly box: OrientedBox;
  /** The feature (header, slot ...) this box belongs to, if any. */
  readonly feature?: string;
  /** True for hardware that enters what it is mounted on: card fingers, module edge, processor. */
  readonly engages?: true;
  /** Names of mounts whose attached part may enter this box with its engaging boxes: the slot round the fingers. */
  readonly receives?: readonly string[];
  /** Glass, mesh and other surfaces that are drawn and reported apart from plain sheet. */
  readonly material?: Material;
  /** Can be taken off without tools to get at the inside. */
  readonly removable?: true;
}

export type Material = 'steel' | 'aluminium' | 'glass' | 'mesh' | 'plastic';

/** A point of a hole pattern, in the frame of the mount or foot that owns it (its z is 0). */
export interface PatternPoint {
  readonly id: string;
  readonly at: readonly [number, number];
}

/** A frame a part offers. The foot's frame is laid on it: z points away from the carrier, into the guest. */
export interface Mount {
  /** Unique within the part, stable between edits: 'slot 2', 'rear fan', 'socket'. */
  readonly id: string;
  readonly label: string;
  /** Patterns it takes: a foot fits when its pattern is in this list. */
  readonly patterns: readonly string[];
  readonly frame: RigidTransform;
  /** Turns about the mount's z axis that the hardware allows, degrees; [0] when absent. */
  readonly turns?: readonly number[];
  /** Foot to offer first, when several of a part fit: a fan at the rear usually blows out. */
  readonly prefers?: string;
  /** Standoffs or screw holes the guest's holes must meet. */
  readonly points?: readonly PatternPoint[];
}

/** The frame by which a part attaches. */
export interface Foot {
  readonly id: string;
  readonly label: string;
  readonly pattern: string;
  readonly frame: RigidTransform;
  /** Holes that look for the mount's points. `needed` ones must be met. */
  readonly points?: readonly (PatternPoint & { readonly needed: boolean })[];
  /** Underside outline in the foot's frame, to find points standing where there is no hole. */
  readonly outline?: { readonly min: readonly [number, number]; readonly max: readonly [number, number] };
}

export type FeatureKind =
  | 'expansion slot'
  | 'memory slot'
  | 'm2 socket'
  | 'header'
  | 'power socket'
  | 'tube fitting'
  | 'coin cell';

/** Something a builder wants to keep usable and another part can cover. */
export interface Feature {
  readonly id: string;
  readonly kind: FeatureKind;
  readonly label: string;
  /** Boxes (by name, role other than solid) that must be free while it is in use. */
  readonly use: readonly string[];
  /** Boxes that must be free at the moment something is put in or taken out. */
  readonly approach: readonly string[];
  /** The mount that fills it, if it is filled by a part rather than by a plug. */
  readonly mount?: string;
  /** The machine does not run without it (24-pin, processor power, plugs of a card). */
  readonly required: boolean;
}

/** A setting of the part as built in this plan: a fan slid up, a bracket moved. */
export interface Adjustment {
  readonly id: string;
  readonly label: string;
  readonly unit: 'mm';
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

export interface PartModel {
  readonly boxes: readonly BodyBox[];
  readonly mounts: readonly Mount[];
  readonly feet: readonly Foot[];
  readonly features: readonly Feature[];
  readonly adjustments: readonly Adjustment[];
}

/** Values of a part's adjustments by id; what is not named is at 0. */
export type AdjustmentValues = Readonly<Record<string, number>>;
