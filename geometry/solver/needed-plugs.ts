/** Which plugs a plan certainly uses, from the parts that want power. */
import type { Feature } from '../parts/body';
import type { PartSpec } from '../parts/part-spec';
import type { PlugType } from '../parts/patterns';
import { layOutPlugRows } from '../parts/supply/plug-rows';
import type { ExaminedPart } from './examined-part';

export type NeededPlugs = ReadonlySet<PlugType>;

export function neededPlugs(parts: readonly ExaminedPart[]): NeededPlugs {
  return new Set(parts.flatMap((part) => plugsWantedBy(part.placed.spec)));
}

function plugsWantedBy(spec: PartSpec): readonly PlugType[] {
  if (spec.kind === 'card') return (spec.power ?? []).map((power) => power.type);
  if (spec.kind === 'drive') return spec.form === 'M.2' ? [] : ['drive power'];
  if (spec.kind !== 'board') return [];
  const processor = (spec.headers ?? []).flatMap(({ type }) =>
    type === 'processor 8-pin' || type === 'processor 4-pin' ? [type] : [],
  );
  return ['main 24-pin', ...processor];
}

/** Whether one of the features is certainly used: required, and for a row of modular sockets wanted by the plan. */
export function isUsed(needed: NeededPlugs, owner: ExaminedPart, features: readonly Feature[]): boolean {
  const { spec } = owner.placed;
  const rows = spec.kind === 'supply' && spec.modular ? layOutPlugRows(spec) : [];
  return features.some((feature) => {
    const row = rows.find((_, index) => feature.id === `modular row ${index + 1}`);
    return row ? row.types.some((type) => needed.has(type)) : feature.required;
  });
}
