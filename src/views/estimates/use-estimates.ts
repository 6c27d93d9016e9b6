/** The estimates of a plan for a profile, asked anew when either changes. */
import { useEffect, useState } from 'react';
import type { Plan, Profile } from '../../../geometry';
import { askEstimates } from '../../workers/estimates-client';
import type { EstimatesAnswer } from '../../workers/estimates-request';

interface EstimatesResult {
  /** The last answer, kept while a newer one is on its way. */
  readonly answer: EstimatesAnswer | undefined;
  readonly busy: boolean;
  readonly problem: string | undefined;
  readonly askAgain: () => void;
}

type Known = Omit<EstimatesResult, 'askAgain'>;

export function useEstimates(plan: Plan, profile: Profile): EstimatesResult {
  const [known, setKnown] = useState<Known>({ answer: undefined, busy: true, problem: undefined });
  const [attempt, setAttempt] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new attempt asks the same question again.
  useEffect(() => {
    const asking = new AbortController();
    setKnown(({ answer }) => ({ answer, busy: true, problem: undefined }));
    const today = new Date().toISOString().slice(0, 10);
    askEstimates({ plan, profile, today }, asking.signal).then(
      (answer) => {
        if (!asking.signal.aborted) setKnown({ answer, busy: false, problem: undefined });
      },
      (error: unknown) => {
        const problem = error instanceof Error ? error.message : String(error);
        if (!asking.signal.aborted) setKnown({ answer: undefined, busy: false, problem });
      },
    );
    return () => asking.abort();
  }, [plan, profile, attempt]);
  return { ...known, askAgain: () => setAttempt((count) => count + 1) };
}
