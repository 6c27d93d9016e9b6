/** Names of the parts of a plan as a person reads them. */
import type { PartKind } from '../parts/part-spec';
import type { Plan } from './plan-schema';

const KIND_NAMES: Readonly<Record<PartKind, string>> = {
  enclosure: 'Enclosure',
  board: 'Board',
  processor: 'Processor',
  cooler: 'Cooler',
  memory: 'Memory',
  drive: 'Drive',
  card: 'Card',
  supply: 'Supply',
  fan: 'Fan',
  radiator: 'Radiator',
  adapter: 'Adapter',
};

export function kindName(kind: PartKind): string {
  return KIND_NAMES[kind];
}

/** 'Card', or 'Memory 2' when the plan has several of the kind; numbered in the order of the plan. */
export function partLabels(plan: Plan): ReadonlyMap<string, string> {
  const entries = Object.entries(plan.parts);
  const totals = new Map<PartKind, number>();
  for (const [, part] of entries) totals.set(part.spec.kind, (totals.get(part.spec.kind) ?? 0) + 1);
  const counted = new Map<PartKind, number>();
  return new Map(
    entries.map(([id, part]) => {
      const kind = part.spec.kind;
      const number = (counted.get(kind) ?? 0) + 1;
      counted.set(kind, number);
      return [id, totals.get(kind) === 1 ? kindName(kind) : `${kindName(kind)} ${number}`];
    }),
  );
}
