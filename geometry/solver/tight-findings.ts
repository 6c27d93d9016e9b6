/** Clearances that are there, but smaller than wanted. */
import type { Clearance, Finding } from './finding';

/** Roundoff of a wanted gap that is met exactly, mm. */
const MET_MM = 1e-6;

export function tightFindings(clearances: readonly Clearance[]): readonly Finding[] {
  return clearances
    .filter(({ fit, millimetres, wanted }) => fit === 'clearance fit' && millimetres < wanted - MET_MM)
    .map((clearance) => ({
      id: `tight/${clearance.id}`,
      kind: 'tight',
      weight: 'caution',
      parts: clearance.parts,
      faces: [clearance.from, clearance.to],
      millimetres: clearance.millimetres,
      overlaps: [],
      sentence: `${clearance.sentence} ${clearance.wanted.toFixed(1)} mm are wanted.`,
      waysOut: [],
    }));
}
