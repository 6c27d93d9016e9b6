/** The leads this build needs, and no others: from socket to socket, by features of the parts. */

import { headerNames } from '../../../parts/board/headers';
import type { Feature } from '../../../parts/body';
import type { CardSpec } from '../../../parts/card/spec';
import type { HeaderType, PlugType } from '../../../parts/patterns';
import { layOutPlugRows } from '../../../parts/supply/plug-rows';
import type { PlacedPart, Scene } from '../../../plan/scene';

export type LeadKind = PlugType | HeaderType;

/** One end of a lead. */
export interface LeadEnd {
  /** Index of the part in the scene. */
  readonly part: number;
  /** Feature whose socket the plug goes into; absent where the lead is fixed (fan, front of the enclosure). */
  readonly feature?: string;
}

export interface NeededLead {
  /** Stable: 'main 24-pin', 'card 16-pin card 1', 'fan fan-2'. */
  readonly id: string;
  readonly kind: LeadKind;
  /** 'the 24-pin lead', as it stands in a sentence. */
  readonly name: string;
  readonly from: LeadEnd;
  readonly to: LeadEnd;
}

/** Headers that a front panel is taken to have leads for, when the board has them; common practice. */
const FRONT_HEADERS: readonly HeaderType[] = ['front panel', 'USB 3 20-pin', 'front audio'];

const LEAD_NAMES: Readonly<Partial<Record<LeadKind, string>>> = {
  'main 24-pin': 'the 24-pin lead',
  'processor 8-pin': 'the processor lead',
  'processor 4-pin': 'the 4-pin processor lead',
  'drive power': 'the drive’s power lead',
  'front panel': 'the front panel leads',
  'USB 3 20-pin': 'the front USB lead',
  'front audio': 'the front audio lead',
};

export function neededLeads(scene: Scene): readonly NeededLead[] {
  const board = scene.parts.findIndex((part) => part.kind === 'board');
  const supply = scene.parts.findIndex((part) => part.kind === 'supply');
  const enclosure = scene.parts.findIndex((part) => part.kind === 'enclosure');
  const leads: NeededLead[] = [];
  if (supply >= 0) {
    if (board >= 0) leads.push(...boardPower(scene, board, supply));
    scene.parts.forEach((part, index) => {
      leads.push(...cardPower(scene, part, index, supply), ...drivePower(scene, part, index, supply));
    });
  }
  if (board >= 0) {
    leads.push(...driveData(scene, board), ...fanLeads(scene, board));
    if (enclosure >= 0) leads.push(...frontLeads(scene, board, enclosure));
  }
  return leads;
}

function headersOfType(scene: Scene, board: number, types: readonly HeaderType[]) {
  const spec = scene.parts[board]?.spec;
  if (spec?.kind !== 'board') return [];
  const headers = spec.headers ?? [];
  const names = headerNames(headers);
  return headers.flatMap((header, k) =>
    types.includes(header.type)
      ? [{ type: header.type, name: names[k] ?? header.type, feature: `header:${names[k] ?? ''}` }]
      : [],
  );
}

/** The feature of a supply that feeds plugs of a type: its row of sockets, or the bundle of fixed leads. */
function supplyFeature(scene: Scene, supply: number, type: PlugType): string | undefined {
  const part = scene.parts[supply];
  if (part?.spec.kind !== 'supply' || !part.spec.modular) return undefined;
  const row = layOutPlugRows(part.spec).findIndex((candidate) => candidate.types.includes(type));
  return row < 0 ? undefined : `modular row ${row + 1}`;
}

function fromSupply(scene: Scene, supply: number, type: PlugType): LeadEnd {
  // A 16-pin lead may start from the sockets of the 8-pin leads it is made of.
  const feature =
    supplyFeature(scene, supply, type) ??
    (type === 'card 16-pin' || type === 'card 6-pin'
      ? supplyFeature(scene, supply, 'card 8-pin')
      : undefined);
  return feature === undefined ? { part: supply } : { part: supply, feature };
}

function boardPower(scene: Scene, board: number, supply: number): NeededLead[] {
  return headersOfType(scene, board, ['main 24-pin', 'processor 8-pin', 'processor 4-pin']).map((header) => ({
    id: header.name,
    kind: header.type,
    name: LEAD_NAMES[header.type] ?? `the ${header.name} lead`,
    from: fromSupply(scene, supply, header.type as PlugType),
    to: { part: board, feature: header.feature },
  }));
}

