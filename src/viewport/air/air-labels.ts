/** Which arrows get their temperature written beside them: every fan, then the largest flows elsewhere. */
import type { AirArrow, AirPicture } from '../../../geometry';

export interface AirLabel {
  readonly id: string;
  readonly arrow: AirArrow;
  /** '24 °C' */
  readonly words: string;
}

const MOST_OPENINGS = 3;
const MOST_INSIDE = 4;

export function airLabels(
  { arrows }: AirPicture,
  room: number = Number.POSITIVE_INFINITY,
): readonly AirLabel[] {
  const sorted = [...arrows].sort((a, b) => b.flow - a.flow);
  const of = (kind: AirArrow['kind']) => sorted.filter((arrow) => arrow.kind === kind);
  const chosen = [
    ...onePerPart(of('fan')),
    ...of('opening').slice(0, MOST_OPENINGS),
    ...of('inside').slice(0, MOST_INSIDE),
  ];
  return chosen.slice(0, room).map((arrow) => ({
    id: `${arrow.kind} ${arrow.label} ${arrow.at.map((value) => value.toFixed(0)).join(' ')}`,
    arrow,
    words: `${arrow.celsius.toFixed(0)} °C`,
  }));
}

/** A card's three fans draw nearly the same air: the largest speaks for them. */
function onePerPart(arrows: readonly AirArrow[]): readonly AirArrow[] {
  const seen = new Set<string | undefined>();
  return arrows.filter(({ part }) => {
    const first = !seen.has(part);
    seen.add(part);
    return first;
  });
}
