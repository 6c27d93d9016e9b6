/** What the assembly sheet asks of the drawing: a picture for each step. The app joins the two. */
import type { Motion, Scene } from '../../geometry';
import type { StagedUnit } from './stage-store';

export interface StepPictureWish {
  /** Key of the step. */
  readonly key: string;
  readonly absent: ReadonlySet<string>;
  readonly moving: ReadonlySet<string>;
  readonly enclosure: boolean;
  /** Into the seat: what is new is drawn a little off it. */
  readonly motions: readonly Motion[];
}

export interface StepPictureListener {
  /** Address of the picture of a step. */
  readonly onPicture: (key: string, address: string) => void;
  /** No more will come. */
  readonly onEnd: () => void;
}

/** Draws one step after another in the background; returns how to stop. */
export type StepPicturePort = (
  scene: Scene,
  units: readonly StagedUnit[],
  wishes: readonly StepPictureWish[],
  listener: StepPictureListener,
) => () => void;
