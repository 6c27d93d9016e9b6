/** Every assumption of every model, by name. A model is a function of the values; its band comes from varying them. */
import { airAssumptions } from './air/air-assumptions';
import type { Assumption } from './assumption';
import { heatAssumptions } from './heat/heat-assumptions';
import { massAssumptions } from './mass/mass-assumptions';
import { powerAssumptions } from './power/power-assumptions';
import { soundAssumptions } from './sound/sound-assumptions';

const table = {
  ...powerAssumptions,
  ...airAssumptions,
  ...heatAssumptions,
  ...soundAssumptions,
  ...massAssumptions,
} as const;

export type AssumptionId = keyof typeof table;
export type AssumptionValues = Readonly<Record<AssumptionId, number>>;

export const assumptions: Readonly<Record<AssumptionId, Assumption>> = table;

export const assumptionIds = Object.keys(table) as readonly AssumptionId[];

/** The middles. */
export const middleValues: AssumptionValues = Object.fromEntries(
  assumptionIds.map((id) => [id, table[id].value]),
) as Record<AssumptionId, number>;
