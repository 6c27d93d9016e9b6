/**
 * The only contact tolerance, mm. Faces closer than this touch, whether by a hair apart or by a hair into
 * each other, and touching is not overlap.
 */
export const CONTACT_TOLERANCE_MM = 1e-6;

/**
 * Relative roundoff allowed for a chain of some tens of float64 operations: 64 units in the last place.
 * Used to tell a computed zero from a real one, never as a clearance.
 */
export const ROUNDOFF = 64 * Number.EPSILON;
