import type { InstancedBufferGeometry } from 'three';
import type { PartModel, PartSpec, RigidTransform } from '../../../geometry';
import type { Segment } from '../drawing/box-outline';
import { drawingOf } from '../drawing/part-drawing';
import type { Palette } from '../palette';
import { HAND_ROW } from './part-table';
import { setStrokes, strokeQuad } from './quad-buffers';
import type { SheetUniforms } from './sheet-uniforms';
import { StrokeMesh } from './stroke-mesh';
import { WorldStrokes } from './world-strokes';

/** What is shown while a part is in the hand. */
export interface Ghosts {
  /** The part that follows the pointer. */
  readonly model: PartModel;
  readonly spec: PartSpec;
  readonly pose: RigidTransform;
  /** Frames of the places that take it. */
  readonly places: readonly Segment[];
  /** Frame of the place it would take now. */
  readonly chosen: readonly Segment[];
}

/** Frames of all places that take the part in the hand, and the part itself under the pointer. */
export class GhostLayer {
  private readonly places: WorldStrokes;
  private readonly chosen: WorldStrokes;
  private readonly lines: InstancedBufferGeometry = strokeQuad();
  private readonly hand: StrokeMesh;
  private readonly shared: SheetUniforms;
  private drawn: Partial<Ghosts> = {};

  constructor(shared: SheetUniforms) {
    this.shared = shared;
    this.places = new WorldStrokes(shared, { depth: 'always', order: 50, dash: [4, 4], opacity: 0.75 });
    this.chosen = new WorldStrokes(shared, { depth: 'always', order: 51 });
    this.hand = new StrokeMesh(this.lines, shared, {
      depth: 'always',
      order: 52,
      opacity: 0.55,
      widthScale: 0.8,
    });
    this.hand.visible = false;
  }

  get meshes() {
    return [this.places.mesh, this.chosen.mesh, this.hand];
  }

  update(ghosts: Ghosts | undefined): void {
    const { places, chosen, model } = this.drawn;
    if (ghosts?.places !== places) this.places.set(ghosts?.places ?? [], 9);
    if (ghosts?.chosen !== chosen) this.chosen.set(ghosts?.chosen ?? [], 16);
    if (ghosts && ghosts.model !== model)
      setStrokes(this.lines, [{ drawing: drawingOf(ghosts).strokes, row: HAND_ROW }]);
    if (ghosts) this.shared.table.set(HAND_ROW, ghosts.pose, { emphasis: 0, faded: 0, hidden: false });
    this.hand.visible = ghosts !== undefined;
    this.drawn = ghosts ?? {};
  }

  setPalette({ selection }: Palette): void {
    this.places.setTint(selection);
    this.chosen.setTint(selection);
    this.hand.setTint(selection);
  }

  dispose(): void {
    this.places.dispose();
    this.chosen.dispose();
    this.lines.dispose();
    this.hand.material.dispose();
  }
}
