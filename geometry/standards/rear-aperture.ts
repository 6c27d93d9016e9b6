/** The opening in the rear panel for the board's connectors, in the board frame (`board-frame.ts`), mm. */

import { boardSheet } from './board-form-factors';
import type { BoardBox } from './board-frame';
import { atxSpecification, microAtxSpecification } from './cited-documents';
import { holePositions, mountingHole } from './mounting-holes';
import { citing, inches } from './published';

const atx = citing(atxSpecification);
const microAtx = citing(microAtxSpecification);

/** What the documents print about the aperture, the panel round it and the connectors in it. */
export const rearAperture = {
  width: atx(inches(6.25), 'primary', 'figure 4', { plusMinus: 0.2 }),
  height: atx(inches(1.75), 'primary', 'figure 4', { plusMinus: 0.2 }),
  holeAToNearEdge: atx(inches(5.196), 'primary', 'figure 4', {
    plusMinus: 0.25,
    note: '0.296 in from hole C toward the top edge',
  }),
  bottomBelowComponentSide: microAtx(inches(0.15), 'primary', 'figure 4 note'),
  bottomBelowSolderSide: atx(inches(0.088), 'primary', 'figure 4', { plusMinus: 0.25 }),
  holeRowToPanelInnerFace: atx(inches(0.483), 'primary', 'figure 4', { plusMinus: 0.25 }),
  holeRowToConnectorFaces: microAtx(inches(0.445), 'primary', 'figure 5 note'),
  connectorZoneWidth: microAtx(inches(5.99), 'primary', 'page 15'),
  connectorZoneHeight: microAtx(inches(1.47), 'primary', 'page 15'),
  keepOutRing: microAtx(inches(0.1), 'primary', 'figure 4 note'),
  largestCornerRadius: microAtx(inches(0.039), 'primary', 'figure 4 note', {
    note: '0.039 in is 0.99; printed with the inch value',
  }),
  panelThickness: microAtx([inches(0.037), inches(0.052)] as const, 'primary', 'figure 4 note', {
    note: 'what the spring fingers of a shield can grip',
  }),
} as const;

const holeA = holePositions.A.value;
const lowerEdgeX = holeA.x - rearAperture.holeAToNearEdge.value;
const panelY = holeA.y - rearAperture.holeRowToPanelInnerFace.value;
const bottomZ = -rearAperture.bottomBelowComponentSide.value;

/** Inner face of the rear panel, y in the board frame: behind the board's rear edge, hence negative. */
export const rearPanelInnerFaceY = atx(panelY, 'derived', 'figure 4', {
  plusMinus: 0.25,
  note: '0.400 in - 0.483 in; the tolerance is that of 0.483 in',
});

/** Outer faces of the rear connectors, y in the board frame. */
export const connectorFacesY = microAtx(
  holeA.y - rearAperture.holeRowToConnectorFaces.value,
  'derived',
  'figure 5 note',
  {
    note: '0.400 in - 0.445 in',
  },
);

/**
 * The aperture itself as a box of no depth lying in the inner face of the rear panel. Its upper edge lies
 * 2.44 mm above the board's top edge.
 */
export const rearApertureBox = atx<BoardBox>(
  {
    x: [lowerEdgeX - rearAperture.width.value, lowerEdgeX],
    y: [panelY, panelY],
    z: [bottomZ, bottomZ + rearAperture.height.value],
  },
  'derived',
  'figure 4',
  { plusMinus: 0.25, note: 'a plain cut-out, not recessed (microATX 1.2 page 15)' },
);

/** Tray surface, z in the board frame, for the least standoff the standard allows. */
export const traySurfaceAtLeastStandoffZ = atx(
  -(boardSheet.thickness.value + mountingHole.leastStandoffHeight.value),
  'derived',
  'section 3.4.2',
  { note: '-(board thickness + least standoff height)' },
);
