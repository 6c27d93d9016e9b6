/** Figures by which the shelf can be sorted and narrowed down, whatever the kind of part. */
import { boundsOfBoxes, modelOf, nominal, type PartSpec } from '../../geometry';
import type { Remarks } from '../store/stored-records';

const longest = new WeakMap<PartSpec, number>();

/**
 * The longest edge of the part with all that stands out of it, mm; of an enclosure, that of the room inside. 0 when its
 * sheet contradicts itself.
 */
export function longestEdge(spec: PartSpec): number {
  const known = longest.get(spec);
  if (known !== undefined) return known;
  const edge = edgeOnSheet(spec) ?? longestOfBody(spec);
  longest.set(spec, edge);
  return edge;
}

/** Where the sheet says it, no body need be built. */
function edgeOnSheet(spec: PartSpec): number | undefined {
  switch (spec.kind) {
    case 'card':
      return nominal(spec.length);
    case 'fan':
      return spec.size;
    case 'enclosure': {
      const { length, height, trayToSide, behindTray } = spec.interior;
      return Math.max(nominal(length), nominal(height), nominal(trayToSide) + nominal(behindTray));
    }
    default:
      return undefined;
  }
}

function longestOfBody(spec: PartSpec): number {
  try {
    // A copy, so that the body is forgotten again: tens of thousands of them would fill the memory.
    const solid = modelOf({ ...spec }).boxes.filter(({ role }) => role === 'solid');
    const bounds = boundsOfBoxes(solid.map(({ box }) => box));
    return bounds ? Math.max(...bounds.max.map((value, axis) => value - (bounds.min[axis] ?? 0))) : 0;
  } catch {
    return 0;
  }
}

/** As weighed by the person, else as the sheet says, g. */
export function massOf(spec: PartSpec, remarks: Remarks | undefined): number | undefined {
  return remarks?.mass ?? (spec.mass === undefined ? undefined : nominal(spec.mass));
}
