/** From the boxes of a part to strokes and fills in the part's frame, drawn once for each body. */
import type { BodyBox, Element, OrientedBox, PartModel, PartSpec, Vector3 } from '../../../geometry';
import { boxFace, faceNumbers } from './box-face';
import { DetailPen } from './detail-pen';
import { drawDetail } from './element-detail';
import { enclosureSheets, isSheet } from './enclosure-sheets';
import { type Extent, mergedEdges } from './merged-edges';
import { FillList, type Fills, hiddenStrokes, StrokeList, type Strokes } from './stroke-list';

export interface PartDrawing {
  readonly strokes: Strokes;
  /** Those of them that are drawn dashed where they are hidden. */
  readonly hidden: Strokes;
  readonly fills: Fills;
}

/** What is drawn: a part, or a piece of one; then `whole` is the body it is cut from, which says where outside is. */
export interface DrawnPart {
  readonly model: PartModel;
  readonly spec: PartSpec;
  readonly whole?: readonly BodyBox[];
}

const drawings = new WeakMap<PartModel, PartDrawing>();

/** The drawing of a part; remembered for as long as its body is. */
export function drawingOf(part: DrawnPart): PartDrawing {
  const known = drawings.get(part.model);
  if (known) return known;
  const strokes = new StrokeList();
  const fills = new FillList();
  const pen = new DetailPen(strokes, fills);
  const solids = part.model.boxes.filter((body) => body.role === 'solid');
  const around = part.whole?.filter((body) => body.role === 'solid') ?? solids;
  const sheets = part.spec.kind === 'enclosure' ? enclosureSheets(around) : undefined;
  for (const body of solids) {
    if (sheets && isSheet(body)) sheets.fill(body, fills);
    else fillBody(body, fills);
    drawDetail(pen, body, part.spec, sheets);
  }
  for (const [, bodies] of groupsOf(solids)) strokeGroup(bodies, strokes);
  const finished = strokes.finish();
  const drawing = { strokes: finished, hidden: hiddenStrokes(finished), fills: fills.finish() };
  drawings.set(part.model, drawing);
  return drawing;
}

function fillBody(body: BodyBox, fills: FillList): void {
  const kind = body.element === 'shroud' || body.material === 'glass' ? 'sheer' : 'body';
  for (const number of faceNumbers) {
    const { centre, along, across, halfAlong, halfAcross } = boxFace(body.box, number);
    const corner: Vector3 = [
      centre[0] - along[0] * halfAlong - across[0] * halfAcross,
      centre[1] - along[1] * halfAlong - across[1] * halfAcross,
      centre[2] - along[2] * halfAlong - across[2] * halfAcross,
    ];
    fills.add(corner, scaled(along, 2 * halfAlong), scaled(across, 2 * halfAcross), kind);
  }
}

const scaled = (v: Vector3, factor: number): Vector3 => [v[0] * factor, v[1] * factor, v[2] * factor];

/** Boxes that are one piece to the eye: no line is drawn where they meet flush. */
function groupsOf(solids: readonly BodyBox[]): Map<string, BodyBox[]> {
  const groups = new Map<string, BodyBox[]>();
  for (const body of solids) {
    const key = groupKey(body);
    const group = groups.get(key);
    if (group) group.push(body);
    else groups.set(key, [body]);
  }
  return groups;
}

/** A card's fans are set into its shroud; the fixed walls of an enclosure are one shell, its covers come off. */
function groupKey(body: BodyBox): string {
  if (body.name.startsWith('fan ') || body.element === 'card shroud') return 'card shroud';
  if (!isSheet(body)) return body.element;
  if (body.element === 'tray') return 'tray';
  return body.removable ? `${body.element}, off` : 'shell';
}

function strokeGroup(bodies: readonly BodyBox[], strokes: StrokeList): void {
  const first = bodies[0];
  if (!first) return;
  const extents: Extent[] = [];
  for (const body of bodies) {
    const extent = extentOf(body.box);
    if (extent) extents.push(extent);
    else strokeTurnedBox(body, strokes);
  }
  const { weight, hidden } = lookOf(first.element);
  for (const { from, to, faces, recess } of mergedEdges(extents))
    strokes.add(from, to, { kind: recess ? 'inner' : 'outer', weight, hidden }, faces[0], faces[1]);
}

/** Edges of a box that does not lie along the axes of its part. */
function strokeTurnedBox(body: BodyBox, strokes: StrokeList): void {
  const look = { kind: 'outer', ...lookOf(body.element) } as const;
  for (const number of faceNumbers) {
    const face = boxFace(body.box, number);
    for (const other of faceNumbers) {
      if (other >> 1 <= number >> 1) continue;
      const beside = boxFace(body.box, other);
      const axis = (3 - (number >> 1) - (other >> 1)) as 0 | 1 | 2;
      const end = boxFace(body.box, (2 * axis + 1) as 1 | 3 | 5);
      const middle = sum(sum(face.centre, beside.centre), scaled(body.box.centre, -1));
      const reach = sum(end.centre, scaled(body.box.centre, -1));
      strokes.add(sum(middle, scaled(reach, -1)), sum(middle, reach), look, face.normal, beside.normal);
    }
  }
}

const sum = (a: Vector3, b: Vector3): Vector3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

/** The range of a box along its part's axes; undefined when it is turned out of them. */
export function extentOf({ centre, half, rotation: r }: OrientedBox): Extent | undefined {
  const reach: Vector3 = [
    Math.abs(r[0]) * half[0] + Math.abs(r[1]) * half[1] + Math.abs(r[2]) * half[2],
    Math.abs(r[3]) * half[0] + Math.abs(r[4]) * half[1] + Math.abs(r[5]) * half[2],
    Math.abs(r[6]) * half[0] + Math.abs(r[7]) * half[1] + Math.abs(r[8]) * half[2],
  ];
  const aligned = r.every((entry) => Math.abs(entry) < 1e-9 || Math.abs(Math.abs(entry) - 1) < 1e-9);
  return aligned ? { min: sum(centre, scaled(reach, -1)), max: sum(centre, reach) } : undefined;
}

const large = { weight: 13, hidden: 70 };
const medium = { weight: 10, hidden: 35 };
const small = { weight: 8, hidden: 12 };

/** Weight by what a builder looks for first: the shell, then parts, then what stands on the board. */
function lookOf(element: Element): { weight: number; hidden: number } {
  switch (element) {
    case 'side panel':
    case 'back panel':
    case 'front wall':
    case 'rear wall':
    case 'top wall':
    case 'floor':
      return { weight: 13, hidden: 0 };
    case 'fin stack':
    case 'fan':
    case 'supply case':
    case 'card shroud':
    case 'radiator core':
    case 'drive':
    case 'pump block':
      return large;
    case 'tray':
    case 'circuit board':
    case 'memory module':
    case 'card board':
    case 'card backplate':
    case 'cooler base':
    case 'tube':
    case 'radiator tank':
    case 'shroud':
    case 'cage':
    case 'adapter plate':
    case 'riser':
    case 'handle':
      return medium;
    default:
      return small;
  }
}
