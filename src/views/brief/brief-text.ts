/** The brief as it is typed: text in fields, and what the schema is asked to judge. */
import type { Plan } from '../../../geometry';
import { readNumber } from '../../ui/numbers';

export interface BriefText {
  readonly revision: string;
  readonly client: string;
  readonly purpose: string;
  readonly budget: string;
  readonly currency: string;
  readonly roomTemperature: string;
  readonly decibels: string;
  readonly metres: string;
  readonly stands: string;
  readonly altitude: string;
  readonly mains: string;
  readonly carried: string;
  readonly placeName: string;
  readonly placeLength: string;
  readonly placeHeight: string;
  readonly placeWidth: string;
  readonly placeUpright: string;
  readonly upgrades: string;
  readonly notes: string;
}

export function textOf({ brief = {}, notes = '', revision = '' }: Plan): BriefText {
  const text = (value: string | number | undefined) => (value === undefined ? '' : String(value));
  return {
    revision,
    client: text(brief.client),
    purpose: text(brief.purpose),
    budget: text(brief.budget),
    currency: text(brief.currency),
    roomTemperature: text(brief.roomTemperature),
    decibels: text(brief.noiseWish?.decibels),
    metres: text(brief.noiseWish?.metres),
    stands: text(brief.stands),
    altitude: text(brief.altitude),
    mains: text(brief.mains),
    carried: text(brief.carried),
    placeName: text(brief.mustGoInto?.name),
    placeLength: text(brief.mustGoInto?.length),
    placeHeight: text(brief.mustGoInto?.height),
    placeWidth: text(brief.mustGoInto?.width),
    placeUpright: brief.mustGoInto?.upright ? 'yes' : '',
    upgrades: (brief.upgrades ?? []).join('\n'),
    notes,
  };
}

const words = (text: string) => text.trim() || undefined;
const figure = (text: string) => (text.trim() === '' ? undefined : (readNumber(text) ?? text));

/** What was typed as a brief, without what was left empty; judged by the schema. */
export function briefValue(text: BriefText): unknown {
  const upgrades = text.upgrades
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean);
  const noiseWish =
    words(text.decibels) === undefined
      ? undefined
      : { decibels: figure(text.decibels), metres: figure(text.metres) ?? 1 };
  const fields = {
    client: words(text.client),
    purpose: words(text.purpose),
    budget: figure(text.budget),
    currency: words(text.currency)?.toUpperCase(),
    roomTemperature: figure(text.roomTemperature),
    noiseWish,
    stands: words(text.stands),
    altitude: figure(text.altitude),
    mains: figure(text.mains),
    carried: words(text.carried),
    mustGoInto: placeValue(text),
    upgrades: upgrades.length === 0 ? undefined : upgrades,
  };
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}

/** A place to go into once any of its sizes or its name is typed. */
function placeValue(text: BriefText): unknown {
  const sizes = [text.placeLength, text.placeHeight, text.placeWidth];
  if (![text.placeName, ...sizes].some(words)) return undefined;
  return {
    name: words(text.placeName) ?? 'its place',
    length: figure(text.placeLength),
    height: figure(text.placeHeight),
    width: figure(text.placeWidth),
    ...(text.placeUpright === 'yes' ? { upright: true } : {}),
  };
}
