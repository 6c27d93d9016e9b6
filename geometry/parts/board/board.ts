/** From a board spec to its body, mounts, foot and features; frame and units in `fields.ts`. */
import type { PartModel } from '../body';
import type { BoardPiece } from './board-piece';
import { componentZonesOf } from './component-zones';
import { expansionSlotsOf } from './expansion-slots';
import type { BoardSpec } from './fields';
import { headersOf } from './headers';
import { m2SocketsOf } from './m2-sockets';
import { memorySlotsOf } from './memory-slots';
import { boardFoot } from './outline';
import {
  circuitBoardOf,
  coinCellOf,
  processorSocketOf,
  rearConnectorsOf,
  regulatorSinksOf,
} from './processor-side';

/**
 * Mounts: 'processor', 'memory N' counted away from the processor, 'slot N' by position, 'm2 X' by label. Features
 * carry the id of their mount, 'header:X' or 'coin cell'. Reserved boxes of the board lie partly inside one another
 * and inside its own solids: they speak to other parts only.
 */
export function buildBoard(spec: BoardSpec): PartModel {
  const pieces: BoardPiece[] = [
    circuitBoardOf(spec),
    rearConnectorsOf(spec),
    regulatorSinksOf(spec),
    processorSocketOf(spec),
    memorySlotsOf(spec),
    expansionSlotsOf(spec),
    m2SocketsOf(spec),
    headersOf(spec),
    coinCellOf(spec),
    componentZonesOf(spec),
  ];
  return {
    boxes: pieces.flatMap((piece) => piece.boxes),
    mounts: pieces.flatMap((piece) => piece.mounts ?? []),
    feet: [boardFoot(spec)],
    features: pieces.flatMap((piece) => piece.features ?? []),
    adjustments: [],
  };
}
