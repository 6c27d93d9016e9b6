/** What one group of things on a board adds to its model. */
import type { BodyBox, Feature, Mount } from '../body';

export interface BoardPiece {
  readonly boxes: readonly BodyBox[];
  readonly mounts?: readonly Mount[];
  readonly features?: readonly Feature[];
}
