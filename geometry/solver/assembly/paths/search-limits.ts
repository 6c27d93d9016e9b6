/** Bounds of the search for a way; all our choice, stated beside every answer that says none was found. */
export interface SearchLimits {
  /** Stops tried along the first of two straight moves, at most. */
  readonly stops: number;
  /** Largest tilt, degrees. */
  readonly tilt: number;
  /** Step of the scanned tilts, degrees. */
  readonly tiltStep: number;
  /** Cell of the plane search, mm, and its step of angle, degrees. */
  readonly cell: number;
  readonly angle: number;
  /** Poses opened by the plane search, at most. */
  readonly poses: number;
}

export const defaultSearchLimits: SearchLimits = {
  stops: 24,
  tilt: 45,
  tiltStep: 3,
  cell: 5,
  angle: 2,
  poses: 1500,
};

/** The bounds in words, for an answer that found nothing. */
export function limitsInWords(limits: SearchLimits): string {
  return `26 directions, two straight moves with up to ${limits.stops} stops, tilts to ${limits.tilt} degrees in steps of ${limits.tiltStep}, then ${limits.poses} poses on a lattice of ${limits.cell} mm and ${limits.angle} degrees`;
}
