/**
 * The placed scene: every part of a plan with its body in the world frame (x rear to front, y floor to top, z tray to
 * side panel, millimetres). Derived from a plan, never edited.
 */
import type { AdjustmentValues, BodyBox, PartModel } from '../parts/body';
import type { PartKind, PartSpec } from '../parts/part-spec';
import type { OrientedBox } from '../space/oriented-box';
import type { PackedBoxes } from '../space/packed-boxes';
import type { RigidTransform } from '../space/transform';

/** Why a part is not where its plan says. */
export type PlacementProblemKind =
  | 'carrier missing'
  | 'mount missing'
  | 'foot does not fit'
  | 'holes do not meet'
  | 'mount taken'
  | 'carried in a circle'
  | 'turn not allowed';

export interface PlacementProblem {
  readonly kind: PlacementProblemKind;
  readonly part: string;
  readonly on?: string;
  readonly mount?: string;
}

/** Where a part sits, when it sits on a mount. */
export interface Seat {
  readonly on: string;
  readonly mount: string;
  readonly foot: string;
  readonly turn: number;
}

export interface PlacedPart {
  readonly id: string;
  readonly kind: PartKind;
  /** 'Card', 'Memory 2': kind with a number when there are several. */
  readonly label: string;
  readonly spec: PartSpec;
  readonly model: PartModel;
  /** Part frame to world. */
  readonly pose: RigidTransform;
  readonly seat?: Seat;
  /** Settings it is built with, as the plan states them. */
  readonly adjust?: AdjustmentValues;
  /** Index of its first box in `Scene.boxes`; its boxes are contiguous and in the order of `model.boxes`. */
  readonly firstBox: number;
}

export interface SceneBox {
  /** Index into `Scene.parts`. */
  readonly part: number;
  readonly body: BodyBox;
  /** The box in the world frame. */
  readonly box: OrientedBox;
}

export interface Scene {
  readonly parts: readonly PlacedPart[];
  readonly indexById: ReadonlyMap<string, number>;
  readonly boxes: readonly SceneBox[];
  /** The same boxes, in the same order, for the kernel. */
  readonly packed: PackedBoxes;
  readonly problems: readonly PlacementProblem[];
  /** Wanted gaps by clearance rule, mm, as the plan states them. */
  readonly wantedGaps: Readonly<Record<string, number>>;
}
