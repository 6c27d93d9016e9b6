/** Which detail tells a thing apart: chosen by what it is, drawn without colour. */
import {
  type BodyBox,
  type Element,
  nominal,
  type OrientedBox,
  type PartSpec,
  type Vector3,
} from '../../../geometry';
import { faceTowards, partOfFace } from './box-face';
import type { DetailPen } from './detail-pen';
import { faintLine, fineLine } from './detail-pen';
import {
  drawBracketVents,
  drawGrooves,
  drawHeader,
  drawLabel,
  drawModule,
  drawPorts,
  drawSlot,
  drawSocket,
  drawSocketPins,
} from './details/board-detail';
import {
  drawCentreLine,
  drawFins,
  drawPipeEnds,
  drawPumpBlock,
  drawRadiator,
  drawShroudRibs,
} from './details/cooling-detail';
import { drawFan, drawGuardedFan } from './details/fan-detail';
import type { EnclosureSheets } from './enclosure-sheets';

type DrawDetail = (pen: DetailPen, body: BodyBox, spec: PartSpec) => void;

const onBox = (draw: (pen: DetailPen, box: OrientedBox) => void): DrawDetail => {
  return (pen, body) => draw(pen, body.box);
};

const details: Partial<Record<Element, DrawDetail>> = {
  fan: onBox(drawFan),
  'fin stack': drawStack,
  'radiator core': onBox(drawRadiator),
  'pump block': onBox(drawPumpBlock),
  tube: onBox(drawCentreLine),
  'memory slot': onBox(drawSlot),
  'expansion slot': onBox(drawSlot),
  'm2 socket': onBox(drawSlot),
  'memory module': onBox(drawModule),
  header: onBox(drawHeader),
  'processor socket': onBox(drawSocket),
  processor: onBox(drawSocket),
  'regulator sink': onBox(drawGrooves),
  'm2 sink': onBox(drawGrooves),
  'drive sink': onBox(drawGrooves),
  'rear connectors': onBox(drawPorts),
  drive: onBox(drawLabel),
  'card bracket': onBox(drawBracketVents),
  'card shroud': onBox(drawShroudRibs),
  'power socket': onBox(drawSocketPins),
  plug: onBox(drawSocketPins),
  'supply case': drawSupply,
};

export function drawDetail(
  pen: DetailPen,
  body: BodyBox,
  spec: PartSpec,
  sheets: EnclosureSheets | undefined,
): void {
  if (sheets) drawSheetDetail(pen, body, sheets);
  details[body.element]?.(pen, body, spec);
}

/** A tower's fins lie across its height; a top-flow cooler's stand on edge. */
function drawStack(pen: DetailPen, body: BodyBox, spec: PartSpec): void {
  const towering = spec.kind === 'cooler' && spec.style === 'tower';
  const across: Vector3 = towering ? [0, 0, 1] : [1, 0, 0];
  drawFins(pen, body.box, across);
  if (towering) drawPipeEnds(pen, body.box, across);
}

const sideNormals: Readonly<Record<'-y' | '+y' | '-z' | '+z', Vector3>> = {
  '-y': [0, -1, 0],
  '+y': [0, 1, 0],
  '-z': [0, 0, -1],
  '+z': [0, 0, 1],
};

/** The fan behind its guard, and the vent holes and inlet of the screw face. */
function drawSupply(pen: DetailPen, body: BodyBox, spec: PartSpec): void {
  if (spec.kind !== 'supply') return;
  if (spec.fan) {
    const face = faceTowards(body.box, sideNormals[spec.fan.side]);
    const room = face ? Math.min(face.halfAlong, face.halfAcross) * 0.94 : 0;
    if (face) drawGuardedFan(pen, face, Math.min(nominal(spec.fan.size) / 2, room));
  }
  for (const normal of Object.values(sideNormals)) {
    const face = faceTowards(body.box, normal);
    if (!face || normal === sideNormals[spec.fan?.side ?? '-y']) continue;
    pen.rectangle(partOfFace(face, 0, 0, face.halfAlong * 0.62, face.halfAcross * 0.58), faintLine);
  }
  const screwFace = faceTowards(body.box, [-1, 0, 0]);
  if (!screwFace) return;
  const { halfAlong, halfAcross } = screwFace;
  pen.opening(partOfFace(screwFace, 0, halfAcross * 0.25, halfAlong * 0.82, halfAcross * 0.6), 'mesh');
  pen.rectangle(partOfFace(screwFace, 0, -halfAcross * 0.7, halfAlong * 0.4, halfAcross * 0.2), fineLine);
}

/** Two short strokes say glass; a thin frame says vent. */
function drawSheetDetail(pen: DetailPen, body: BodyBox, sheets: EnclosureSheets): void {
  const face = sheets.outerFace(body);
  if (!face) return;
  if (body.material === 'glass') {
    const up = face.across[1] < 0 ? -1 : 1;
    // Near the upper front corner, where a pane has nothing behind it that matters.
    const [right, top] = [face.halfAlong - 26, face.halfAcross - 22];
    pen.line(face, [right - 26, (top - 26) * up], [right, top * up], fineLine);
    pen.line(face, [right - 8, (top - 22) * up], [right + 4, (top - 10) * up], fineLine);
  }
  if (body.element === 'vent')
    pen.rectangle(partOfFace(face, 0, 0, face.halfAlong - 1, face.halfAcross - 1), faintLine);
}
