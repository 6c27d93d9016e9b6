/** What a balance is asked, and what it answers. */
import type { Scene } from '../../plan/scene';
import type { MachineNetwork } from '../air/build-network';
import type { HeatCarrier } from '../air/carry-heat';
import type { DeviceRatings } from '../air/device-ratings';
import type { MachineAir } from '../air/machine-air';
import type { NetworkSolution } from '../air/solve-network';
import type { AssumptionValues } from '../assumptions';

export interface Question {
  readonly scene: Scene;
  readonly air: MachineAir;
  readonly values: AssumptionValues;
  readonly ratings: DeviceRatings;
  /** deg C and m. */
  readonly room: number;
  readonly altitude: number;
  /** Heat of every part, W; of the supply its loss. */
  readonly heats: ReadonlyMap<string, number>;
  /** Heat of the processor and cards when busy for long, W: what their coolers are made for. */
  readonly sustained: ReadonlyMap<string, number>;
  /** Output of the supply over its rating. */
  readonly supplyLoad: number;
  /** Share of top speed of case fans, and the most that cooler fans may take. */
  readonly caseShare: number;
  readonly coolerMost: number;
  readonly fanShares: Readonly<Record<string, number>>;
}

export interface Settled {
  readonly network: MachineNetwork;
  readonly solution: NetworkSolution;
  readonly carrier: HeatCarrier;
  readonly watts: Float64Array;
  /** Rise of every node above the air drawn in from the room, K. */
  readonly rises: Float64Array;
  /** What the air drawn in is already warmer than the room, K. */
  readonly drawnInRise: number;
  /** Share of top speed by device id. */
  readonly shares: ReadonlyMap<string, number>;
  readonly rounds: number;
  readonly settled: boolean;
}
