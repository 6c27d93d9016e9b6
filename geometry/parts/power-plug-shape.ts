/** Sizes and reserved spaces of the plugs of a supply's leads, mm. */
import { bendFactors, plugAndBendHeight } from '../standards/assembly-practice';
import { leadBends, type PowerPlugKind, powerPlugs } from '../standards/power-connectors';
import type { PlugType } from './patterns';

const kindOfPlug: Readonly<Record<PlugType, PowerPlugKind>> = {
  'main 24-pin': '2x12',
  'processor 8-pin': '2x4',
  'processor 4-pin': '2x2',
  'card 6-pin': '2x3',
  'card 8-pin': '2x4',
  'card 16-pin': '16-pin',
  // Modular leads of drives start from a six-way socket on the supply, whatever hangs at their far end.
  'drive power': '2x3',
  'peripheral 4-pin': '2x3',
};

export interface PowerPlugShape {
  /** Along the row of contacts. */
  readonly along: number;
  /** Across the rows, without and with the latch. */
  readonly across: number;
  readonly acrossOverLatch: number;
  /** What stands outside the socket once mated. */
  readonly outside: number;
}

export function powerPlugShape(type: PlugType): PowerPlugShape {
  const plug = powerPlugs[kindOfPlug[type]];
  return {
    along: plug.along.value,
    across: plug.across.value,
    acrossOverLatch: plug.acrossOverLatch.value,
    outside: plug.outsideWhenMated.value,
  };
}

/**
 * Room for the leads beyond a card's plug. The 16-pin lead runs straight for the whole of the common-practice run,
 * counted from the face of the socket; the others turn at the workmanship radius of their wire.
 */
export function leadBendBeyondCardPlug(type: PlugType): number {
  const { outside } = powerPlugShape(type);
  if (type === 'card 16-pin') return Math.max(...leadBends.straightRun16Pin.value) - outside;
  return plugAndBendHeight(0, 0, leadBends.wireDiameter18Awg.value, bendFactors.wireShortTerm.value);
}
