/** Sizes of risers: no standard covers them and no drawing was read, mm. */
import { fromMemory } from './cited-documents';

export const riserBoard = {
  /** Below the connector: circuit board, ribbon and screw bosses. */
  socketDepth: fromMemory(8),
  width: fromMemory(20),
  pastConnector: fromMemory(6, { note: 'at each end, for the screws' }),
  /** Above the connector of the board it stands in. */
  plugHeight: fromMemory(12),
  ribbonBend: fromMemory(20),
  edgeThickness: fromMemory(1.57, { note: 'as a card' }),
} as const;
