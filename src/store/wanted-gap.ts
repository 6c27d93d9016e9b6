/** The gap a person wants between a kind of pair, kept in the plan; without one, the default of the rule holds. */
import { formatMillimetres } from '../ui/numbers';
import { editPlan, planStore, undo } from './plan-store';
import { announce } from './status-store';

/** One step of undo; `undefined` goes back to the default. */
export function wantGap(rule: string, millimetres: number | undefined): void {
  if (planStore.getState().plan.gaps?.[rule] === millimetres) return;
  editPlan((plan) => {
    const { [rule]: _, ...others } = plan.gaps ?? {};
    const { gaps: __, ...rest } = plan;
    const gaps = millimetres === undefined ? others : { ...plan.gaps, [rule]: millimetres };
    return Object.keys(gaps).length === 0 ? rest : { ...rest, gaps };
  });
  const now = millimetres === undefined ? 'as by default' : `${formatMillimetres(millimetres)} mm`;
  announce(`Wanted gap, ${rule}: ${now}.`, { label: 'Undo', run: undo });
}
