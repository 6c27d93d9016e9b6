/** The published size behind the name of a fan row, and what a spec may not say against it. */
import { type RadiatorPattern, type RadiatorSize, radiators } from '../../standards/radiators';
import type { Contradiction } from '../contradiction';
import { type Dimension, nominal } from '../dimension';
import type { RadiatorRow } from '../patterns';

const patternOfRow: Readonly<Record<RadiatorRow, RadiatorPattern>> = {
  '120': 120,
  '140': 140,
  '240': 240,
  '280': 280,
  '360': 360,
};

export function radiatorOfRow(row: RadiatorRow): RadiatorSize {
  return radiators[patternOfRow[row]];
}

/** A radiator shorter than its row of fans is another radiator. */
export function radiatorContradictions(radiator: {
  readonly row: RadiatorRow;
  readonly length?: Dimension | undefined;
}): readonly Contradiction[] {
  const { fanFrame, fans } = radiatorOfRow(radiator.row);
  if (radiator.length === undefined || nominal(radiator.length) >= fans * fanFrame) return [];
  const message = `"Length" (${nominal(radiator.length)} mm) is less than "Fan row" (${radiator.row}) takes, ${fans * fanFrame} mm`;
  return [{ path: ['length'], message }];
}
