/** Things that put another part, another place, or nothing where a part is. */

import type { PartKind, PartSpec } from '../../parts/part-spec';
import { dimensionAt, dimensionsOf } from '../../parts/stated-dimensions/stated-dimensions';
import { movePart, removePart, replacePart } from '../../plan/edit-plan';
import { findMounts } from '../../plan/find-mounts';
import { isSeated, type Plan } from '../../plan/plan-schema';
import type { PlacedPart, Scene } from '../../plan/scene';
import { sizesOf } from '../limits/key-dimensions';
import { lowerFirst } from '../part-names';
import type { Proposal, ShelfPart } from './change';

/** Kinds that carry others or have only one place in the machine. */
const STAYS: ReadonlySet<PartKind> = new Set<PartKind>(['enclosure', 'board', 'processor', 'adapter']);

/** Every free mount that takes the part. */
export function otherMounts(scene: Scene, plan: Plan, part: PlacedPart): readonly Proposal[] {
  const entry = plan.parts[part.id];
  if (!entry || STAYS.has(part.kind)) return [];
  const seen = new Set([`${part.seat?.on}/${part.seat?.mount}`]);
  return findMounts(scene, entry.spec, part.id, entry.adjust).flatMap(({ placement, label, takenBy }) => {
    const key = `${placement.on}/${placement.mount}`;
    if (takenBy !== undefined || seen.has(key)) return [];
    seen.add(key);
    const proposal: Proposal = {
      kind: 'mount elsewhere',
      part: part.id,
      title: `Move ${part.label} to ${lowerFirst(label)}`,
      plan: movePart(plan, part.id, placement),
      size: isSeated(entry.placement) && entry.placement.on === placement.on ? 0 : 1,
    };
    return [proposal];
  });
}

/** The machine runs without a fan. */
export function leavingOut(plan: Plan, part: PlacedPart): readonly Proposal[] {
  if (part.kind !== 'fan') return [];
  return [
    {
      kind: 'leave out',
      part: part.id,
      title: `Leave out ${part.label}`,
      plan: removePart(plan, part.id).plan,
      size: 0,
    },
  ];
}

/** Kinds that carry the machine. */
const CARRIERS: ReadonlySet<PartKind> = new Set<PartKind>(['enclosure', 'board']);

export function isCarrier(part: PlacedPart): boolean {
  return CARRIERS.has(part.kind);
}

/**
 * Parts of the same kind from the shelf that keep their seat and all guests, the most alike in size first. Each is put
 * in place only when it is asked for.
 */
export function* swaps(plan: Plan, part: PlacedPart, shelf: readonly ShelfPart[]): Generator<Proposal> {
  const kind = isCarrier(part) ? 'swap carrier' : 'swap';
  const alike = shelf
    .filter(({ id, spec }) => spec.kind === part.kind && id !== plan.parts[part.id]?.shelf)
    .map(({ id, spec }) => ({ id, spec, size: unlikeness(part.spec, spec) }))
    .sort((a, b) => a.size - b.size);
  for (const { id, spec, size } of alike) {
    const { plan: next, loosened } = replacePart(plan, part.id, spec, id);
    if (loosened.length > 0) continue;
    const title = `Swap ${part.label} for ${spec.maker} ${spec.model}`;
    yield { kind, part: part.id, title, plan: next, size };
  }
}

/** Sum of the differences of the sizes both have, mm. */
function unlikeness(a: PartSpec, b: PartSpec): number {
  const inB = new Set(dimensionsOf(b).map(({ path }) => path));
  return sizesOf(a)
    .filter((path) => inB.has(path))
    .reduce((sum, path) => sum + Math.abs(dimensionAt(a, path).nominal - dimensionAt(b, path).nominal), 0);
}
