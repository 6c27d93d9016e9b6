/** Where the pieces of a card stand, in the frame of `spec.ts`, mm. */

import { bracketFaceToKeyNotch } from '../../standards/card-bracket';
import { cardFanDepth, contactTongue } from '../../standards/card-edge';
import { cardOutline, cardPartHeights } from '../../standards/card-envelope';
import { cardPowerHeader } from '../../standards/power-connectors';
import { centredSpan, type Extent, type Span } from '../body-box';
import { type Dimension, nominal, nominalOr } from '../dimension';
import type { PlugType, SlotSize } from '../patterns';
import { leadBendBeyondCardPlug, powerPlugShape } from '../power-plug-shape';

export interface CardPowerSocket {
  readonly type: PlugType & ('card 6-pin' | 'card 8-pin' | 'card 16-pin');
  readonly edge: 'top' | 'end' | 'bracket end';
  readonly at: Dimension;
  readonly recess?: Dimension | undefined;
}

/** The dimensions a layout is made of; a card spec has them all. */
export interface CardDimensions {
  readonly interface: SlotSize;
  readonly length: Dimension;
  readonly height: Dimension;
  readonly thickness: Dimension;
  readonly lowProfile?: boolean | undefined;
  readonly keyNotch?: Dimension | undefined;
  readonly backplate?: Dimension | undefined;
  readonly boardLength?: Dimension | undefined;
  readonly boardHeight?: Dimension | undefined;
  readonly fans?: { readonly count: number; readonly diameter: Dimension } | undefined;
  readonly power?: readonly CardPowerSocket[] | undefined;
}

/** Card-side face of the bracket to the key notch, where the card's foot is. */
export function bracketToKeyNotch({ keyNotch }: Pick<CardDimensions, 'keyNotch'>): number {
  return nominalOr(keyNotch, bracketFaceToKeyNotch.value);
}

/** Card-side face of the bracket to the rear edge of the card's board and shroud. */
export const bracketToCardEdge = bracketFaceToKeyNotch.value - cardOutline.keyNotchToRearEdge.value;

export const halfBoard = cardOutline.boardThickness.value / 2;

/** Lower edge of card and shroud above the finger tips: they pass over a neighbouring connector. */
export const lowerEdge = cardOutline.lowerEdgeUp.value;

/** Thickness left for parts on the component side. */
export function componentThickness(card: CardDimensions): number {
  return nominal(card.thickness) - cardOutline.boardThickness.value - backplateOf(card);
}

export function backplateOf(card: CardDimensions): number {
  return nominalOr(card.backplate, cardPartHeights.solderSide.value);
}

/** The fingers, the circuit board above them and what stands behind it. */
export function boardExtents(card: CardDimensions): { fingers: Extent; board: Extent; backplate: Extent } {
  const length = nominal(card.length);
  const height = nominal(card.height);
  const usualHeight = card.lowProfile ? cardOutline.lowProfileHeight.value : cardOutline.fullHeight.value;
  const end = nominalOr(card.boardLength, length);
  const top = nominalOr(card.boardHeight, Math.min(height, usualHeight));
  const tongue = contactTongue(card.interface).value;
  const notch = bracketToKeyNotch(card);
  const y: Span = [-halfBoard, halfBoard];
  return {
    fingers: { x: [notch + tongue[0], notch + tongue[1]], y, z: [0, lowerEdge] },
    board: { x: [bracketToCardEdge, end], y, z: [lowerEdge, top] },
    backplate: {
      x: [bracketToCardEdge, length],
      y: [halfBoard, halfBoard + backplateOf(card)],
      z: [lowerEdge, height],
    },
  };
}

/** Depth of the layer in which the fans turn: never so deep that a power socket reaches into it. */
export function fanLayer(card: CardDimensions): number {
  if (card.fans === undefined) return 0;
  const depth = componentThickness(card);
  const room = card.power?.length ? depth - cardPowerHeader.rightAngle2x4Height.value : depth;
  return Math.min(cardFanDepth.value, depth / 2, Math.max(room, depth / 4));
}

/** The whole of the component side, from the bracket to the tip. */
export function shroudExtent(card: CardDimensions): Extent {
  return {
    x: [bracketToCardEdge, nominal(card.length)],
    y: [-halfBoard - componentThickness(card), -halfBoard],
    z: [lowerEdge, nominal(card.height)],
  };
}

/** Fans spread evenly over the shroud, flush with its face. */
export function fanExtents(card: CardDimensions): readonly Extent[] {
  if (card.fans === undefined) return [];
  const shroud = shroudExtent(card);
  const { count } = card.fans;
  const diameter = nominal(card.fans.diameter);
  const pitch = (shroud.x[1] - shroud.x[0]) / count;
  const z = centredSpan((shroud.z[0] + shroud.z[1]) / 2, diameter);
  const y: Span = [shroud.y[0], shroud.y[0] + fanLayer(card)];
  return Array.from({ length: count }, (_, index) => ({
    x: centredSpan(shroud.x[0] + pitch * (index + 0.5), diameter),
    y,
    z,
  }));
}

export interface PlacedSocket {
  readonly socket: Extent;
  readonly plug: Extent;
  readonly bend: Extent;
  /** What has to be left out of the shroud: socket and plug, as far as the edge they face. */
  readonly channel: Extent;
}

/** A socket at an edge, the plug in it, the bend of its lead. */
export function placeSocket(card: CardDimensions, power: CardPowerSocket): PlacedSocket {
  const shape = powerPlugShape(power.type);
  const outer = edgePosition(card, power.edge);
  const sign = power.edge === 'bracket end' ? -1 : 1;
  const face = outer - sign * nominalOr(power.recess, 0);
  const room = componentThickness(card) - fanLayer(card);
  const onBoard = power.type === 'card 16-pin' ? shape.across : headerHeight;
  const height = Math.min(onBoard, room);
  const along = centredSpan(nominal(power.at), shape.along);
  const out = face + sign * shape.outside;
  const end = out + sign * leadBendBeyondCardPlug(power.type);
  const back = face - sign * cardPowerHeader.rightAngle2x4Depth.value;
  const place = (from: number, to: number, depth: number): Extent => {
    const normal: Span = from < to ? [from, to] : [to, from];
    const y: Span = [-halfBoard - depth, -halfBoard];
    return power.edge === 'top' ? { x: along, y, z: normal } : { x: normal, y, z: along };
  };
  return {
    socket: place(back, face, height),
    plug: place(face, out, shape.acrossOverLatch),
    bend: place(out, end, shape.acrossOverLatch),
    channel: place(back, outer, Math.max(height, Math.min(shape.acrossOverLatch, room))),
  };
}

const headerHeight = cardPowerHeader.rightAngle2x4Height.value;

function edgePosition(card: CardDimensions, edge: CardPowerSocket['edge']): number {
  const shroud = shroudExtent(card);
  if (edge === 'top') return shroud.z[1];
  return edge === 'end' ? shroud.x[1] : shroud.x[0];
}
