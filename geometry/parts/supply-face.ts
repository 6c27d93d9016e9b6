/** Screw holes of a supply's face, shared by the bays that offer them and the plates that bridge them. */
import { supplyForms } from '../standards/supply-forms';
import type { PatternPoint } from './body';
import type { SupplyForm } from './patterns';

/**
 * Holes about the centre of the face, in the frame of a supply mount: x up, y to the right seen from outside, mm. The
 * published table counts from the lower left corner (u right, v up). Empty where no drawing has been read.
 */
export function supplyFacePoints(form: SupplyForm): PatternPoint[] {
  const { width, height, holes } = supplyForms[form];
  return holes.value.map(({ u, v }, i) => ({
    id: `${i + 1}`,
    at: [v - height.value / 2, u - width.value / 2] as const,
  }));
}

/** The holes for a supply either way up: as drawn, and turned by half a turn. */
export function supplyFacePointsBothWays(form: SupplyForm): PatternPoint[] {
  const upright = supplyFacePoints(form);
  const turned = upright.map(({ id, at: [up, right] }) => ({
    id: `${id} turned`,
    at: [-up, -right] as const,
  }));
  return [...upright, ...turned];
}
