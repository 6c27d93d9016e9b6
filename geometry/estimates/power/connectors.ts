/** Power paths into a card against their limits. */
import type { PlacedPart, Scene } from '../../plan/scene';
import { leadGauges } from '../../standards/copper-wire';
import { cardPowerLimits } from '../../standards/power-connectors';
import type { AssumptionValues } from '../assumptions';
import { connectorLimit, type Demand, plugLimit } from './demand';
import { contactDrop, leadDrop } from './lead-laws';

/** Conductors of each polarity in a card plug. */
const conductorsOf: Readonly<Record<string, number>> = { 'card 6-pin': 3, 'card 8-pin': 3, 'card 16-pin': 6 };

export interface CardPower {
  readonly card: PlacedPart;
  readonly watts: number;
  /** Slot and plugs together, W. */
  readonly limit: number;
  /** Share of the draw that comes through the plugs when slot and plugs are loaded alike, W. */
  readonly throughPlugs: number;
  readonly plugs: readonly {
    readonly type: string;
    readonly watts: number;
    readonly limit: number;
    /** Through one contact, A. */
    readonly contactAmperes: number;
    /** Supply to card and back, V. */
    readonly drop: number;
  }[];
  /** Least power grade that the sense pins of a 16-pin plug must tell, W. */
  readonly gradeNeeded?: number;
}

export function cardPowers(demands: readonly Demand[], values: AssumptionValues): readonly CardPower[] {
  return demands.flatMap((demand) => {
    const { spec } = demand.part;
    return spec.kind === 'card' ? [cardPower(demand, spec.power ?? [], values)] : [];
  });
}

function cardPower(
  { part, sustained }: Demand,
  plugs: readonly { readonly type: string }[],
  values: AssumptionValues,
): CardPower {
  const limit = connectorLimit({ power: plugs });
  const ofPlugs = limit - cardPowerLimits.slotWatts.value;
  const throughPlugs = limit > 0 ? (sustained * ofPlugs) / limit : 0;
  const rows = plugs.map(({ type }) => {
    const watts = (sustained * plugLimit(type)) / limit;
    const conductors = conductorsOf[type] ?? 3;
    const amperes = watts / RAIL_VOLTS;
    const contact = contactDrop(amperes / conductors, values.leadContact / 1000);
    const gauge = type === 'card 16-pin' ? leadGauges.cardSixteenPin.value : leadGauges.others.value;
    return {
      type,
      watts,
      limit: plugLimit(type),
      contactAmperes: amperes / conductors,
      drop: leadDrop(values.leadLength, gauge, amperes, conductors) + contact,
    };
  });
  const has16 = plugs.some(({ type }) => type === 'card 16-pin');
  const beyondSlot = Math.max(0, sustained - cardPowerLimits.slotWatts.value);
  const grade = cardPowerLimits.sixteenPinGradesWatts.value.find((watts) => watts >= beyondSlot);
  return {
    card: part,
    watts: sustained,
    limit,
    throughPlugs,
    plugs: rows,
    ...(has16 && grade !== undefined ? { gradeNeeded: grade } : {}),
  };
}

const RAIL_VOLTS = 12;

export function firstSupply(scene: Scene): PlacedPart | undefined {
  return scene.parts.find((part) => part.kind === 'supply');
}
