import type { StandardView } from '../../store/view-store';
import type { Sight } from './sight';

/**
 * Angle of view of the three-quarter picture, degrees. Parallel lines that meet far away tell near walls from far
 * ones in a line drawing, which a parallel projection cannot; a long lens keeps the machine's proportions.
 */
export const THREE_QUARTER_LENS = 24;

type Direction = Pick<Sight, 'azimuth' | 'elevation' | 'lens'>;

/** The views named on the tool bar. All but the first are parallel projections, to scale like a drawing. */
export const standardViews: Readonly<Record<StandardView, Direction>> = {
  'three-quarter': { azimuth: 31, elevation: 19, lens: THREE_QUARTER_LENS },
  side: { azimuth: 0, elevation: 0, lens: 0 },
  front: { azimuth: 90, elevation: 0, lens: 0 },
  back: { azimuth: 180, elevation: 0, lens: 0 },
  rear: { azimuth: -90, elevation: 0, lens: 0 },
  top: { azimuth: 0, elevation: 90, lens: 0 },
  floor: { azimuth: 0, elevation: -90, lens: 0 },
};
