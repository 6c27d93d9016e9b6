/**
 * The frame every published board number is given in.
 *
 * Look at the component side with the rear (input/output) edge on the left, as in an upright tower seen from
 * the open side panel. The origin is the board's rear top corner, shared by every form factor:
 * - `x` runs down from the top edge (the edge next to holes F, J, M, away from the slots), in mm;
 * - `y` runs forward from the rear edge, in mm;
 * - `z` runs out of the component-side surface of the printed circuit board, in mm.
 */
import type { Range } from './published';

/** A place on the board, in mm, in the board frame. */
export interface BoardPoint {
  readonly x: number;
  readonly y: number;
}

/** An axis-aligned box in the board frame, in mm. */
export interface BoardBox {
  readonly x: Range;
  readonly y: Range;
  readonly z: Range;
}
