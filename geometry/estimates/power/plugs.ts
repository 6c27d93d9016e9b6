/** Plugs the parts want against plugs the supply offers, by name. */
import type { PartSpec } from '../../parts/part-spec';
import type { PlugType } from '../../parts/patterns';
import type { SupplySpec } from '../../parts/supply/spec';
import type { PlacedPart, Scene } from '../../plan/scene';

export interface WantedPlug {
  readonly type: PlugType;
  /** Label of the part that wants it. */
  readonly by: string;
  readonly part: string;
}

export interface PlugRow {
  readonly type: PlugType;
  readonly wanted: readonly WantedPlug[];
  readonly offered: number;
  /** Of another type that does instead: 6-pin from 8-pin, 4-pin from 8-pin. */
  readonly standsIn: number;
  readonly missing: number;
  /** 'Card wants a card 16-pin plug; the supply has none. ...' when something is missing. */
  readonly sentence?: string;
}

/** Plugs that split or leave contacts free so that they fit the smaller socket. Common practice, no source. */
const standIns: Readonly<Partial<Record<PlugType, PlugType>>> = {
  'card 6-pin': 'card 8-pin',
  'processor 4-pin': 'processor 8-pin',
};

export function plugsWantedBy(spec: PartSpec): readonly PlugType[] {
  if (spec.kind === 'card') return (spec.power ?? []).map((power) => power.type);
  if (spec.kind === 'drive') return spec.form === 'M.2' ? [] : ['drive power'];
  if (spec.kind !== 'board') return [];
  const processor = (spec.headers ?? []).flatMap(({ type }) =>
    type === 'processor 8-pin' || type === 'processor 4-pin' ? [type] : [],
  );
  return ['main 24-pin', ...processor];
}

export function plugRows(scene: Scene, supply: SupplySpec): readonly PlugRow[] {
  const wanted = scene.parts.flatMap((part) =>
    plugsWantedBy(part.spec).map((type): WantedPlug => ({ type, by: part.label, part: part.id })),
  );
  const offered = new Map<PlugType, number>();
  for (const { type, count } of supply.plugs) offered.set(type, (offered.get(type) ?? 0) + count);
  const left = new Map(offered);
  const types = [...new Set([...wanted.map(({ type }) => type), ...offered.keys()])];
  const own = types.map((type) => {
    const wants = wanted.filter((plug) => plug.type === type);
    const taken = Math.min(wants.length, left.get(type) ?? 0);
    left.set(type, (left.get(type) ?? 0) - taken);
    return { type, wanted: wants, offered: offered.get(type) ?? 0, short: wants.length - taken };
  });
  return own.map(({ short, ...row }): PlugRow => {
    const other = standIns[row.type];
    const standsIn = other ? Math.min(short, left.get(other) ?? 0) : 0;
    if (other) left.set(other, (left.get(other) ?? 0) - standsIn);
    const missing = short - standsIn;
    const spare8Pin = left.get('card 8-pin') ?? 0;
    return {
      ...row,
      standsIn,
      missing,
      ...(missing > 0
        ? { sentence: missingSentence(row.type, row.wanted, row.offered, missing, spare8Pin) }
        : {}),
    };
  });
}

function missingSentence(
  type: PlugType,
  wanted: readonly WantedPlug[],
  offered: number,
  missing: number,
  spare8Pin: number,
): string {
  const who = [...new Set(wanted.map(({ by }) => by))].join(' and ');
  const has = offered === 0 ? 'none' : `${offered}`;
  const said = `${who} want${who.includes(' and ') ? '' : 's'} ${wanted.length} ${type} plug${wanted.length > 1 ? 's' : ''}; the supply has ${has}: ${missing} missing.`;
  return type === 'card 16-pin' && spare8Pin > 0
    ? `${said} An adapter from card 8-pin plugs is a part to list: ${spare8Pin} are free, each good for 150 W.`
    : said;
}

export interface SharedLead {
  readonly part: string;
  readonly sentence: string;
}

/** Card plugs of one type that hang on fewer sockets than are used: two plugs on one lead. */
export function sharedLeads(scene: Scene, supply: PlacedPart): readonly SharedLead[] {
  if (supply.spec.kind !== 'supply') return [];
  const offers = supply.spec.plugs;
  return scene.parts.flatMap((part): SharedLead[] => {
    if (part.spec.kind !== 'card') return [];
    const used = (part.spec.power ?? []).filter(({ type }) => type === 'card 8-pin').length;
    const offer = offers.find(({ type }) => type === 'card 8-pin');
    if (!offer?.sockets || used < 2 || offer.sockets >= used) return [];
    const sentence =
      `${part.label} uses ${used} card 8-pin plugs that hang on ${offer.sockets} lead${offer.sockets > 1 ? 's' : ''}: ` +
      'one lead then carries up to 300 W. Ask for a lead for each plug.';
    return [{ part: part.id, sentence }];
  });
}
