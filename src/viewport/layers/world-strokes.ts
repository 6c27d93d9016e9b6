import type { InstancedBufferGeometry } from 'three';
import type { Segment } from '../drawing/box-outline';
import { StrokeList } from '../drawing/stroke-list';
import type { Rgb } from '../palette';
import { WORLD_ROW } from './part-table';
import { setStrokes, strokeQuad } from './quad-buffers';
import type { SheetUniforms } from './sheet-uniforms';
import { StrokeMesh, type StrokeMeshOptions } from './stroke-mesh';

/** Strokes that stand in the world, of one weight and colour. */
export class WorldStrokes {
  readonly mesh: StrokeMesh;
  private readonly lines: InstancedBufferGeometry = strokeQuad();

  constructor(shared: SheetUniforms, options: StrokeMeshOptions) {
    this.mesh = new StrokeMesh(this.lines, shared, options);
    this.mesh.visible = false;
  }

  /** Weight in tenths of a CSS pixel. */
  set(segments: readonly Segment[], weight: number): void {
    const strokes = new StrokeList();
    for (const [from, to] of segments) strokes.add(from, to, { kind: 'plain', weight, hidden: 100 });
    setStrokes(this.lines, [{ drawing: strokes.finish(), row: WORLD_ROW }]);
    this.mesh.visible = segments.length > 0;
  }

  setTint(colour: Rgb): void {
    this.mesh.setTint(colour);
  }

  dispose(): void {
    this.lines.dispose();
    this.mesh.material.dispose();
  }
}
