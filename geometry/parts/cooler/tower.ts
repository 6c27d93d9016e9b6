import { breathingGapOfBlades, sweptDiameterOfFrame } from '../../standards/fan-breathing';
import type { Adjustment, AdjustmentValues, BodyBox } from '../body';
import { centredSpan, type Extent, reservedBox, solidBox } from '../body-box';
import { nominalOr } from '../dimension';
import type { TowerSpec } from './spec';
import { type FanPlace, layOutTower } from './tower-layout';

const raiseId = (place: FanPlace): string => `${place} fan raise`;

/** Boxes of a tower and the settings by which its fans slide up over tall memory. */
export function buildTower(
  spec: TowerSpec,
  adjust: AdjustmentValues,
): { boxes: readonly BodyBox[]; adjustments: readonly Adjustment[] } {
  const adjustments: Adjustment[] = [];
  const raise: Partial<Record<FanPlace, number>> = {};
  for (const fan of spec.fans) {
    const most = nominalOr(fan.raise, 0);
    if (most === 0) continue;
    const id = raiseId(fan.place);
    raise[fan.place] = Math.min(Math.max(adjust[id] ?? 0, 0), most);
    const label = `Raise the ${fan.place} fan`;
    adjustments.push({ id, label, unit: 'mm', min: 0, max: most, step: 1 });
  }
  const layout = layOutTower(spec, raise);
  const boxes = [
    ...layout.foot.map(({ name, extent }) => solidBox(name, 'cooler base', extent)),
    ...layout.stacks.map((stack, index) => solidBox(`fin stack ${index + 1}`, 'fin stack', stack)),
    ...layout.fans.map(({ place, extent }) => solidBox(`${place} fan`, 'fan', extent)),
  ];
  const front = layout.fans.find((fan) => fan.place === 'front');
  if (front) boxes.push(breathingSpaceBefore(front.extent));
  return { boxes, adjustments };
}

/** Air the front fan draws: as wide as its blades, in front of its outer face. */
function breathingSpaceBefore(fan: Extent): BodyBox {
  const swept = sweptDiameterOfFrame(fan.x[1] - fan.x[0]);
  const air: Extent = {
    x: centredSpan((fan.x[0] + fan.x[1]) / 2, swept),
    y: [fan.y[1], fan.y[1] + breathingGapOfBlades(swept)],
    z: centredSpan((fan.z[0] + fan.z[1]) / 2, swept),
  };
  return reservedBox('breathing space, front fan', 'breathing space', 'fan', air);
}
