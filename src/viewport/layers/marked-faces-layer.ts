import type { Clearance, FaceRef, Fit, Scene } from '../../../geometry';
import type { FaceNumber } from '../drawing/box-face';
import { boxPolygons, facePolygon, polygonEdges } from '../drawing/box-outline';
import type { Palette, Rgb } from '../palette';
import { PatternMesh } from './pattern-mesh';
import type { SheetUniforms } from './sheet-uniforms';
import { WorldStrokes } from './world-strokes';

const faceNumber = { '-x': 0, '+x': 1, '-y': 2, '+y': 3, '-z': 4, '+z': 5 } as const satisfies Record<
  string,
  FaceNumber
>;

export function colourOfFit(fit: Fit, palette: Palette): Rgb {
  if (fit === 'clearance fit') return palette.clearance;
  return fit === 'transition fit' ? palette.transition : palette.interference;
}

/** The two faces that set the selected clearance, tinted in the colour of its fit and seen through everything. */
export class MarkedFacesLayer {
  private readonly faces: PatternMesh;
  private readonly outline: WorldStrokes;
  private drawn: { scene: Scene; clearance: Clearance } | undefined;

  constructor(shared: SheetUniforms) {
    const options = { order: 44, depth: 'always', fill: 0.07, line: 0.07, pitch: 6, width: 1 } as const;
    this.faces = new PatternMesh(shared, options);
    this.outline = new WorldStrokes(shared, { depth: 'always', order: 45, opacity: 0.9 });
  }

  get meshes() {
    return [this.faces, this.outline.mesh];
  }

  update(scene: Scene, clearance: Clearance | undefined): void {
    if (scene === this.drawn?.scene && clearance === this.drawn.clearance) return;
    this.drawn = clearance && { scene, clearance };
    const polygons = clearance
      ? [...polygonsOf(scene, clearance.from), ...polygonsOf(scene, clearance.to)]
      : [];
    this.faces.setAreas(polygons.map((polygon) => ({ polygon, pattern: 'plain' })));
    this.outline.set(polygons.flatMap(polygonEdges), 10);
  }

  setPalette(palette: Palette, fit: Fit | undefined): void {
    const colour = colourOfFit(fit ?? 'clearance fit', palette);
    this.faces.setColours(colour, palette.paper);
    this.outline.setTint(colour);
  }

  dispose(): void {
    this.faces.geometry.dispose();
    this.faces.material.dispose();
    this.outline.dispose();
  }
}

function polygonsOf(scene: Scene, ref: FaceRef) {
  const index = scene.indexById.get(ref.part);
  const entry = scene.boxes.find(({ part, body }) => part === index && body.name === ref.box);
  if (!entry) return [];
  return ref.face ? [facePolygon(entry.box, faceNumber[ref.face])] : boxPolygons(entry.box);
}
