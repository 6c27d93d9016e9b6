/** What comes out of the wall: loss of the supply, efficiency, current. */
import { nominal } from '../../parts/dimension';
import type { Plan } from '../../plan/plan-schema';
import type { AssumptionValues } from '../assumptions';
import type { EstimateInput, Figure } from '../estimate';
import { circumstancesOf, type Profile } from '../profile';
import type { Demand } from './demand';
import { inputPower, supplyLoss } from './efficiency';

/** What the power figures share: the demands with what was read and what was missing. */
export interface PowerContext {
  readonly demands: readonly Demand[];
  readonly rated: number | undefined;
  readonly missing: readonly string[];
  readonly inputs: readonly EstimateInput[];
  readonly values: AssumptionValues;
}

type Supply = Parameters<typeof supplyLoss>[1];

export function wallFigures(
  { missing, inputs, values }: PowerContext,
  plan: Plan,
  profile: Profile,
  heats: ReadonlyMap<string, number>,
  spec: { readonly watts: Parameters<typeof nominal>[0]; readonly grade?: Supply } | undefined,
): readonly Figure[] {
  const { mains } = circumstancesOf(plan, profile, values);
  const output = [...heats.values()].reduce((sum, watts) => sum + watts, values.extrasWatts);
  const absent = { because: 'the plan has no supply' };
  const loss = spec && lossAt(spec, output, mains, values);
  const wall = loss === undefined ? undefined : output + loss;
  const known = (value: number | undefined) => (value === undefined ? absent : { value });
  const formulaOfLoss =
    'A curve through the certified points of the efficiency level, read at the load; what is lost stays in the supply as heat.';
  const gradeMissing =
    spec && spec.grade === undefined
      ? [...missing, 'the sheet of the supply states no efficiency level']
      : missing;
  const shared = { topic: 'power', missing: gradeMissing, inputs } as const;
  return [
    {
      ...shared,
      id: 'power at load',
      title: `Power of all parts at this load (${profile.load})`,
      unit: 'W',
      value: output,
      formula: 'Each part at its share for this load, added up.',
    },
    {
      ...shared,
      id: 'power supply loss',
      title: 'Heat left in the supply',
      unit: 'W',
      ...known(loss),
      formula: formulaOfLoss,
    },
    {
      ...shared,
      id: 'power efficiency',
      title: 'Efficiency of the supply at this load',
      unit: '%',
      ...known(wall && (100 * output) / wall),
      formula: 'What comes out over what goes in.',
    },
    {
      ...shared,
      id: 'power wall',
      title: 'Power from the wall',
      unit: 'W',
      ...known(wall && inputPower(output, output / wall)),
      formula: 'What comes out of the supply over its efficiency.',
    },
    ...([115, 230] as const).map((volts): Figure => {
      const lossThere = spec && lossAt(spec, output, volts, values);
      const drawn = lossThere === undefined ? undefined : (output + lossThere) / (volts * values.powerFactor);
      return {
        ...shared,
        id: `power current ${volts} V`,
        title: `Current at ${volts} V`,
        unit: 'A',
        ...known(drawn),
        formula: 'Power from the wall over voltage and power factor.',
      };
    }),
  ];
}

/** Loss of a supply in W at an output and mains voltage. */
export function lossAt(
  spec: { readonly watts: Parameters<typeof nominal>[0]; readonly grade?: Supply },
  output: number,
  mains: 115 | 230,
  values: AssumptionValues,
): number {
  return supplyLoss(nominal(spec.watts), spec.grade, output, mains, {
    certified: values.lossOverCertified,
    unstated: values.lossWithoutLevel,
  });
}
