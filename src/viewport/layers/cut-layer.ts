import type { Scene } from '../../../geometry';
import type { Section } from '../../store/view-store';
import { cutScene } from '../drawing/cut-faces';
import type { Palette } from '../palette';
import { PatternMesh } from './pattern-mesh';
import type { SheetUniforms } from './sheet-uniforms';
import { WorldStrokes } from './world-strokes';

/** Cut faces with 45 degree hatching, leaning the other way from part to part, and their bold outline. */
export class CutLayer {
  private readonly faces: PatternMesh;
  private readonly outline: WorldStrokes;
  private drawn: { scene: Scene; section: Section } | undefined;

  constructor(shared: SheetUniforms) {
    this.faces = new PatternMesh(shared, {
      order: 2,
      depth: 'visible',
      fill: 0.03,
      line: 0.6,
      pitch: 6,
      width: 0.9,
      opaque: true,
    });
    this.outline = new WorldStrokes(shared, { depth: 'visible', order: 34 });
  }

  get meshes() {
    return [this.faces, this.outline.mesh];
  }

  update(scene: Scene, section: Section | undefined): void {
    if (scene === this.drawn?.scene && section === this.drawn.section) return;
    this.drawn = section && { scene, section };
    const cut = section ? cutScene(scene, section) : { faces: [], outline: [] };
    this.faces.setAreas(
      cut.faces.map(({ polygon, thin, part }) => ({
        polygon,
        pattern: thin ? 'solid' : part % 2 ? 'hatch back' : 'hatch',
      })),
    );
    this.outline.set(cut.outline, 15);
  }

  setPalette({ ink, sheet }: Palette): void {
    this.faces.setColours(ink, sheet);
    this.outline.setTint(ink);
  }

  dispose(): void {
    this.faces.geometry.dispose();
    this.faces.material.dispose();
    this.outline.dispose();
  }
}
