/** Facts of the trade, common practice, no source: the figure must lie inside the band of the estimate. */
import { estimatePlan } from '../../../geometry/estimates/estimate-plan';
import { commonPracticePlan } from '../../estimates/example-plan';

export interface TradeCheck {
  readonly what: string;
  readonly unit: string;
  readonly practice: number;
  readonly ours: number;
  readonly low: number;
  readonly high: number;
  /** `inside`: practice lies in the band. `ample`: the whole band stays below it. */
  readonly holds: 'inside' | 'ample';
}

export function tradeChecks(): readonly TradeCheck[] {
  const { plan, scene } = commonPracticePlan();
  const { topics } = estimatePlan(plan, scene, { load: 'game' });
  const all = Object.values(topics).flatMap(({ estimates }) => estimates);
  const row = (id: string, what: string, practice: number, holds: TradeCheck['holds']): TradeCheck => {
    const estimate = all.find((one) => one.id === id);
    const { value = Number.NaN, low = Number.NaN, high = Number.NaN, unit = '' } = estimate ?? {};
    return { what, unit, practice, ours: value, low, high, holds };
  };
  return [
    row('power sustained', '850 W are ample: sustained load, against 0.8 of them', 680, 'ample'),
    row('power excursion 100 µs', '850 W are ample: peaks of 100 µs, against 2 x 850 W', 1700, 'ample'),
    row('power connectors card', 'a 260 W card on slot and two 8-pin plugs', 375, 'ample'),
    row(
      'heat of processor',
      'six cores, 105 W class, twin tower of 120 mm, in games: high 70s',
      78,
      'inside',
    ),
    row('sound at the ear', 'about 37 dB beside the machine reads as quiet', 37, 'inside'),
  ];
}

export function tradeHolds({ practice, low, high, holds }: TradeCheck): boolean {
  return holds === 'ample' ? high < practice : low <= practice && practice <= high;
}
