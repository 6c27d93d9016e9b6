/** The mounting tree: what is mounted on what, in the order of the plan. */
import type { PlacedPart, Scene } from '../../../geometry';

export interface MountingNode {
  readonly part: PlacedPart;
  readonly guests: readonly MountingNode[];
}

/** Parts that stand free, or whose mount is missing, are roots of their own. */
export function mountingTree(scene: Scene): readonly MountingNode[] {
  const guestsOf = new Map<string, PlacedPart[]>();
  const roots: PlacedPart[] = [];
  for (const part of scene.parts) {
    const carrier = part.seat?.on;
    if (carrier === undefined) roots.push(part);
    else guestsOf.set(carrier, [...(guestsOf.get(carrier) ?? []), part]);
  }
  const nodeOf = (part: PlacedPart): MountingNode => ({
    part,
    guests: (guestsOf.get(part.id) ?? []).map(nodeOf),
  });
  return roots.map(nodeOf);
}
