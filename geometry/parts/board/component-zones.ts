/** Published component-height zones that apply to a board, clipped to it; board frame (`fields.ts`), mm. */
import {
  type ComponentHeightZone,
  componentHeightZones,
  secondarySideHeights,
  underCardZones,
} from '../../standards/component-height-zones';
import type { BodyBox } from '../body';
import { type Extent, reservedBox, type Span } from '../body-box';
import { hasVolume } from '../extent-overlap';
import { keptPieces } from '../kept-pieces';
import type { BoardPiece } from './board-piece';
import type { BoardSpec } from './fields';
import { type BoardOutline, outlineOf } from './outline';

/**
 * Zones for a conformance check, never an envelope. A box of a `board component` zone is what parts on the board may
 * fill: rising above it is the fault. A `chassis clearance` box must stay free of the enclosure. Names say the area,
 * whose limit it is and the height: 'zone B, board component, 15.24 mm'.
 */
export function componentZonesOf({ slots, form, width, depth, thickness }: BoardSpec): BoardPiece {
  return keptZones(slots, form, width, depth, thickness);
}

type Outlined = Pick<BoardSpec, 'form' | 'width' | 'depth' | 'thickness'>;

const keptZones = keptPieces(
  (
    slots: BoardSpec['slots'],
    form: Outlined['form'],
    width: Outlined['width'],
    depth: Outlined['depth'],
    thickness: Outlined['thickness'],
  ) => zonesOf(slots, { form, width, depth, thickness }),
);

function zonesOf(slots: BoardSpec['slots'], spec: Outlined): BoardPiece {
  const outline = outlineOf(spec);
  const underCards = slots.flatMap(({ position }) =>
    underCardZones(position, outline.y[1]).map((zone) => ({
      ...zone,
      area: `slot ${position} ${zone.area}`,
    })),
  );
  const zones = [...componentHeightZones(spec.form), ...underCards].flatMap((zone) => {
    const box = zoneBox(zone, outline);
    return box === undefined ? [] : [box];
  });
  return { boxes: [...zones, undersideZone(outline)] };
}

function zoneBox(zone: ComponentHeightZone, outline: BoardOutline): BodyBox | undefined {
  const { x, y, z } = zone.box.value;
  const extent: Extent =
    zone.limits === 'board component' ? { x: clip(x, outline.x), y: clip(y, outline.y), z } : { x, y, z };
  if (!hasVolume(extent)) return undefined;
  const height = (z[1] - z[0]).toFixed(2);
  return reservedBox(`zone ${zone.area}, ${zone.limits}, ${height} mm`, 'zone', 'component zone', extent);
}

/** What the tray leaves free under the board, but for the standoffs in their contact squares. */
function undersideZone(outline: BoardOutline): BodyBox {
  const clear = secondarySideHeights.chassisClearSpace.value;
  const extent: Extent = { x: outline.x, y: outline.y, z: [-outline.thickness - clear, -outline.thickness] };
  const name = `zone underside, chassis clearance, ${clear.toFixed(2)} mm`;
  return reservedBox(name, 'zone', 'component zone', extent);
}

function clip(span: Span, to: Span): Span {
  return [Math.max(span[0], to[0]), Math.min(span[1], to[1])];
}
