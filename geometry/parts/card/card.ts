import { translationBy } from '../../space/transform';
import { breathingGapOfBlades } from '../../standards/fan-breathing';
import type { AdjustmentValues, BodyBox, Feature, PartModel } from '../body';
import { type Extent, reservedBox, solidBox } from '../body-box';
import { nominal } from '../dimension';
import { hasVolume, hullOf } from '../extent-overlap';
import { slotMountPattern } from '../patterns';
import { buildBracket } from './bracket';
import {
  boardExtents,
  bracketToKeyNotch,
  type CardPowerSocket,
  fanExtents,
  type PlacedSocket,
  placeSocket,
} from './card-layout';
import { buildShroud } from './shroud';
import type { CardSpec } from './spec';

/** Body of a card in the frame of `spec.ts`; its foot is the key notch at the finger tips. */
export function buildCard(spec: CardSpec, _adjust: AdjustmentValues = {}): PartModel {
  const { fingers, board, backplate } = boardExtents(spec);
  const sockets = (spec.power ?? []).map((power) => ({ power, placed: placeSocket(spec, power) }));
  const power = sockets.map(({ power: socket, placed }, index) => buildSocket(socket, placed, index));
  const boxes = [
    ...buildBracket(spec.bracketSlots, spec.lowProfile ?? false),
    solidBox('contact fingers', 'card board', fingers, { engages: true }),
    solidBox('circuit board', 'card board', board),
    ...(hasVolume(backplate) ? [solidBox('backplate', 'card backplate', backplate)] : []),
    ...buildShroud(
      spec,
      sockets.map(({ placed }) => placed),
    ),
    ...power.flatMap((socket) => socket.boxes),
    ...breathingSpace(spec),
  ];
  return {
    boxes,
    mounts: [],
    feet: [
      {
        id: 'slot',
        label: 'Edge connector',
        pattern: slotMountPattern(spec.interface),
        frame: translationBy([bracketToKeyNotch(spec), 0, 0]),
      },
    ],
    features: power.map((socket) => socket.feature),
    adjustments: [],
  };
}

function buildSocket(
  { type }: CardPowerSocket,
  { socket, plug, bend }: PlacedSocket,
  index: number,
): { boxes: readonly BodyBox[]; feature: Feature } {
  const id = `power ${index + 1}`;
  const inSocket = { feature: id };
  const plugName = `plug space, ${type} ${index + 1}`;
  const bendName = `bend space, ${type} ${index + 1}`;
  return {
    boxes: [
      solidBox(`power socket ${index + 1}`, 'power socket', socket, inSocket),
      reservedBox(plugName, 'plug space', 'plug', plug, inSocket),
      reservedBox(bendName, 'bend space', 'plug', bend, inSocket),
    ],
    feature: {
      id,
      kind: 'power socket',
      label: `Power socket ${index + 1} (${type})`,
      use: [plugName, bendName],
      approach: [],
      required: true,
    },
  };
}

/** Air below the fans, one space for all of them: the gap of equal area of one fan's blades. */
function breathingSpace(spec: CardSpec): readonly BodyBox[] {
  const [first, ...rest] = fanExtents(spec);
  if (first === undefined || spec.fans === undefined) return [];
  const fans = hullOf(first, ...rest);
  const gap = breathingGapOfBlades(nominal(spec.fans.diameter));
  const air: Extent = { ...fans, y: [fans.y[0] - gap, fans.y[0]] };
  return [reservedBox('breathing space, fans', 'breathing space', 'fan', air)];
}
