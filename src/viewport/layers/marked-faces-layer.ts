import type { FaceRef, Fit, Scene } from '../../../geometry';
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

/** A few faces, tinted in one colour and seen through everything. */
export class MarkedFacesLayer {
  private readonly faces: PatternMesh;
  private readonly outline: WorldStrokes;
  private drawn: { scene: Scene; refs: readonly FaceRef[] } | undefined;

  /** `strength` of the tint, 0 to 1. */
  constructor(shared: SheetUniforms, strength: number) {
    const options = {
      order: 44,
      depth: 'always',
      fill: strength,
      line: strength,
      pitch: 6,
      width: 1,
    } as const;
    this.faces = new PatternMesh(shared, options);
    this.outline = new WorldStrokes(shared, { depth: 'always', order: 45, opacity: 0.9 });
  }

  get meshes() {
    return [this.faces, this.outline.mesh];
  }

  update(scene: Scene, refs: readonly FaceRef[]): void {
    const { drawn } = this;
    if (
      scene === drawn?.scene &&
      refs.length === drawn.refs.length &&
      refs.every((ref, at) => ref === drawn.refs[at])
    )
      return;
    this.drawn = { scene, refs };
    const polygons = refs.flatMap((ref) => polygonsOf(scene, ref));
    this.faces.setAreas(polygons.map((polygon) => ({ polygon, pattern: 'plain' })));
    this.outline.set(polygons.flatMap(polygonEdges), 10);
  }

  setColour(colour: Rgb, ground: Rgb): void {
    this.faces.setColours(colour, ground);
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
