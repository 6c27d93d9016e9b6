/** Routes every lead this build needs through free space, and compares what it takes with what there is. */
import type { Scene } from '../../../plan/scene';
import { type Bounds, boundsOfBoxes, type OrientedBox } from '../../../space/oriented-box';
import { PackedBoxes } from '../../../space/packed-boxes';
import { separateBoxes } from '../../../space/separation';
import { distance, type Vector3 } from '../../../space/vector';
import { breathingSpace } from '../../../standards/assembly-practice';
import {
  type LeadBuildName,
  leadBuilds,
  leadSlack,
  lengthFamily,
  mixedBundleDiameter,
  otherLeadLengths,
  supplyLeadLengths,
} from '../../../standards/supply-leads';
import { type LeadKind, type NeededLead, neededLeads } from '../machine/needed-leads';
import { barOf, frameAlong } from '../reach/use-volume';
import { roundedLength, type TightCorner } from './bend-lengths';
import { leadPoint } from './lead-ends';
import { LEAD_CELL_MM, leadGrid, weighCells } from './lead-grid';
import { type FreeRoom, routeThrough } from './lead-line';
import { heading, leadScratch } from './lead-search';

export interface RoutedLead {
  readonly id: string;
  readonly kind: LeadKind;
  readonly name: string;
  /** Ids of the parts at its ends. */
  readonly from: string;
  readonly to: string;
  /** Corners of its centre line in the world, ends included; empty when no way was found. */
  readonly points: readonly Vector3[];
  readonly diameter: number;
  readonly bendRadius: number;
  /** Along the rounded line and with slack, mm. */
  readonly routed: number;
  readonly needed: number;
  readonly available: number;
  /** Available less needed; negative is too short. */
  readonly spare: number;
  /** What it would need without its pins, when it has some. */
  readonly unpinned?: number;
  /** Points a person has pinned, in order. */
  readonly pins: readonly Vector3[];
  /** Whether the available length was measured, not taken from the usual ones. */
  readonly measured: boolean;
  readonly tight: readonly TightCorner[];
  /** Ids of parts whose fan it runs across or too near. */
  readonly crossesFans: readonly string[];
  readonly behindTray: boolean;
  /** True where an end had to be assumed. */
  readonly assumedEnd: boolean;
  readonly sentence: string;
}

/** How full the room behind the tray is. */
export interface ChannelFill {
  readonly leads: readonly string[];
  /** Diameter of all its leads in one bundle, and the room from tray to back panel, mm. */
  readonly bundle: number;
  readonly room: number;
  readonly sentence: string;
}

export interface LeadPlan {
  readonly leads: readonly RoutedLead[];
  readonly channel?: ChannelFill;
}

export interface LeadOptions {
  /** Points a person has pinned, by lead id, in order from supply or fan to socket. */
  readonly pins?: Readonly<Record<string, readonly Vector3[]>>;
  /** Measured lengths by lead id, mm; they prevail. */
  readonly lengths?: Readonly<Record<string, number>>;
  readonly onProgress?: (share: number) => void;
}

/** Cells behind the tray are liked, cells before fans are not. */
const CHANNEL_WEIGHT = 0.85;
const FAN_WEIGHT = 2.5;

/** Deterministic; throws what `onProgress` throws, to be stopped. */
export function routeLeads(scene: Scene, options: LeadOptions = {}): LeadPlan {
  const room = roomOf(scene);
  if (!room) return { leads: [] };
  const needed = neededLeads(scene);
  const leads = needed.map((lead, k) => {
    options.onProgress?.(k / needed.length);
    return routeOne(scene, lead, room, options);
  });
  const channel = channelOf(scene, leads);
  return channel ? { leads, channel } : { leads };
}

interface Room extends FreeRoom {
  readonly fans: readonly { readonly part: string; readonly box: OrientedBox }[];
  /** World z (or other axis) range behind the tray, as a box; absent without one. */
  readonly behind?: Bounds;
}

