import type { BodyBox } from '../body';
import { type Extent, solidBox } from '../body-box';
import { hasVolume, hullOf } from '../extent-overlap';
import { type CutSide, subtractExtent } from '../subtract-extents';
import { type CardDimensions, fanExtents, fanLayer, type PlacedSocket, shroudExtent } from './card-layout';

interface Piece {
  readonly name: string;
  readonly extent: Extent;
}

const sideInWords: Readonly<Record<CutSide, string>> = {
  '-x': 'bracket side',
  '+x': 'tip side',
  '-y': 'fan side',
  '+y': 'board side',
  '-z': 'lower side',
  '+z': 'upper side',
};

/** The layer round the fans: rails above and below them and the ends; between fans the layer is left open. */
function fanLayerPieces(card: CardDimensions, layer: Extent): readonly Piece[] {
  const [first, ...rest] = fanExtents(card);
  if (first === undefined) return [];
  const fans = hullOf(first, ...rest);
  const middle = { ...layer, z: fans.z };
  return [
    { name: 'shroud, lower rail', extent: { ...layer, z: [layer.z[0], fans.z[0]] } },
    { name: 'shroud, upper rail', extent: { ...layer, z: [fans.z[1], layer.z[1]] } },
    { name: 'shroud, bracket end', extent: { ...middle, x: [layer.x[0], fans.x[0]] } },
    { name: 'shroud, tip end', extent: { ...middle, x: [fans.x[1], layer.x[1]] } },
  ];
}

/** What is left of the shroud behind the fans once the sockets and the ways to them are cut out. */
function mainPieces(main: Extent, sockets: readonly PlacedSocket[]): readonly Piece[] {
  let pieces: readonly Piece[] = [{ name: 'shroud', extent: main }];
  for (const [index, { channel }] of sockets.entries()) {
    pieces = pieces.flatMap((piece) => {
      const cut = subtractExtent(piece.extent, channel);
      if (cut === undefined) return [piece];
      return cut.map(({ side, extent }) => ({
        name: side === '-y' && piece.name === 'shroud' ? 'shroud' : nameOfCut(piece.name, side, index),
        extent,
      }));
    });
  }
  return pieces;
}

/** 'shroud, tip side of power 1': each cut names what is on which side of it, so that no two pieces share a name. */
function nameOfCut(piece: string, side: CutSide, socket: number): string {
  return `${piece}, ${sideInWords[side]} of power ${socket + 1}`;
}

/** The shroud of a card with its fans, without the room of the power sockets. */
export function buildShroud(card: CardDimensions, sockets: readonly PlacedSocket[]): readonly BodyBox[] {
  const whole = shroudExtent(card);
  const layerEnd = whole.y[0] + fanLayer(card);
  const main: Extent = { ...whole, y: [layerEnd, whole.y[1]] };
  const layer: Extent = { ...whole, y: [whole.y[0], layerEnd] };
  const pieces = [...mainPieces(main, sockets), ...fanLayerPieces(card, layer)];
  const fans = fanExtents(card).map((extent, index) => solidBox(`fan ${index + 1}`, 'fan', extent));
  return [
    ...pieces
      .filter((piece) => hasVolume(piece.extent))
      .map((piece) => solidBox(piece.name, 'card shroud', piece.extent)),
    ...fans,
  ];
}
