import type { InstancedBufferGeometry } from 'three';
import type { PartModel } from '../../../geometry';
import { type DrawnPart, drawingOf } from '../drawing/part-drawing';
import { FillMesh } from './fill-mesh';
import { FIRST_PART_ROW } from './part-table';
import { fillQuad, setFills, setStrokes, strokeQuad } from './quad-buffers';
import type { SheetUniforms } from './sheet-uniforms';
import { StrokeMesh } from './stroke-mesh';

/**
 * The machine: faces, visible edges and hidden edges of every part. Its buffers change only when bodies come or go;
 * where a part stands and how it is shown is in the part table.
 */
export class MachineLayer {
  private readonly strokes: InstancedBufferGeometry = strokeQuad();
  private readonly hiddenStrokes: InstancedBufferGeometry = strokeQuad();
  private readonly fills: InstancedBufferGeometry = fillQuad();
  private readonly faces: FillMesh;
  private readonly covers: FillMesh;
  private models: readonly PartModel[] = [];
  readonly meshes: readonly (FillMesh | StrokeMesh)[];

  constructor(shared: SheetUniforms) {
    this.faces = new FillMesh(this.fills, shared, false, 0);
    this.covers = new FillMesh(this.fills, shared, true, 20);
    this.meshes = [
      this.faces,
      this.covers,
      new StrokeMesh(this.hiddenStrokes, shared, {
        depth: 'hidden',
        order: 10,
        dash: [4.5, 3.5],
        widthScale: 0.7,
      }),
      new StrokeMesh(this.strokes, shared, { depth: 'visible', order: 30 }),
    ];
  }

  /** Returns whether the buffers had to be written anew. */
  update(scene: { readonly parts: readonly DrawnPart[] }): boolean {
    const models = scene.parts.map((part) => part.model);
    if (models.length === this.models.length && models.every((model, i) => model === this.models[i]))
      return false;
    this.models = models;
    const drawings = scene.parts.map((part, index) => ({
      drawing: drawingOf(part),
      row: FIRST_PART_ROW + index,
    }));
    setStrokes(
      this.strokes,
      drawings.map(({ drawing, row }) => ({ drawing: drawing.strokes, row })),
    );
    setStrokes(
      this.hiddenStrokes,
      drawings.map(({ drawing, row }) => ({ drawing: drawing.hidden, row })),
    );
    setFills(
      this.fills,
      drawings.map(({ drawing, row }) => ({ drawing: drawing.fills, row })),
    );
    return true;
  }

  setXray(xray: boolean): void {
    this.faces.setXray(xray);
    this.covers.visible = !xray;
  }

  dispose(): void {
    this.strokes.dispose();
    this.hiddenStrokes.dispose();
    this.fills.dispose();
    for (const mesh of this.meshes) mesh.material.dispose();
  }
}
