import type { OrientedBox } from '../../../geometry';
import type { Stage } from '../../store/stage-store';
import { boxEdges, boxPolygons, type Segment } from '../drawing/box-outline';
import type { Palette } from '../palette';
import { PatternMesh } from './pattern-mesh';
import type { SheetUniforms } from './sheet-uniforms';
import { WorldStrokes } from './world-strokes';

/** Boxes smaller than this share of the largest are not drawn. */
const BULKY = 0.2;
/** Outlines of a turn beyond this run into one another. */
const MOST_OUTLINES = 9;
/** Of more than these each would cover so little that eight bits of colour could not hold it. */
const MOST_FILLED = 8;
/** How strongly all faces that lie over one another cover together. */
const COVER = 0.34;

/** What a part sweeps on its way: a breath of colour, and outlines dashed as what is imagined; and where it is tight. */
export class WayLayer {
  private readonly faces: PatternMesh;
  private readonly outline: WorldStrokes;
  private readonly mark: WorldStrokes;
  private drawn: Stage | undefined;
  private palette: Palette | undefined;

  constructor(shared: SheetUniforms) {
    this.faces = new PatternMesh(shared, {
      order: 25,
      depth: 'visible',
      fill: 0.022,
      line: 0.022,
      pitch: 6,
      width: 0.8,
    });
    this.outline = new WorldStrokes(shared, { depth: 'always', order: 46, dash: [5, 4], opacity: 0.32 });
    this.mark = new WorldStrokes(shared, { depth: 'always', order: 53 });
  }

  get meshes() {
    return [this.faces, this.outline.mesh, this.mark.mesh];
  }

  update(stage: Stage | undefined): void {
    if (stage === this.drawn) return;
    this.drawn = stage;
    const boxes = bulky(stage?.swept ?? []);
    const filled = spread(boxes, MOST_FILLED);
    // Two faces of every box lie over one another, so each may cover only its share.
    this.faces.setStrength(COVER / (2 * Math.max(1, filled.length)));
    this.faces.setAreas(
      filled.flatMap((box) => boxPolygons(box).map((polygon) => ({ polygon, pattern: 'plain' as const }))),
    );
    this.outline.set(spread(boxes, MOST_OUTLINES).flatMap(boxEdges), 8);
    this.mark.set(stage?.mark ? [stage.mark.points, ...crossAt(stage.mark.points[1])] : [], 22);
    this.tint();
  }

  setPalette(palette: Palette): void {
    this.palette = palette;
    this.tint();
  }

  private tint(): void {
    if (!this.palette) return;
    const { selection, paper, interference, clearance } = this.palette;
    this.faces.setColours(selection, paper);
    this.outline.setTint(selection);
    this.mark.setTint(this.drawn?.meets ? interference : clearance);
  }

  dispose(): void {
    this.faces.geometry.dispose();
    this.faces.material.dispose();
    this.outline.dispose();
    this.mark.dispose();
  }
}

/** The boxes that give the body its shape; brackets, plugs and rails would only make a thicket of lines. */
function bulky(boxes: readonly OrientedBox[]): readonly OrientedBox[] {
  const size = ({ half }: OrientedBox) => half[0] * half[1] * half[2];
  const most = Math.max(0, ...boxes.map(size));
  return boxes.filter((box) => size(box) >= most * BULKY);
}

/** So many of a list, evenly spread, the first and the last among them. */
function spread(boxes: readonly OrientedBox[], most: number): readonly OrientedBox[] {
  if (boxes.length <= most) return boxes;
  return Array.from(
    { length: most },
    (_, k) => boxes[Math.round((k * (boxes.length - 1)) / (most - 1))],
  ).filter((box) => box !== undefined);
}

/** A small cross in space, so that a place without extent is seen. */
function crossAt([x, y, z]: readonly [number, number, number]): Segment[] {
  const arm = 4;
  return [
    [
      [x - arm, y, z],
      [x + arm, y, z],
    ],
    [
      [x, y - arm, z],
      [x, y + arm, z],
    ],
    [
      [x, y, z - arm],
      [x, y, z + arm],
    ],
  ];
}