function roomOf(scene: Scene): Room | undefined {
  const enclosure = scene.parts.find((part) => part.kind === 'enclosure');
  const solidBoxes = scene.boxes.flatMap(({ body, box }) => (body.role === 'solid' ? [box] : []));
  const bounds = boundsOfBoxes(
    enclosure
      ? enclosure.model.boxes.flatMap((body, k) =>
          body.role === 'solid' && !['foot', 'handle'].includes(body.element)
            ? (scene.boxes[enclosure.firstBox + k]?.box ?? [])
            : [],
        )
      : solidBoxes,
  );
  if (!bounds) return undefined;
  // One place more than there are boxes: the bars that sight lines are tested with.
  const solids = new PackedBoxes(solidBoxes.length + 1);
  for (const [k, box] of solidBoxes.entries()) solids.setBox(k, box);
  const grid = leadGrid(bounds, PackedBoxes.from(solidBoxes));
  const fans = scene.boxes.flatMap(({ part, body, box }) =>
    body.role === 'breathing space' && body.element === 'fan'
      ? [{ part: scene.parts[part]?.id ?? '', box }]
      : [],
  );
  for (const fan of fans) weighCells(grid, fan.box, FAN_WEIGHT);
  const behind = behindTray(scene, bounds);
  if (behind) {
    const centre: Vector3 = [0, 1, 2].map(
      (k) => ((behind.min[k] ?? 0) + (behind.max[k] ?? 0)) / 2,
    ) as unknown as Vector3;
    const half = [0, 1, 2].map(
      (k) => ((behind.max[k] ?? 0) - (behind.min[k] ?? 0)) / 2,
    ) as unknown as Vector3;
    weighCells(grid, { centre, half, rotation: [1, 0, 0, 0, 1, 0, 0, 0, 1] }, CHANNEL_WEIGHT);
  }
  return { grid, scratch: leadScratch(grid), solids, fans, ...(behind ? { behind } : {}) };
}

/** The range between tray and back panel; undefined where the board stands on a wall. */
function behindTray(scene: Scene, bounds: Bounds): Bounds | undefined {
  const trays = scene.boxes.flatMap(({ body, box }) =>
    body.element === 'tray' && body.role === 'solid' ? [box] : [],
  );
  const tray = boundsOfBoxes(trays);
  if (!tray) return undefined;
  const depth = tray.min[2] - bounds.min[2];
  return depth > 3 ? { min: bounds.min, max: [bounds.max[0], bounds.max[1], tray.min[2]] } : undefined;
}

function buildOf(kind: LeadKind): LeadBuildName {
  switch (kind) {
    case 'SATA angled':
    case 'SATA upright':
      return 'data';
    case 'USB 3 20-pin':
    case 'USB C internal':
      return 'front USB';
    case 'front audio':
    case 'USB 2 10-pin':
    case 'front panel':
    case 'lighting 3-pin':
    case 'clear settings':
      return 'front panel';
    default:
      return kind;
  }
}

function lengthOf(scene: Scene, lead: NeededLead): number {
  const from = scene.parts[lead.from.part];
  if (from?.spec.kind === 'supply') {
    const table = supplyLeadLengths[lengthFamily(from.spec.form)];
    if (lead.kind === 'main 24-pin') return table['main 24-pin'].value;
    if (lead.kind.startsWith('processor')) return table.processor.value;
    return lead.kind.startsWith('card') ? table.card.value : table['drive power'].value;
  }
  if (from?.kind === 'cooler') return otherLeadLengths.coolerFan.value;
  if (from?.kind === 'fan') return otherLeadLengths.fan.value;
  return from?.kind === 'drive' ? otherLeadLengths.data.value : otherLeadLengths.front.value;
}

interface Line {
  readonly points: readonly Vector3[];
  readonly routed: number;
  readonly needed: number;
  readonly tight: readonly TightCorner[];
}

function lineOf(points: readonly Vector3[], bendRadius: number): Line {
  const { length: routed, tight } = roundedLength(points, bendRadius);
  const needed = routed > 0 ? routed * (1 + leadSlack.share) + leadSlack.fixed.value : 0;
  return { points, routed, needed, tight };
}

