/**
 * What the drawing shows while the way of a part is played: which parts are there, which move, and by how much they
 * are off their seats at this moment. Written by the view that plays, read by the drawing.
 */
import { createStore } from 'zustand/vanilla';
import type { OrientedBox, RigidTransform, Scene, Vector3 } from '../../geometry';

/** A part, or a piece of one, that is shown or left out as a whole. */
export interface StagedUnit {
  readonly id: string;
  /** Id of the part in the plan, and which boxes of its body. */
  readonly part: string;
  readonly boxes: readonly number[];
}

export interface Stage {
  /** The plan as placed; the units are cut from it. */
  readonly scene: Scene;
  readonly units: readonly StagedUnit[];
  /** Ids of units not yet there, and of those under way. */
  readonly absent: ReadonlySet<string>;
  readonly moving: ReadonlySet<string>;
  /** Whether to draw what never moves: not for work on the bench. */
  readonly enclosure: boolean;
  /** What is swept on the way. */
  readonly swept: readonly OrientedBox[];
  /** Ends of the smallest gap, or where it meets something. */
  readonly mark:
    | { readonly points: readonly [Vector3, Vector3]; readonly figure: string; readonly word: string }
    | undefined;
  readonly meets: boolean;
  /** How pale what is there already is drawn, 0 to 1; 0 when absent. */
  readonly pale?: number;
  /** Where the moving parts begin, to fit the picture. */
  readonly start: RigidTransform;
}

interface StageState {
  readonly stage: Stage | undefined;
  /** Of the moving units, from their seats. */
  readonly displacement: RigidTransform | undefined;
}

export const stageStore = createStore<StageState>()(() => ({ stage: undefined, displacement: undefined }));

export function setStage(stage: Stage, displacement: RigidTransform): void {
  stageStore.setState({ stage, displacement });
}

export function moveOnStage(displacement: RigidTransform): void {
  stageStore.setState({ displacement });
}

export function clearStage(): void {
  stageStore.setState({ stage: undefined, displacement: undefined });
}
