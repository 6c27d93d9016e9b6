/** Which dimensions a drawing carries and what stands on them. */
import { drivenPart, nominal, type PartSpec, valuesStandingIn } from '../../../geometry';
import { fieldText } from '../../ui/numbers';
import type { DimensionText } from './sheet-layout';
import { statedAt } from './stated-at';

/** Shorter than this is a point on the paper, mm. */
const LEAST_MM = 0.05;

/** Of fields always shown, and of the one in hand. A default stands in brackets, a stated band behind its value. */
export function dimensionTexts(
  spec: PartSpec,
  shown: readonly string[],
  activePath: string | undefined,
): readonly DimensionText[] {
  const standingIn = valuesStandingIn(spec);
  const paths = new Set(activePath === undefined ? shown : [...shown, activePath]);
  return [...paths].flatMap((path): DimensionText[] => {
    const dimension = drivenPart(spec, path)?.dimension;
    if (!dimension || dimension.to - dimension.from < LEAST_MM) return [];
    const stated = statedAt(spec, path);
    const size = fieldText(Number(dimension.nominal.toFixed(2)));
    if (stated === undefined) return standingIn[path] ? [{ dimension, text: `(${size})` }] : [];
    const band = typeof stated === 'number' ? undefined : stated.plusMinus;
    const value = fieldText(Number(nominal(stated).toFixed(2)));
    return [{ dimension, text: band === undefined ? value : `${value} ±${fieldText(band)}` }];
  });
}
