/** Rows of modular sockets on the plug face of a supply, mm. */
import { modularSockets } from '../../standards/device-plugs';
import { fourPointTwoPitchLength } from '../../standards/power-connectors';
import { supplyForms } from '../../standards/supply-forms';
import type { Contradiction } from '../contradiction';
import { type Dimension, nominal, nominalOr } from '../dimension';
import type { PlugType, SupplyForm } from '../patterns';
import { powerPlugShape } from '../power-plug-shape';

export interface OfferedPlugs {
  readonly type: PlugType;
  readonly count: number;
  readonly sockets?: number | undefined;
}

/** The dimensions a plug face is made of; a supply spec has them all. */
export interface SupplyDimensions {
  readonly form: SupplyForm;
  readonly width?: Dimension | undefined;
  readonly height?: Dimension | undefined;
  readonly depth?: Dimension | undefined;
  readonly modular: boolean;
  readonly plugs: readonly OfferedPlugs[];
}

export interface PlugRow {
  readonly types: readonly PlugType[];
  /** Length of the row of plugs along the face. */
  readonly length: number;
}

/** Leads with several plugs on one lead take one socket for this many of them. */
const plugsOnOneLead: Readonly<Partial<Record<PlugType, number>>> = {
  'drive power': 4,
  'peripheral 4-pin': 4,
};

/** Contact pairs of the main lead, which some supplies split over several sockets. */
const mainLeadPairs = 12;

export function supplySize(supply: SupplyDimensions): { width: number; height: number; depth: number } {
  const published = supplyForms[supply.form];
  return {
    width: nominalOr(supply.width, published.width.value),
    height: nominalOr(supply.height, published.height.value),
    depth: nominalOr(supply.depth, published.depth.value),
  };
}

/** Depth of a row: a plug over its latch, and the gap to the next row. */
export const rowPitch = powerPlugShape('processor 8-pin').acrossOverLatch + modularSockets.gap.value;

function socketLengths({ type, count, sockets }: OfferedPlugs): readonly number[] {
  const number = sockets ?? Math.ceil(count / (plugsOnOneLead[type] ?? 1));
  const split = type === 'main 24-pin' && number > 1;
  const length = split
    ? fourPointTwoPitchLength(Math.ceil(mainLeadPairs / number))
    : powerPlugShape(type).along;
  return Array.from({ length: number }, () => length);
}

/** Sockets set side by side in rows, in the order of the spec, a new row when the face is full. */
export function layOutPlugRows(supply: SupplyDimensions): readonly PlugRow[] {
  const room = supplySize(supply).width - 2 * modularSockets.margin.value;
  const rows: { types: PlugType[]; length: number }[] = [];
  for (const plugs of supply.plugs) {
    for (const length of socketLengths(plugs)) {
      const row = rows.at(-1);
      const longer =
        row === undefined ? Number.POSITIVE_INFINITY : row.length + modularSockets.gap.value + length;
      if (row === undefined || longer > room) rows.push({ types: [plugs.type], length });
      else {
        row.length = longer;
        if (!row.types.includes(plugs.type)) row.types.push(plugs.type);
      }
    }
  }
  return rows;
}

/** What in the numbers of a supply cannot be true together. */
export function supplyContradictions(
  supply: SupplyDimensions & {
    readonly fan?: { readonly side: string; readonly size: Dimension } | undefined;
  },
): readonly Contradiction[] {
  const found: Contradiction[] = [];
  const { width, height, depth } = supplySize(supply);
  if (supply.fan) {
    const size = nominal(supply.fan.size);
    const side = supply.fan.side.endsWith('y') ? width : height;
    const title = supply.fan.side.endsWith('y') ? 'Width' : 'Height';
    if (size > side || size > depth) {
      const [name, room] = size > side ? [title, side] : ['Depth', depth];
      const message = `fan "Diameter" (${size} mm) is more than "${name}" (${room} mm)`;
      found.push({ path: ['fan', 'size'], message });
    }
  }
  if (supply.modular) {
    const rows = layOutPlugRows(supply);
    const needed = rows.length * rowPitch;
    if (needed > height) {
      const message = `the modular sockets of "Plugs it offers" need ${rows.length} rows, ${needed.toFixed(1)} mm, more than "Height" (${height} mm)`;
      found.push({ path: ['plugs'], message });
    }
  }
  return found;
}
