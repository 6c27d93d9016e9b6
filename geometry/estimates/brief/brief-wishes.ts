/** What the brief asks for, each wish with the figure that answers it. */
import type { Plan } from '../../plan/plan-schema';
import { writeValue } from '../banded';
import type { Estimate, Standing } from '../estimate';

export interface WishRow {
  readonly id: string;
  /** The wish in words, with its number: 'No louder than 34 dB at 0.7 m'. */
  readonly wish: string;
  readonly standing: Exclude<Standing, 'no limit'>;
  /** The figure, or why there is none. */
  readonly says: string;
  /** Estimate that answers it, if one does. */
  readonly estimate?: string;
}

const standingWords: readonly Standing[] = ['not met', 'unknown', 'perhaps', 'met'];

/**
 * `room` is what the estimates were asked for, deg C, when not the brief's; `missingPlugs` are the sentences about plugs
 * that the supply does not have.
 */
export function briefWishes(
  plan: Plan,
  estimates: readonly Estimate[],
  room = plan.brief?.roomTemperature,
  missingPlugs: readonly string[] = [],
): readonly WishRow[] {
  const { brief } = plan;
  if (!brief) return [];
  const find = (id: string) => estimates.find((estimate) => estimate.id === id);
  const money = (brief.currency ?? '').trim();
  const rows: (WishRow | undefined)[] = [
    brief.budget === undefined
      ? undefined
      : answered('budget', `No more than ${brief.budget} ${money}`.trim(), find('money total')),
    brief.noiseWish === undefined
      ? undefined
      : answered(
          'noise',
          `No louder than ${brief.noiseWish.decibels} dB at ${brief.noiseWish.metres} m`,
          find('sound at the ear'),
        ),
    brief.roomTemperature === undefined
      ? undefined
      : inRoom(
          `Cool enough in a room of ${brief.roomTemperature} °C`,
          brief.roomTemperature,
          room,
          estimates,
        ),
    brief.mustGoInto === undefined
      ? undefined
      : answered('place', `Goes into ${brief.mustGoInto.name}`, find('size place')),
    isCarried(brief.carried)
      ? answered('carry', `Carried ${brief.carried}: light enough to lift`, find('mass lifting index'))
      : undefined,
    isCarried(brief.carried) && find('mass hang angle')
      ? answered('handle', 'Hangs straight from its handle', find('mass hang angle'))
      : undefined,
    brief.purpose ? powerWish(find('power sustained'), missingPlugs) : undefined,
    ...(brief.upgrades ?? []).map(
      (upgrade, i): WishRow => ({
        id: `upgrade ${i + 1}`,
        wish: `Kept open: ${upgrade}`,
        standing: 'unknown',
        says: 'unknown, because it is said in words; the limits of the clearances tell what still fits',
      }),
    ),
  ];
  return rows.flatMap((row) => row ?? []);
}

/** Watts enough are no power where a plug is missing. */
function powerWish(sustained: Estimate | undefined, [missing]: readonly string[]): WishRow {
  const row = answered('power', 'Power for the work', sustained);
  return missing === undefined ? row : { ...row, standing: 'not met', says: missing };
}

function isCarried(carried: NonNullable<Plan['brief']>['carried']): boolean {
  return carried !== undefined && carried !== 'never';
}

function answered(id: string, wish: string, estimate: Estimate | undefined): WishRow {
  if (estimate === undefined)
    return {
      id,
      wish,
      standing: 'unknown',
      says: 'unknown, because the plan lacks what it would be reckoned from',
    };
  const standing = estimate.standing === 'no limit' ? 'unknown' : estimate.standing;
  const says =
    estimate.standing === 'no limit' && estimate.value !== undefined
      ? `${estimate.sentence} There is nothing to hold it against.`
      : estimate.sentence;
  return { id, wish, standing, says, estimate: estimate.id };
}

/** Figures of another room do not answer for the brief's. */
function inRoom(
  wish: string,
  wished: number,
  room: number | undefined,
  estimates: readonly Estimate[],
): WishRow {
  if (room === undefined || room === wished) return hottest(wish, estimates);
  const says = `unknown, because these estimates are for a room of ${room} °C`;
  return { id: 'heat', wish, standing: 'unknown', says };
}

/** The part that comes nearest to, or furthest past, its limit. */
function hottest(wish: string, estimates: readonly Estimate[]): WishRow {
  const rows = estimates.filter(({ id, limit }) => id.startsWith('heat of ') && limit);
  const order = (row: Estimate) => standingWords.indexOf(row.standing);
  const room = (row: Estimate) =>
    row.value === undefined || row.limit === undefined ? 0 : row.limit.value - row.value;
  const [worst] = [...rows].sort((a, b) => order(a) - order(b) || room(a) - room(b));
  if (worst === undefined) return answered('heat', wish, undefined);
  const limit = worst.limit ? ` Limit ${writeValue(worst.limit.value, '°C')} °C.` : '';
  const row = answered('heat', wish, worst);
  return { ...row, says: `${row.says}${limit}` };
}
