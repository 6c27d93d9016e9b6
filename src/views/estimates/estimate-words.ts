/** Estimates in the words of the screen. */
import {
  type AssumptionEffect,
  assumptions,
  type Estimate,
  type EstimateInput,
  type EstimateUnit,
  type Load,
  type Plan,
  type Profile,
  type Standing,
  type TopicEstimates,
  unitName,
  type WishRow,
  writeValue,
} from '../../../geometry';
import type { EstimatesAnswer } from '../../workers/estimates-request';

export const loadNames: Readonly<Record<Load, string>> = {
  idle: 'Idle',
  game: 'Game',
  render: 'Render',
  worst: 'Worst case',
};

/** What the kernel takes a room to have where nobody says, deg C. */
export const USUAL_ROOM = assumptions.roomTemperature.value;

/** 'Load: game. Room 24 °C, altitude 0 m, fans as the load asks' */
export function profileWords(plan: Plan, { load, room, altitude, fanCap }: Profile): string {
  const { brief } = plan;
  const fans = fanCap === undefined ? 'fans as the load asks' : `fans at up to ${Math.round(fanCap * 100)} %`;
  const place = `Room ${room ?? brief?.roomTemperature ?? USUAL_ROOM} °C, altitude ${altitude ?? brief?.altitude ?? 0} m`;
  return `Load: ${loadNames[load]}. ${place}, ${fans}`;
}

export const standingWords: Readonly<Record<Standing, string>> = {
  met: 'within its limit',
  perhaps: 'perhaps within its limit',
  'not met': 'outside its limit',
  unknown: 'limit unchecked',
  'no limit': '',
};

/** ' Outside its limit: Lifting index from the floor.', so that a mark never stands beside a line that looks well. */
export function outsideWords(estimates: readonly Estimate[]): string {
  const titles = estimates.filter(({ standing }) => standing === 'not met').map(({ title }) => title);
  if (titles.length === 0) return '';
  return ` Outside ${titles.length === 1 ? 'its limit' : 'their limits'}: ${titles.join('; ')}.`;
}

/** '402 W'; 'unknown' where there is no value. */
export function valueText({ value, unit }: Estimate, currency: string): string {
  return value === undefined ? 'unknown' : `${writeValue(value, unit)}${unitName(unit, currency)}`;
}

/** '375 to 431 W, an estimate'; without a band when nothing assumed moves the figure. */
export function bandText({ value, low, high, unit }: Estimate, currency: string): string {
  if (value === undefined || low === undefined || high === undefined) return '';
  const [lowest, highest] = [writeValue(low, unit), writeValue(high, unit)];
  if (lowest === highest) return 'an estimate';
  return `${lowest} to ${highest}${unitName(unit, currency)}, an estimate`;
}

const sourceWords: Readonly<Record<EstimateInput['source'], string>> = {
  plan: 'from the plan',
  brief: 'from the brief',
  asked: 'as asked for here',
  derived: 'estimated itself',
  assumed: 'assumed',
  sheet: 'from its sheet',
  standard: 'from a standard',
  measured: 'measured',
};

/** 'room: 21 °C, from the brief' */
export function inputText({ name, value, unit, source, note }: EstimateInput, currency: string): string {
  const unitPart =
    unit === 'm' || unit === 'K/W' || unit === 'GB'
      ? ` ${unit}`
      : unit === undefined
        ? ''
        : unitName(unit, currency);
  const told = note === undefined ? '' : ` (${note})`;
  return `${name}: ${value}${unitPart}, ${sourceWords[source]}${told}`;
}

/** '−12 W' or '+15 W' */
function changeText(change: number, unit: EstimateUnit, currency: string): string {
  return `${change < 0 ? '' : '+'}${writeValue(change, unit)}${unitName(unit, currency)}`;
}

/** 'at its lowest −12 W, at its highest +15 W' */
export function effectText(
  { atLow, atHigh }: AssumptionEffect,
  unit: EstimateUnit,
  currency: string,
): string {
  return `at its lowest ${changeText(atLow, unit, currency)}, at its highest ${changeText(atHigh, unit, currency)}`;
}

/** '−12 W, +15 W' */
export function endsText({ atLow, atHigh }: AssumptionEffect, unit: EstimateUnit): string {
  return `${changeText(atLow, unit, '')}, ${changeText(atHigh, unit, '')}`;
}

/** The line of a topic; where the machine cannot be run, the reason that air gives holds for heat and sound too. */
export function topicLine({ answer, estimates }: TopicEstimates, topics: EstimatesAnswer['topics']): string {
  // Sums of typed amounts carry no band, and so no word of their own that they are estimates.
  if (answer !== '') return /estimate|unknown, because/.test(answer) ? answer : `${answer} An estimate.`;
  const silent =
    estimates.find(({ unknown }) => unknown !== undefined) ??
    topics.air.estimates.find(({ id, unknown }) => id === 'air drawn in' && unknown !== undefined);
  if (silent?.unknown === undefined) return 'Unknown, because no part of the plan says anything about it.';
  return `${silent.unknown.charAt(0).toUpperCase()}${silent.unknown.slice(1)}.`;
}

/** 'Missing: 1 card 16-pin plug.'; nothing when no plug is missing. */
export function missingPlugs(plugs: EstimatesAnswer['power']['plugs']): string {
  const missing = plugs.filter((plug) => plug.missing > 0);
  if (missing.length === 0) return '';
  const words = missing.map(({ missing: count, type }) => `${count} ${type} plug${count > 1 ? 's' : ''}`);
  return ` Missing: ${words.join(', ')}.`;
}

/** '3 met, 1 perhaps, 1 not met, 2 unknown, by estimate.' */
export function wishesLine(wishes: readonly WishRow[]): string {
  if (wishes.length === 0) return 'The brief asks for nothing that an estimate could answer.';
  const count = (standing: WishRow['standing']) => wishes.filter((wish) => wish.standing === standing).length;
  const parts = (['met', 'perhaps', 'not met', 'unknown'] as const).flatMap((standing) => {
    const many = count(standing);
    return many === 0 && standing === 'perhaps' ? [] : [`${many} ${standing}`];
  });
  return `${parts.join(', ')}, by estimate.`;
}