function routeOne(scene: Scene, lead: NeededLead, room: Room, options: LeadOptions): RoutedLead {
  const build = leadBuilds[buildOf(lead.kind)];
  const diameter = build.diameter.value;
  const bendRadius = diameter * build.bendFactor.value;
  const from = leadPoint(scene, lead.from, lead.to);
  const to = leadPoint(scene, lead.to, lead.from);
  const pins = options.pins?.[lead.id] ?? [];
  const available = options.lengths?.[lead.id] ?? lengthOf(scene, lead);
  const route = (through: readonly Vector3[], pressed?: number): Line => {
    if (!from || !to) return lineOf([], bendRadius);
    return lineOf(routeThrough(room, from, to, through, diameter, bendRadius, pressed), bendRadius);
  };
  const shortest = (through: readonly Vector3[]): Line => {
    const quick = route(through);
    // The quick search is seldom much too long; before a lead is called short the thorough one is asked as well.
    if (quick.needed <= available || quick.points.length === 0) return quick;
    const thorough = route(through, 1);
    return thorough.points.length > 0 && thorough.needed < quick.needed ? thorough : quick;
  };
  const { points, routed, needed, tight } = shortest(pins);
  const unpinned = pins.length > 0 ? shortest([]).needed : undefined;
  const crossesFans = fansCrossed(
    room,
    points,
    diameter,
    [lead.from, lead.to].map((end) => scene.parts[end.part]?.id ?? ''),
  );
  const base = {
    id: lead.id,
    kind: lead.kind,
    name: lead.name,
    from: scene.parts[lead.from.part]?.id ?? '',
    to: scene.parts[lead.to.part]?.id ?? '',
    points,
    diameter,
    bendRadius,
    routed,
    needed,
    available,
    spare: available - needed,
    tight,
    ...(unpinned === undefined ? {} : { unpinned }),
    measured: options.lengths?.[lead.id] !== undefined,
    pins,
    crossesFans,
    behindTray: room.behind !== undefined && points.some((p) => p[2] < (room.behind?.max[2] ?? -Infinity)),
    assumedEnd: from?.assumed === true || to?.assumed === true,
  };
  return { ...base, sentence: sayLead(base) };
}

/** Fans before whose blades the lead passes: through the air they draw, nearer than builders like. */
function fansCrossed(
  room: Room,
  points: readonly Vector3[],
  diameter: number,
  ends: readonly string[],
): readonly string[] {
  const crossed = new Set<string>();
  for (let k = 1; k < points.length; k++) {
    const [a, b] = [points[k - 1], points[k]];
    const along = a && b ? heading(a, b) : undefined;
    if (!a || !b || !along) continue;
    const bar = barOf(frameAlong(a, along), diameter, 0, distance(a, b));
    for (const fan of room.fans) {
      if (ends.includes(fan.part) || crossed.has(fan.part)) continue;
      if (separateBoxes(bar, fan.box).distance < -OVERLAP_COUNTS_MM) crossed.add(fan.part);
    }
  }
  return [...crossed];
}

/** A lead that only brushes the edge of a fan's air is not told, mm. */
const OVERLAP_COUNTS_MM = Math.min(1, breathingSpace.leadToFanFace.value);

function channelOf(scene: Scene, leads: readonly RoutedLead[]): ChannelFill | undefined {
  const behind = leads.filter((lead) => lead.behindTray);
  const enclosure = scene.parts.find((part) => part.kind === 'enclosure');
  if (behind.length === 0 || enclosure?.spec.kind !== 'enclosure') return undefined;
  const { behindTray: stated } = enclosure.spec.interior;
  const room = typeof stated === 'number' ? stated : stated.value;
  const bundle = mixedBundleDiameter(behind.map((lead) => lead.diameter));
  const thickest = Math.max(...behind.map((lead) => lead.diameter));
  const sentence =
    thickest > room
      ? `The thickest lead (${thickest.toFixed(0)} mm) does not fit behind the tray (${room.toFixed(0)} mm).`
      : bundle > room
        ? `In one bundle the ${behind.length} leads behind the tray are ${bundle.toFixed(0)} mm thick, more than the ${room.toFixed(0)} mm there: lay them side by side or the panel bulges.`
        : `The ${behind.length} leads behind the tray fit in one bundle of ${bundle.toFixed(0)} mm; there are ${room.toFixed(0)} mm.`;
  return { leads: behind.map((lead) => lead.id), bundle, room, sentence };
}

function sayLead(lead: Omit<RoutedLead, 'sentence'>): string {
  const name = lead.name.charAt(0).toUpperCase() + lead.name.slice(1);
  if (lead.points.length === 0) return `${name}: no way was found on a grid of ${LEAD_CELL_MM} mm.`;
  const need = `needs ${lead.needed.toFixed(0)} mm with slack, has ${lead.available.toFixed(0)} mm`;
  const short = lead.spare < 0 ? `, ${(-lead.spare).toFixed(0)} mm too short` : '';
  const fans = lead.crossesFans.length > 0 ? '; it crosses the air of a fan' : '';
  const tight =
    lead.tight.length > 0
      ? `; its bend is tighter than ${lead.bendRadius.toFixed(0)} mm ${lead.tight.length === 1 ? 'once' : `${lead.tight.length} times`}`
      : '';
  return `${name} ${need}${short}${fans}${tight}.`;
}
