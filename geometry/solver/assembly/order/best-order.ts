/**
 * The nicest order: dynamic programming over the sets that can be gone, one level of equal size after another. Exact as
 * long as a level is not cut down; beyond `width` sets a level only the best are kept, and the answer says so.
 */
import { bitOf, type UnitSet } from '../assembly-bodies';
import type { RememberedSystem } from './blocking-system';

/** Cost of taking `unit` out as the next one when `removed` are gone already: what builders would rather not do. */
export type StepCost = (unit: number, removed: UnitSet) => number;

export interface BestOrder {
  /** Removal order, first out first; all units that can go. */
  readonly removal: readonly number[];
  readonly cost: number;
  /** Whether no cheaper order exists. */
  readonly exact: boolean;
}

interface State {
  readonly removed: UnitSet;
  readonly cost: number;
  readonly unit: number;
  readonly from: State | undefined;
}

/** Best removal order of everything that can go at all; ties by unit number, so that the answer never wavers. */
export function bestOrder(
  system: RememberedSystem,
  cost: StepCost,
  width = 200,
  onStep: (step: number, steps: number) => void = () => undefined,
): BestOrder {
  let level: State[] = [{ removed: 0n, cost: 0, unit: -1, from: undefined }];
  let exact = true;
  for (let step = 0; step < system.system.count; step++) {
    onStep(step, system.system.count);
    const next = new Map<UnitSet, State>();
    for (const state of level) expand(system, state, cost, next);
    if (next.size === 0) break;
    level = [...next.values()].sort((a, b) => a.cost - b.cost || (a.removed < b.removed ? -1 : 1));
    if (level.length > width) {
      level.length = width;
      exact = false;
    }
  }
  const best = level[0];
  const removal: number[] = [];
  for (let state = best; state?.from; state = state.from) removal.unshift(state.unit);
  return { removal, cost: best?.cost ?? 0, exact };
}

function expand(system: RememberedSystem, state: State, cost: StepCost, next: Map<UnitSet, State>): void {
  for (let unit = 0; unit < system.system.count; unit++) {
    const bit = bitOf(unit);
    if ((state.removed & bit) !== 0n || !system.canGo(unit, state.removed)) continue;
    const total = state.cost + cost(unit, state.removed);
    const removed = state.removed | bit;
    const known = next.get(removed);
    if (!known || total < known.cost - 1e-12) next.set(removed, { removed, cost: total, unit, from: state });
  }
}
