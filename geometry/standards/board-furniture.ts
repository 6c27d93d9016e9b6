/**
 * Things that stand on boards and that no board standard sizes: processor sockets, coin cell, upright small-outline
 * memory sockets, settings jumper, and how an M.2 module tilts on its way in. Mm, in the board's directions.
 */
import type { BoardConnector } from './board-connectors';
import { fromMemory } from './cited-documents';
import type { SocketPattern } from './processor-sockets';
import type { Published } from './published';

/** Footprint of the socket body with its load frame, by cooler hole pattern. */
export interface SocketOutline {
  readonly alongX: Published<number>;
  readonly alongY: Published<number>;
}

const loadFrame = { note: 'with the load frame, without the lever' };

export const socketOutlines: Readonly<Record<SocketPattern, SocketOutline>> = {
  'square-75': { alongX: fromMemory(55, loadFrame), alongY: fromMemory(48, loadFrame) },
  'square-78': { alongX: fromMemory(65, loadFrame), alongY: fromMemory(54, loadFrame) },
  'square-80': { alongX: fromMemory(76, loadFrame), alongY: fromMemory(58, loadFrame) },
  'rectangle-54x90': { alongX: fromMemory(60, loadFrame), alongY: fromMemory(52, loadFrame) },
};

/** Holder of a 20 mm coin cell lying flat. */
export const coinCellHolder = {
  side: fromMemory(24),
  height: fromMemory(5.5, { note: 'cell 3.2 in its holder' }),
  lift: fromMemory(20, { note: 'a finger to tip the cell out' }),
} as const;

/** Socket that holds a small-outline module upright. */
export const uprightSoDimmSocket = {
  length: fromMemory(76),
  width: fromMemory(6.5),
  height: fromMemory(6),
} as const;

/** A module goes into its socket tilted up and is then pressed down, degrees. */
export const m2InsertionTiltDegrees = fromMemory(25, { note: '20 to 30' });

/** Two pins that clear the settings: a jumper or the tip of a screwdriver. */
export const clearSettingsPins: BoardConnector = {
  header: { along: fromMemory(5.1), across: fromMemory(2.5), height: fromMemory(8.5) },
  plug: { along: fromMemory(5.1), across: fromMemory(2.5), beyond: fromMemory(9) },
  leaves: 'up',
  bendSpace: fromMemory(5, { note: 'no lead: room for the jumper to be lifted' }),
  pullTravel: fromMemory(5),
};
