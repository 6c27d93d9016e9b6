/**
 * Everything in the machine that moves air or takes a stream of it through fins: case fans (through radiators, when
 * they sit on one), coolers, cards, supplies. Places only; how fast and how hot comes later.
 */
import type { PlacedPart } from '../../plan/scene';
import type { Vector3 } from '../../space/vector';
import type { Port } from './ports';

export type DeviceKind = 'case fan' | 'cooler' | 'card' | 'supply' | 'radiator';

/** One fan frame or bladed disc in a stream. */
export interface FanPlace {
  /** Plan part whose sheet describes it: the fan itself, the cooler, the card or the supply. */
  readonly part: PlacedPart;
  /** Frame or disc across, mm. */
  readonly size: number;
  /** False when it blows against the others of its stream. */
  readonly withStream: boolean;
}

/** A stream: intake port, fans one behind the other, fins or core, a place where the heat goes in, outlets. */
export interface Stream {
  readonly id: string;
  readonly fans: readonly FanPlace[];
  readonly intake: Port;
  /** Fins passed: depth in mm and the area before them in m2. */
  readonly fins?: { readonly depth: number; readonly area: number };
  readonly core?: { readonly depth: number; readonly area: number };
}

export interface Device {
  readonly id: string;
  readonly kind: DeviceKind;
  /** Part that the device is; its heat goes into the device. */
  readonly part: PlacedPart;
  readonly label: string;
  readonly streams: readonly Stream[];
  readonly outlets: readonly { readonly port: Port; readonly share: OutletShare }[];
  /** Disc area of all fans, m2. */
  readonly discArea: number;
  /** Middle of the device and the way its air runs, enclosure frame. */
  readonly at: Vector3;
  readonly along: Vector3;
}

/** How the leaving air divides: evenly, or for a card towards the board and away from it. */
export type OutletShare = 'even' | 'to the board' | 'from the board' | { readonly through: number };

export function discAreaOf(fans: readonly FanPlace[]): number {
  return fans.reduce((sum, { size }) => sum + (Math.PI / 4) * (size / 1000) ** 2, 0);
}
