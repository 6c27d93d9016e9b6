/** A question to the kernel as a piece of the page asks it: asked again when the plan changes. */
import { useEffect, useState } from 'react';
import { studyClient } from '../workers/study-client';
import type { StudyAnswer, StudyRequest } from '../workers/study-request';

export interface StudyResult<A> {
  /** The last answer, kept while a newer one is on its way. */
  readonly answer: A | undefined;
  readonly busy: boolean;
  readonly problem: string | undefined;
}

/** `request` must be the same object for as long as the question is the same; without one, nothing is asked yet. */
export function useStudyAnswer<R extends StudyRequest>(request: R | undefined): StudyResult<StudyAnswer<R>> {
  const [result, setResult] = useState<StudyResult<StudyAnswer<R>>>(NOTHING_YET);
  useEffect(() => {
    let wanted = true;
    setResult(({ answer }) => ({ answer, busy: true, problem: undefined }));
    if (!request) return;
    studyClient()
      .ask(request)
      .then(
        (answer) => {
          if (wanted && answer !== undefined) setResult({ answer, busy: false, problem: undefined });
        },
        (error: unknown) => {
          const problem = error instanceof Error ? error.message : String(error);
          if (wanted) setResult({ answer: undefined, busy: false, problem });
        },
      );
    return () => {
      wanted = false;
    };
  }, [request]);
  return result;
}

const NOTHING_YET = { answer: undefined, busy: true, problem: undefined } as const;
