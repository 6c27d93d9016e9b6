/** Everything the power topic has to say for one set of assumption values. */
import { nominal } from '../../parts/dimension';
import type { PartKind } from '../../parts/part-spec';
import type { Plan } from '../../plan/plan-schema';
import type { Scene } from '../../plan/scene';
import type { AssumptionValues } from '../assumptions';
import type { EstimateInput, Figure, Limit } from '../estimate';
import { type Load, loadShares, type Profile } from '../profile';
import { type CardPower, cardPowers, firstSupply } from './connectors';
import { type Demand, demandsOf, type Rail } from './demand';
import { durationName, type ExcursionRow, excursionRows, ridesLargerExcursions } from './excursions';
import { suggestRating } from './supply-rating';
import { type PowerContext, wallFigures } from './wall-figures';

export interface PowerModel {
  readonly figures: readonly Figure[];
  readonly demands: readonly Demand[];
  readonly rows: readonly ExcursionRow[];
  readonly cards: readonly CardPower[];
  /** Heat of each part at the profile's load, W, and the loss of the supply there. */
  readonly heats: ReadonlyMap<string, number>;
}

/** Heat of every part at a load, W; the supply's is its loss. */
export function heatsAtLoad(
  demands: readonly Demand[],
  load: Load,
  values: AssumptionValues,
): ReadonlyMap<string, number> {
  const shares = loadShares(load, values);
  return new Map(demands.map(({ part, heat }) => [part.id, heat * shareOfKind(part.kind, shares)] as const));
}

function shareOfKind(kind: PartKind, shares: ReturnType<typeof loadShares>): number {
  if (kind === 'processor' || kind === 'card' || kind === 'drive') return shares[kind];
  return shares.others;
}

export function powerModel(plan: Plan, scene: Scene, profile: Profile, values: AssumptionValues): PowerModel {
  const demands = demandsOf(scene, values);
  const supply = firstSupply(scene);
  const spec = supply?.spec.kind === 'supply' ? supply.spec : undefined;
  const rated = spec === undefined ? undefined : nominal(spec.watts);
  const has16Pin = spec?.plugs.some(({ type }) => type === 'card 16-pin') ?? false;
  const rows = excursionRows(demands, values.extrasWatts, ridesLargerExcursions(rated ?? 0, has16Pin));
  const cards = cardPowers(demands, values);
  const heats = heatsAtLoad(demands, profile.load, values);
  const missing = demands.flatMap((demand) => demand.missing);
  const inputs = demands.flatMap((demand) => demand.inputs);
  const context: PowerContext = { demands, rated, missing, inputs, values };
  return {
    demands,
    rows,
    cards,
    heats,
    figures: [
      sustainedFigure(context),
      ...partFigures(context),
      ...railFigures(context),
      ...rows.map((row) => excursionFigure(context, row)),
      ...cards.flatMap(cardFigures),
      suggestionFigure(context),
      ...wallFigures(context, plan, profile, heats, spec),
    ],
  };
}

function ratingLimit(rated: number | undefined, share = 1): { limit?: Limit } {
  if (rated === undefined) return {};
  const from =
    share === 1 ? 'rating of the supply' : `${Math.round(share * 100)} % of the rating of the supply`;
  return { limit: { kind: 'at most', value: rated * share, from } };
}

function sustainedFigure({ demands, rated, missing, inputs, values }: PowerContext): Figure {
  return {
    id: 'power sustained',
    topic: 'power',
    title: 'Sustained power of all parts together',
    unit: 'W',
    ...(demands.length === 0
      ? { because: 'no part of the plan draws power' }
      : { value: demands.reduce((sum, { sustained }) => sum + sustained, values.extrasWatts) }),
    missing,
    formula: 'The sustained power of every part, and what hangs on the ports, added up.',
    inputs,
    ...ratingLimit(rated),
  };
}

