/** A named clearance as data: which boxes of which parts, along which directions, and the gap a builder wants. */
import type { BodyBox, Element, Role } from '../parts/body';
import type { PartKind } from '../parts/part-spec';
import type { Published } from '../standards/published';
import type { Direction } from './finding';

/** Picks boxes of parts. Every condition given must hold. */
export interface BoxSelector {
  readonly kinds: readonly PartKind[];
  /** `solid` when absent. */
  readonly roles?: readonly Role[];
  readonly elements?: readonly Element[];
  readonly except?: readonly Element[];
  /** Kind of the part it is seated on, directly. */
  readonly on?: PartKind;
  /** Only sheets standing across the direction, not edge on. */
  readonly across?: true;
  /** Only reserved space that reaches further along the direction than all solids of its part. */
  readonly standsOut?: true;
}

/** Axes of the frame the directions are given in: the enclosure's, the board's, or those of the `from` part. */
export type RuleFrame = 'enclosure' | 'board' | 'own';

export interface WantedGap {
  readonly millimetres: number;
  /** To glass, when it differs. */
  readonly toGlass?: number;
  /** For a part without any piece of this kind: a card without fans wants no air. */
  readonly lacking?: { readonly element: Element; readonly millimetres: number };
  readonly reason: string;
  /** The row of the standards the figure rests on; absent for zero. */
  readonly basis?: Published<unknown>;
}

/** A dimension of a spec that grows towards the other part, millimetre by millimetre. */
export interface LimitedDimension {
  readonly of: 'from' | 'to';
  readonly field: LimitedField;
}
export type LimitedField = 'length' | 'height' | 'thickness' | 'depth';

export interface ClearanceRule {
  /** Key of the wanted gap in the plan: 'cooler to side panel'. */
  readonly id: string;
  /** First line of its row; the name of the part stands for `{part}`. */
  readonly title: string;
  readonly from: BoxSelector;
  readonly to: BoxSelector;
  readonly frame: RuleFrame;
  /** Several: each pair of boxes is measured along the one in which it is nearest, or has the shortest way back. */
  readonly directions: readonly Direction[];
  /** Only the nearest of all partners, for 'whatever is in front'. */
  readonly nearestOnly?: true;
  /** Gaps beyond this, mm, are of no interest to anyone. */
  readonly reach?: number;
  /** Also between a part and what it is seated on. */
  readonly seatedToo?: true;
  readonly wanted: WantedGap;
  /** What could be longer or has to be shorter; absent when no single dimension decides. */
  readonly limits?: LimitedDimension;
}

/** Whether the box is one the selector means, as far as the box alone can tell. */
export function picksBox(selector: BoxSelector, body: BodyBox): boolean {
  const roles = selector.roles ?? ['solid'];
  return (
    roles.includes(body.role) &&
    (selector.elements === undefined || selector.elements.includes(body.element)) &&
    !(selector.except?.includes(body.element) ?? false)
  );
}
