/** How a plan is put together, as the sheet asks for it: found when it opens, stopped when it closes. */
import { useEffect, useRef, useState } from 'react';
import type { Plan } from '../../../geometry';
import { askAssembly, knownAssembly } from '../../workers/assembly-client';
import type { AssemblyAnswer, AssemblyProgress } from '../../workers/assembly-request';

export type AssemblyState =
  | { readonly kind: 'empty' }
  | { readonly kind: 'working'; readonly progress: AssemblyProgress | undefined }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'problem'; readonly message: string }
  | { readonly kind: 'done'; readonly answer: AssemblyAnswer };

interface Assembly {
  readonly state: AssemblyState;
  readonly stop: () => void;
  readonly askAgain: () => void;
}

export function useAssembly(plan: Plan): Assembly {
  const [state, setState] = useState<AssemblyState>({ kind: 'working', progress: undefined });
  const [question, setQuestion] = useState(0);
  const stopAsking = useRef(() => {});
  // biome-ignore lint/correctness/useExhaustiveDependencies: a raised question number asks again.
  useEffect(() => {
    const known = knownAssembly(plan);
    if (Object.keys(plan.parts).length === 0) return setState({ kind: 'empty' });
    if (known) return setState({ kind: 'done', answer: known });
    setState({ kind: 'working', progress: undefined });
    stopAsking.current = askAssembly(plan, {
      onProgress: (progress) => setState({ kind: 'working', progress }),
      onAnswer: (answer) => setState({ kind: 'done', answer }),
      onProblem: (message) => setState({ kind: 'problem', message }),
    });
    return () => stopAsking.current();
  }, [plan, question]);
  return {
    state,
    stop: () => {
      stopAsking.current();
      setState({ kind: 'stopped' });
    },
    askAgain: () => setQuestion((before) => before + 1),
  };
}
