/** Dimensions of a board that cannot all be true. Each message names the fields with their values. */
import { slotCentrelineX, slotConnectors } from '../../standards/expansion-slots';
import { dimmSocket } from '../../standards/memory';
import type { Contradiction } from '../contradiction';
import { type Dimension, nominal, nominalOr } from '../dimension';
import type { BoardSpec } from './fields';
import { headerFaces } from './headers';
import { longestM2, M2_DRIVE_TOP_MM } from './m2-sockets';
import { isHoleLetter, isOn, outlineOf } from './outline';

type Place = readonly [Dimension, Dimension];

export function boardContradictions(spec: BoardSpec): readonly Contradiction[] {
  return [
    ...holeContradictions(spec),
    ...placeContradictions(spec),
    ...slotContradictions(spec),
    ...memoryContradictions(spec),
    ...m2Contradictions(spec),
    ...headerContradictions(spec),
    ...blockContradictions(spec),
    ...repeatedIds(spec),
  ];
}

function sizeText(spec: BoardSpec): string {
  const { x, y } = outlineOf(spec);
  return `"Width" ${(x[1] - x[0]).toFixed(2)} x "Depth" ${(y[1] - y[0]).toFixed(2)} mm`;
}

function holeContradictions(spec: BoardSpec): Contradiction[] {
  const letters = [...(spec.holes ?? '')];
  const wrong = letters.filter((letter, i) => !isHoleLetter(letter) || letters.indexOf(letter) !== i);
  if (wrong.length === 0) return [];
  const message = `"Holes by letter" has ${wrong.join(', ')}, which is no hole of any form or is named twice`;
  return [{ path: ['holes'], message }];
}

/** What is placed by its middle must have that middle on the board. */
function placeContradictions(spec: BoardSpec): Contradiction[] {
  const places: [string, readonly (string | number)[], Place][] = [
    ['Processor socket', ['socket', 'at'], spec.socket.at],
    ['Memory', ['memory', 'at'], spec.memory.at],
    ...(spec.coinCell ? [['Coin cell', ['coinCell'], spec.coinCell] as [string, string[], Place]] : []),
    ...(spec.m2 ?? []).map((m2, i): [string, (string | number)[], Place] => [
      `M.2 socket ${m2.id}`,
      ['m2', i, 'at'],
      m2.at,
    ]),
    ...(spec.headers ?? []).map((header, i): [string, (string | number)[], Place] => [
      `Header ${header.id ?? header.type}`,
      ['headers', i, 'at'],
      header.at,
    ]),
  ];
  const outline = outlineOf(spec);
  return places.flatMap(([title, path, at]) => {
    const [x, y] = [nominal(at[0]), nominal(at[1])];
    if (isOn(outline, x, y)) return [];
    return [{ path, message: `"${title}" (${x}, ${y}) lies beyond the board, ${sizeText(spec)}` }];
  });
}

function slotContradictions(spec: BoardSpec): Contradiction[] {
  const outline = outlineOf(spec);
  const positions = spec.slots.map((slot) => slot.position);
  return spec.slots.flatMap(({ position, size }, i) => {
    const found: Contradiction[] = [];
    if (positions.indexOf(position) !== i) {
      found.push({
        path: ['slots', i, 'position'],
        message: `"Expansion slots" has position ${position} twice`,
      });
    }
    const x = slotCentrelineX(position);
    if (x > outline.x[1]) {
      const message = `"Expansion slots" position ${position} (${x.toFixed(2)} mm from the top edge) lies beyond the board, ${sizeText(spec)}`;
      found.push({ path: ['slots', i, 'position'], message });
    }
    const end = slotConnectors[size].frontEndY.value;
    if (end > outline.y[1]) {
      const message = `"Expansion slots" size ${size} (to ${end.toFixed(2)} mm from the rear edge) reaches beyond the board, ${sizeText(spec)}`;
      found.push({ path: ['slots', i, 'size'], message });
    }
    return found;
  });
}

function memoryContradictions({ memory }: BoardSpec): Contradiction[] {
  const pitch = nominalOr(memory.pitch, dimmSocket.pitch.value);
  if (memory.count === 1 || pitch >= dimmSocket.width.value) return [];
  const message = `"Slot pitch" (${pitch} mm) is less than the width of a slot (${dimmSocket.width.value} mm)`;
  return [{ path: ['memory', 'pitch'], message }];
}

function m2Contradictions(spec: BoardSpec): Contradiction[] {
  return (spec.m2 ?? []).flatMap((m2, i) => {
    const found: Contradiction[] = [];
    if (m2.sink !== undefined && nominal(m2.sink) <= M2_DRIVE_TOP_MM) {
      const message = `"Sink height" (${nominal(m2.sink)} mm) leaves no room for a drive, whose top stands ${M2_DRIVE_TOP_MM.toFixed(2)} mm above the board`;
      found.push({ path: ['m2', i, 'sink'], message });
    }
    const outline = outlineOf(spec);
    const axis = m2.towards.endsWith('x') ? 0 : 1;
    const along = axis === 0 ? outline.x : outline.y;
    const end = nominal(m2.at[axis]) + (m2.towards.startsWith('-') ? -1 : 1) * longestM2(m2);
    // The far end is screwed to the board, so it cannot stand past the edge by more than the connector's depth.
    if (end < along[0] - M2_EDGE_MM || end > along[1] + M2_EDGE_MM) {
      const message = `"M.2 sockets" ${m2.id}: a drive of ${longestM2(m2)} mm from ${nominal(m2.at[axis])} towards ${m2.towards} ends beyond the board, ${sizeText(spec)}`;
      found.push({ path: ['m2', i, 'lengths'], message });
    }
    return found;
  });
}

/** Half a connector's depth: places are given for the middle of the connector, lengths from its rear. */
const M2_EDGE_MM = 4;

function headerContradictions(spec: BoardSpec): Contradiction[] {
  return (spec.headers ?? []).flatMap((header, i) => {
    const faces = headerFaces(header);
    if (faces === 'up' || header.along === undefined || !faces.endsWith(header.along)) return [];
    const message = `"Runs along" ${header.along} and "Plug leaves towards" ${faces} are the same axis`;
    return [{ path: ['headers', i, 'along'], message }];
  });
}

function blockContradictions(spec: BoardSpec): Contradiction[] {
  const sinks = (spec.sinks ?? []).flatMap(({ id, from, to }, i) =>
    nominal(from[0]) === nominal(to[0]) || nominal(from[1]) === nominal(to[1])
      ? [{ path: ['sinks', i, 'to'], message: `"Regulator sinks" ${id}: "From" and "To" enclose no area` }]
      : [],
  );
  const blocks = (spec.rearConnectors ?? []).flatMap(({ from, to }, i) =>
    nominal(from) === nominal(to)
      ? [
          {
            path: ['rearConnectors', i, 'to'],
            message: '"From x" and "To x" of a rear connector block are equal',
          },
        ]
      : [],
  );
  return [...sinks, ...blocks];
}

function repeatedIds(spec: BoardSpec): Contradiction[] {
  const lists = ['m2', 'sinks', 'headers'] as const;
  return lists.flatMap((list) => {
    const ids = (spec[list] ?? []).map((entry) => entry.id);
    return ids.flatMap((id, i) =>
      id === undefined || ids.indexOf(id) === i
        ? []
        : [{ path: [list, i, 'id'], message: `"${id}" is used twice: names must differ` }],
    );
  });
}