function partFigures({ demands }: PowerContext): readonly Figure[] {
  return demands.map(({ part, sustained, missing, inputs }) => ({
    id: `power of ${part.id}`,
    topic: 'power',
    title: `${part.label}, sustained power`,
    part: part.id,
    unit: 'W',
    value: sustained,
    missing,
    formula: 'As its sheet states; from its class, connectors or kind where the sheet is silent.',
    inputs,
  }));
}

const rails: readonly Rail[] = ['12 V', '5 V', '3.3 V'];

function railFigures({ demands, missing }: PowerContext): readonly Figure[] {
  return rails.map((rail) => ({
    id: `power rail ${rail}`,
    topic: 'power',
    title: `Sustained power from ${rail}`,
    unit: 'W',
    value: demands.reduce((sum, demand) => sum + demand.sustained * demand.rails[rail], 0),
    missing,
    formula: 'The share of each part that its kind takes from this rail, added up.',
    inputs: demands
      .filter((demand) => demand.rails[rail] > 0)
      .map(({ part, sustained, rails: shares }) => ({
        name: part.label,
        value: Math.round(sustained * shares[rail] * 10) / 10,
        unit: 'W' as const,
        source: 'derived' as const,
      })),
  }));
}

function excursionFigure({ rated, missing, inputs }: PowerContext, row: ExcursionRow): Figure {
  const name = durationName(row.microseconds);
  const continuous = !Number.isFinite(row.microseconds);
  return {
    id: `power excursion ${name}`,
    topic: 'power',
    title: continuous ? 'Load for long' : `Highest load for ${name}`,
    unit: 'W',
    value: row.load,
    missing,
    formula:
      'All parts at their peak of this duration at once, the worst case; the supply must ride ' +
      `${Math.round(row.allowedShare * 100)} % of its rating for ${Math.round(row.dutyCycle * 1000) / 10} % of the time ` +
      '(supply guide, document 613768, table 3-3).',
    inputs,
    ...ratingLimit(rated, row.allowedShare),
  };
}

function cardFigures(power: CardPower): readonly Figure[] {
  const { card, watts, limit, plugs } = power;
  const inputs: EstimateInput[] = [
    { name: 'slot', value: 75, unit: 'W', source: 'standard' },
    ...plugs.map(({ type, limit: most }) => ({
      name: type,
      value: most,
      unit: 'W' as const,
      source: 'standard' as const,
    })),
  ];
  const about = { topic: 'power', part: card.id } as const;
  return [
    {
      ...about,
      id: `power connectors ${card.id}`,
      title: `${card.label}, power through slot and plugs`,
      unit: 'W',
      value: watts,
      formula: 'Sustained power of the card against the limits of its slot and plugs, added up.',
      inputs,
      limit: { kind: 'at most', value: limit, from: 'slot and plugs' },
    },
    ...plugs.map(
      (plug, index): Figure => ({
        ...about,
        id: `power drop ${card.id} ${index + 1}`,
        title: `${card.label}, voltage lost to plug ${index + 1} (${plug.type})`,
        unit: 'V',
        value: plug.drop,
        formula:
          'Twice the length of the lead times the resistance of its wire times the current of one wire, and four contacts.',
        inputs: [
          {
            name: 'current of one contact',
            value: Math.round(plug.contactAmperes * 100) / 100,
            unit: 'A',
            source: 'derived',
          },
          { name: 'power through the plug', value: Math.round(plug.watts), unit: 'W', source: 'derived' },
        ],
      }),
    ),
  ];
}

function suggestionFigure({ demands, missing, inputs, values }: PowerContext): Figure {
  const suggestion = suggestRating(demands, values.extrasWatts, values.supplyReserve);
  return {
    id: 'power suggested rating',
    topic: 'power',
    title: 'Smallest usual supply rating that satisfies all',
    unit: 'W',
    ...(suggestion && demands.length > 0
      ? { value: suggestion.watts }
      : { because: demands.length > 0 ? 'no usual rating satisfies it' : 'no part of the plan draws power' }),
    missing,
    formula: suggestion
      ? `Sustained load within the reserve and every short peak within the excursion table. What binds: ${suggestion.binds}.`
      : 'Sustained load within the reserve and every short peak within the excursion table.',
    inputs,
  };
}