function cardPower(scene: Scene, part: PlacedPart, index: number, supply: number): NeededLead[] {
  if (part.spec.kind !== 'card') return [];
  const sockets = powerFeatures(part);
  const power: NonNullable<CardSpec['power']> = part.spec.power ?? [];
  return power.flatMap(({ type }, k) => {
    const feature = sockets[k];
    if (!feature) return [];
    const name = power.length > 1 ? `the card’s power lead ${k + 1}` : 'the card’s power lead';
    return [
      {
        id: `${type} ${part.id} ${k + 1}`,
        kind: type,
        name,
        from: fromSupply(scene, supply, type),
        to: { part: index, feature: feature.id },
      },
    ];
  });
}

function powerFeatures(part: PlacedPart): readonly Feature[] {
  return part.model.features.filter((feature) => feature.kind === 'power socket');
}

function drivePower(scene: Scene, part: PlacedPart, index: number, supply: number): NeededLead[] {
  if (part.spec.kind !== 'drive' || part.spec.form === 'M.2') return [];
  const [feature] = powerFeatures(part);
  if (!feature) return [];
  return [
    {
      id: `drive power ${part.id}`,
      kind: 'drive power',
      name: `the power lead of ${part.label.toLowerCase()}`,
      from: fromSupply(scene, supply, 'drive power'),
      to: { part: index, feature: feature.id },
    },
  ];
}

function driveData(scene: Scene, board: number): NeededLead[] {
  const headers = headersOfType(scene, board, ['SATA angled', 'SATA upright']);
  const drives = scene.parts.flatMap((part, index) =>
    part.spec.kind === 'drive' && part.spec.form !== 'M.2' ? [{ part, index }] : [],
  );
  return drives.flatMap(({ part, index }, k) => {
    const header = headers[k];
    const [feature] = powerFeatures(part);
    if (!header || !feature) return [];
    return [
      {
        id: `data ${part.id}`,
        kind: header.type,
        name: `the data lead of ${part.label.toLowerCase()}`,
        from: { part: index, feature: feature.id },
        to: { part: board, feature: header.feature },
      },
    ];
  });
}

/** Fan leads are fixed to their fan; the cooler’s goes to the header that says processor, the others to what is left. */
function fanLeads(scene: Scene, board: number): NeededLead[] {
  const headers = headersOfType(scene, board, ['fan 4-pin']);
  const own = headers.find((header) => header.name.includes('processor')) ?? headers[0];
  const leads: NeededLead[] = [];
  const cooler = scene.parts.findIndex((part) => part.kind === 'cooler');
  if (own && cooler >= 0)
    leads.push({
      id: 'fan cooler',
      kind: 'fan 4-pin',
      name: 'the cooler’s fan lead',
      from: { part: cooler },
      to: { part: board, feature: own.feature },
    });
  return [
    ...leads,
    ...caseFanLeads(
      scene,
      board,
      headers.filter((header) => header !== own),
    ),
  ];
}

/** A fan takes the header named after its place ('rear fan'), then what is left in order; the rest share a splitter. */
function caseFanLeads(
  scene: Scene,
  board: number,
  headers: readonly { name: string; feature: string }[],
): NeededLead[] {
  const fans = scene.parts.flatMap((part, index) => (part.kind === 'fan' ? [{ part, index }] : []));
  const placeOf = (part: PlacedPart): string => part.seat?.mount.replace(/^fan /, '') ?? '';
  const free = [...headers];
  const given = new Map<number, string>();
  const give = (index: number, at: number): void => {
    const [header] = at < 0 ? [] : free.splice(at, 1);
    if (header) given.set(index, header.feature);
  };
  for (const { part, index } of fans) {
    const [place = ''] = placeOf(part).split(' ');
    if (place !== '')
      give(
        index,
        free.findIndex((header) => header.name.startsWith(place)),
      );
  }
  for (const { index } of fans) if (!given.has(index)) give(index, free.length > 0 ? 0 : -1);
  return fans.flatMap(({ part, index }) => {
    const feature = given.get(index);
    if (feature === undefined) return [];
    const place = placeOf(part);
    const name = `the lead of ${place ? `the ${place} fan` : part.label.toLowerCase()}`;
    return [
      {
        id: `fan ${part.id}`,
        kind: 'fan 4-pin' as const,
        name,
        from: { part: index },
        to: { part: board, feature },
      },
    ];
  });
}

function frontLeads(scene: Scene, board: number, enclosure: number): NeededLead[] {
  return headersOfType(scene, board, FRONT_HEADERS).map((header) => ({
    id: header.name,
    kind: header.type,
    name: LEAD_NAMES[header.type] ?? `the ${header.name} lead`,
    from: { part: enclosure },
    to: { part: board, feature: header.feature },
  }));
}
