/** Places a lead can be led through or tied to, for a person to pin it there: openings of the tray and clip points. */
import { nominal, nominalOr } from '../../../parts/dimension';
import type { Scene } from '../../../plan/scene';
import { boundsOfBoxes } from '../../../space/oriented-box';
import { transformPoint } from '../../../space/transform';
import type { Vector3 } from '../../../space/vector';

export interface LeadWaypoint {
  readonly name: string;
  /** In the world, mm. */
  readonly at: Vector3;
}

/** Shares of the inner height at which leads are tied behind the tray; common practice, no source. */
const CLIP_HEIGHTS: readonly (readonly [string, number])[] = [
  ['low', 0.25],
  ['half way up', 0.5],
  ['high', 0.75],
];
/** Rooms shallower than this behind the tray take no bundle, mm; our choice. */
const LEAST_CHANNEL_MM = 8;
/** In front of the board's front edge, and off the tray, mm; our choice. */
const BEFORE_BOARD_MM = 16;
const OFF_TRAY_MM = 14;

/** Empty without an enclosure. */
export function leadWaypoints(scene: Scene): readonly LeadWaypoint[] {
  const enclosure = scene.parts.find((part) => part.kind === 'enclosure');
  if (enclosure?.spec.kind !== 'enclosure') return [];
  const { tray, interior } = enclosure.spec;
  const thickness = nominalOr(tray?.thickness, 1);
  const openings = tray?.openings ?? [];
  const inTray = (from: readonly [number, number], to: readonly [number, number]): Vector3 => [
    (from[0] + to[0]) / 2,
    (from[1] + to[1]) / 2,
    -thickness / 2,
  ];
  const corner = (p: (typeof openings)[number]['from']): readonly [number, number] => [
    nominal(p[0]),
    nominal(p[1]),
  ];
  const local: LeadWaypoint[] = openings.map(({ from, to }, k) => ({
    name: openings.length > 1 ? `tray opening ${k + 1}` : 'tray opening',
    at: inTray(corner(from), corner(to)),
  }));
  if (tray?.cutout)
    local.push({ name: 'processor cut-out', at: inTray(corner(tray.cutout.from), corner(tray.cutout.to)) });
  const height = nominal(interior.height);
  const behind = nominal(interior.behindTray);
  const boardEdge = frontEdgeOfBoard(scene);
  const x = local[0]?.at[0] ?? boardEdge;
  for (const [words, share] of CLIP_HEIGHTS) {
    if (behind >= LEAST_CHANNEL_MM && x !== undefined)
      local.push({
        name: `clip behind the tray, ${words}`,
        at: [x, share * height, -thickness - behind / 2],
      });
    if (boardEdge !== undefined)
      local.push({
        name: `clip before the board, ${words}`,
        at: [boardEdge + BEFORE_BOARD_MM, share * height, OFF_TRAY_MM],
      });
  }
  return local.map(({ name, at }) => ({ name, at: transformPoint(enclosure.pose, at) }));
}

function frontEdgeOfBoard(scene: Scene): number | undefined {
  const boards = scene.boxes.flatMap(({ body, box }) => (body.element === 'circuit board' ? [box] : []));
  return boundsOfBoxes(boards)?.max[0];
}
