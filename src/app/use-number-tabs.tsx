/** Clearances or findings: chosen by hand, and by selecting one of them somewhere else. */
import { useEffect, useState } from 'react';
import { useSolutionStore, useViewStore } from '../store/use-store';
import { FitMark } from '../ui/fit-mark';
import { countOf } from '../ui/numbers';
import type { Tab } from '../ui/tabs';

/** With `worded`, the count of what is wrong stands on the tab; otherwise only its mark. */
export function useNumberTabs(worded: boolean): {
  readonly tabs: readonly Tab[];
  readonly chosen: string;
  readonly choose: (id: string) => void;
} {
  const [chosen, choose] = useState('clearances');
  const finding = useViewStore((state) => state.selectedFinding);
  const clearance = useViewStore((state) => state.selectedClearance);
  const faults = useSolutionStore((state) => state.solution.verdict.faults);
  const cautions = useSolutionStore((state) => state.solution.verdict.cautions);
  useEffect(() => {
    if (finding !== undefined) choose('findings');
  }, [finding]);
  useEffect(() => {
    if (clearance !== undefined) choose('clearances');
  }, [clearance]);
  const badge =
    faults > 0 ? (
      <FitMark tone="interference" word={countOf(faults, 'fault')} worded={worded} />
    ) : cautions > 0 ? (
      <FitMark tone="transition" word={countOf(cautions, 'caution')} worded={worded} />
    ) : undefined;
  const tabs: readonly Tab[] = [
    { id: 'clearances', label: 'Clearances' },
    { id: 'findings', label: 'Findings', badge },
  ];
  return { tabs, chosen, choose };
}
