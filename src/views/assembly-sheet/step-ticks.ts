/** Which steps of a plan's sheet are done, kept in the browser. */
import { useEffect, useState } from 'react';

const keyOf = (planId: string) => `elbowroom.assembly.${planId}`;

/** Keys of the ticked steps. Storage may be forbidden or hold anything; then nothing is ticked. */
export function readTicks(planId: string): ReadonlySet<string> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(keyOf(planId)) ?? '[]');
    return new Set(Array.isArray(kept) ? kept.filter((key) => typeof key === 'string') : []);
  } catch {
    return new Set();
  }
}

/** Where storage is forbidden the ticks last as long as the sheet is open. */
export function keepTicks(planId: string, ticks: ReadonlySet<string>): void {
  try {
    if (ticks.size === 0) localStorage.removeItem(keyOf(planId));
    else localStorage.setItem(keyOf(planId), JSON.stringify([...ticks]));
  } catch {
    // The page still ticks; it only cannot remember.
  }
}

interface StepTicks {
  readonly ticks: ReadonlySet<string>;
  readonly tick: (step: string, done: boolean) => void;
  readonly clear: () => void;
}

/** A plan without an id (someone else's, from a link) is ticked on the screen only. */
export function useStepTicks(planId: string): StepTicks {
  const [ticks, setTicks] = useState<ReadonlySet<string>>(() => (planId ? readTicks(planId) : new Set()));
  useEffect(() => setTicks(planId ? readTicks(planId) : new Set()), [planId]);
  const change = (next: ReadonlySet<string>) => {
    setTicks(next);
    if (planId) keepTicks(planId, next);
  };
  return {
    ticks,
    tick: (step, done) => {
      const next = new Set(ticks);
      if (done) next.add(step);
      else next.delete(step);
      change(next);
    },
    clear: () => change(new Set()),
  };
}
