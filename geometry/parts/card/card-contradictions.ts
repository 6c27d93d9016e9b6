/** What in the numbers of a card cannot be true together. */
import { cardOutline } from '../../standards/card-envelope';
import type { Extent } from '../body-box';
import type { Contradiction } from '../contradiction';
import { type Dimension, nominal } from '../dimension';
import { extentsOverlap } from '../extent-overlap';
import {
  backplateOf,
  bracketToCardEdge,
  type CardDimensions,
  componentThickness,
  lowerEdge,
  placeSocket,
  shroudExtent,
} from './card-layout';

/** A shroud thinner than this is a slip of the keyboard. */
const thinnestComponentSide = 1;

export function cardContradictions(card: CardDimensions): readonly Contradiction[] {
  const outline = outlineContradictions(card);
  if (outline.length > 0) return outline;
  return [...boardContradictions(card), ...fanContradictions(card), ...powerContradictions(card)];
}

function outlineContradictions(card: CardDimensions): readonly Contradiction[] {
  const found: Contradiction[] = [];
  const height = nominal(card.height);
  if (height <= lowerEdge) {
    const message = `"Height" (${height} mm) ends below the lower edge of a card (${lowerEdge} mm above the finger tips)`;
    found.push({ path: ['height'], message });
  }
  if (componentThickness(card) < thinnestComponentSide) {
    const board = cardOutline.boardThickness.value;
    const message = `"Thickness" (${nominal(card.thickness)} mm) leaves nothing for the shroud beside the circuit board (${board} mm) and "Backplate side" (${backplateOf(card)} mm)`;
    found.push({ path: ['thickness'], message });
  }
  return found;
}

function boardContradictions(card: CardDimensions): readonly Contradiction[] {
  const pairs = [
    {
      path: 'boardLength',
      title: 'Circuit board length',
      inner: card.boardLength,
      of: 'Length',
      outer: card.length,
    },
    {
      path: 'boardHeight',
      title: 'Circuit board height',
      inner: card.boardHeight,
      of: 'Height',
      outer: card.height,
    },
  ];
  return pairs.flatMap(({ path, title, inner, of, outer }) =>
    inner !== undefined && nominal(inner) > nominal(outer)
      ? [{ path: [path], message: tooLarge(title, inner, of, outer) }]
      : [],
  );
}

function tooLarge(title: string, inner: Dimension, of: string, outer: Dimension): string {
  return `"${title}" (${nominal(inner)} mm) is more than "${of}" (${nominal(outer)} mm)`;
}

function fanContradictions(card: CardDimensions): readonly Contradiction[] {
  if (card.fans === undefined) return [];
  const { count } = card.fans;
  const diameter = nominal(card.fans.diameter);
  const shroud = shroudExtent(card);
  const found: Contradiction[] = [];
  if (count * diameter > shroud.x[1] - shroud.x[0]) {
    const message = `${count} fans of "Diameter" ${diameter} mm are longer than "Length" (${nominal(card.length)} mm) allows`;
    found.push({ path: ['fans', 'diameter'], message });
  }
  if (diameter > shroud.z[1] - shroud.z[0]) {
    const message = `fans of "Diameter" ${diameter} mm are higher than the shroud: "Height" is ${nominal(card.height)} mm, its lower edge ${lowerEdge} mm`;
    found.push({ path: ['fans', 'diameter'], message });
  }
  return found;
}

const inside = (inner: Extent, outer: Extent): boolean =>
  (['x', 'z'] as const).every(
    (axis) => inner[axis][0] >= outer[axis][0] - 1e-9 && inner[axis][1] <= outer[axis][1] + 1e-9,
  );

function powerContradictions(card: CardDimensions): readonly Contradiction[] {
  const shroud = shroudExtent(card);
  const sockets = (card.power ?? []).map((power) => ({ power, placed: placeSocket(card, power) }));
  const found: Contradiction[] = [];
  for (const [index, { power, placed }] of sockets.entries()) {
    const number = `power socket ${index + 1}`;
    const at = nominal(power.at);
    if (!inside(placed.socket, shroud)) {
      const [title, size] = power.edge === 'top' ? ['Length', card.length] : ['Height', card.height];
      const message = `"Place along the edge" (${at} mm) and "Set back from the shroud" put ${number} outside the card: "${title}" is ${nominal(size)} mm`;
      found.push({ path: ['power', index, 'at'], message });
    }
    if (power.edge === 'bracket end' && placed.plug.x[0] < bracketToCardEdge) {
      const message = `"Set back from the shroud" is too little: the plug of ${number}, which faces "${power.edge}", would stand in the bracket`;
      found.push({ path: ['power', index, 'recess'], message });
    }
    const other = sockets.findIndex(
      ({ placed: earlier }, place) => place < index && extentsOverlap(earlier.channel, placed.channel),
    );
    if (other >= 0) {
      const otherAt = nominal(sockets[other]?.power.at ?? 0);
      const message = `"Place along the edge" of ${number} (${at} mm) and of power socket ${other + 1} (${otherAt} mm) make them overlap`;
      found.push({ path: ['power', index, 'at'], message });
    }
  }
  return found;
}
