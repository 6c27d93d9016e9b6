/** Proportions of coolers, mm, for parts whose sheet does not show them. No standard covers any of them. */
import { fromMemory } from './cited-documents';

/** Foot of an air cooler below its fins. */
export const coolerFoot = {
  baseWidth: fromMemory(40, { note: 'along x, contact plate with its clamp' }),
  baseDepth: fromMemory(40, { note: 'along y' }),
  baseHeight: fromMemory(12, { note: 'lid to the upper face of the plate that holds the heat pipes' }),
  heatPipe: fromMemory(8, { note: 'thickness of a row of 6 mm heat pipes with its bend' }),
} as const;

/** Room in which the tube of a liquid cooler turns away from a radiator. */
export const tubeTurn = {
  beyondFitting: fromMemory(35, { note: 'to the outside of the bent tube, 12 mm tube' }),
} as const;
