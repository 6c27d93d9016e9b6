import { type Finding, overlapPolyhedron, type Scene } from '../../../geometry';
import { polyhedronEdges, polyhedronPolygons, type Segment } from '../drawing/box-outline';
import type { Palette } from '../palette';
import { type Area, PatternMesh } from './pattern-mesh';
import type { SheetUniforms } from './sheet-uniforms';
import { WorldStrokes } from './world-strokes';

/**
 * Where two solids share space: the exact common volume, solid in the signal colour with hatching over it. An
 * overlap lies inside both parts, so it is drawn through them, paler where something else stands in front.
 */
export class OverlapLayer {
  private readonly through: PatternMesh;
  private readonly front: PatternMesh;
  private readonly outline: WorldStrokes;
  private drawn: readonly Finding[] | undefined;

  constructor(shared: SheetUniforms) {
    const look = { pitch: 5, width: 1.7 } as const;
    this.through = new PatternMesh(shared, { ...look, order: 40, depth: 'always', fill: 0.12, line: 0.5 });
    this.front = new PatternMesh(shared, { ...look, order: 41, depth: 'visible', fill: 0.38, line: 1 });
    this.outline = new WorldStrokes(shared, { depth: 'always', order: 42 });
  }

  get meshes() {
    return [this.through, this.front, this.outline.mesh];
  }

  update(scene: Scene, findings: readonly Finding[]): void {
    if (findings === this.drawn) return;
    this.drawn = findings;
    const areas: Area[] = [];
    const edges: Segment[] = [];
    for (const finding of findings) {
      if (finding.kind !== 'interference') continue;
      for (const [first, second] of finding.overlaps) {
        const [a, b] = [scene.boxes[first], scene.boxes[second]];
        const common = a && b && overlapPolyhedron(a.box, b.box);
        if (!common) continue;
        for (const polygon of polyhedronPolygons(common)) areas.push({ polygon, pattern: 'hatch' });
        edges.push(...polyhedronEdges(common));
      }
    }
    this.through.setAreas(areas);
    this.front.setAreas(areas);
    this.outline.set(edges, 13);
  }

  setPalette({ interference, paper }: Palette): void {
    this.through.setColours(interference, paper);
    this.front.setColours(interference, paper);
    this.outline.setTint(interference);
  }

  dispose(): void {
    for (const mesh of [this.through, this.front]) {
      mesh.geometry.dispose();
      mesh.material.dispose();
    }
    this.outline.dispose();
  }
}
