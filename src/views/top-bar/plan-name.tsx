/** The plan's name, typed in place; an empty name is not taken. */
import { useState } from 'react';
import { editPlan } from '../../store/plan-store';
import { usePlanStore } from '../../store/use-store';

const LONGEST_NAME = 120;

export function PlanName() {
  const name = usePlanStore((state) => state.plan.name);
  const [typed, setTyped] = useState<string>();
  const take = () => {
    const next = typed?.trim();
    setTyped(undefined);
    if (next && next !== name) editPlan((plan) => ({ ...plan, name: next }));
  };
  return (
    <input
      className="plan-name"
      aria-label="Name of the plan"
      maxLength={LONGEST_NAME}
      value={typed ?? name}
      onChange={(event) => setTyped(event.target.value)}
      onBlur={take}
      onKeyDown={(event) => {
        if (event.key === 'Enter') event.currentTarget.blur();
        if (event.key === 'Escape') setTyped(undefined);
      }}
    />
  );
}
