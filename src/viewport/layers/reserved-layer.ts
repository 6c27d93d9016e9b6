import type { Role, SceneBox } from '../../../geometry';
import { boxEdges, boxPolygons } from '../drawing/box-outline';
import type { Palette } from '../palette';
import { type Pattern, PatternMesh } from './pattern-mesh';
import type { SheetUniforms } from './sheet-uniforms';
import { WorldStrokes } from './world-strokes';

/** Told apart without colour: plugs dotted, bends hatched, air dashed, hands cross-hatched, zones bare. */
const patternOfRole: Readonly<Record<Role, Pattern>> = {
  solid: 'plain',
  'plug space': 'dots',
  'bend space': 'hatch',
  'breathing space': 'dashes',
  'hand space': 'cross',
  zone: 'plain',
};

/** Space that must stay free, for the boxes it is given. */
export class ReservedLayer {
  private readonly faces: PatternMesh;
  private readonly outline: WorldStrokes;
  private readonly hiddenOutline: WorldStrokes;
  private drawn: readonly SceneBox[] = [];

  constructor(shared: SheetUniforms) {
    this.faces = new PatternMesh(shared, {
      order: 24,
      depth: 'visible',
      fill: 0.05,
      line: 0.36,
      pitch: 6,
      width: 0.8,
    });
    this.outline = new WorldStrokes(shared, { depth: 'visible', order: 32 });
    this.hiddenOutline = new WorldStrokes(shared, {
      depth: 'always',
      order: 12,
      dash: [3, 3],
      opacity: 0.45,
    });
  }

  get meshes() {
    return [this.faces, this.outline.mesh, this.hiddenOutline.mesh];
  }

  update(boxes: readonly SceneBox[]): void {
    if (boxes.length === this.drawn.length && boxes.every((box, index) => box === this.drawn[index])) return;
    this.drawn = boxes;
    this.faces.setAreas(
      boxes.flatMap(({ box, body }) =>
        boxPolygons(box).map((polygon) => ({ polygon, pattern: patternOfRole[body.role] })),
      ),
    );
    const edges = boxes.flatMap(({ box }) => boxEdges(box));
    this.outline.set(edges, 9);
    this.hiddenOutline.set(edges, 8);
  }

  setPalette({ reserved, paper }: Palette): void {
    this.faces.setColours(reserved, paper);
    this.outline.setTint(reserved);
    this.hiddenOutline.setTint(reserved);
  }

  dispose(): void {
    this.faces.geometry.dispose();
    this.faces.material.dispose();
    this.outline.dispose();
    this.hiddenOutline.dispose();
  }
}
