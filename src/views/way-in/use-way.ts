/** The way that is wanted: what the sheet says of it, then its path from the kernel. */
import { useEffect, useMemo, useState } from 'react';
import type { InsertionPath, Plan } from '../../../geometry';
import type { WayWanted } from '../../store/way-in-store';
import { askWay } from '../../workers/assembly-client';
import type { AssemblyAnswer } from '../../workers/assembly-request';
import { useAssembly } from '../assembly-sheet/use-assembly';
import { type ChosenWay, chooseWay } from './choose-way';

export type WayState =
  | { readonly kind: 'working'; readonly share: number | undefined; readonly title: string }
  | { readonly kind: 'problem'; readonly message: string }
  | {
      readonly kind: 'done';
      readonly answer: AssemblyAnswer;
      readonly way: ChosenWay;
      readonly path: InsertionPath;
    };

interface FoundPath {
  readonly way: ChosenWay;
  readonly path?: InsertionPath;
  readonly problem?: string;
}

export function useWay(plan: Plan, wanted: WayWanted): WayState {
  const { state } = useAssembly(plan);
  const answer = state.kind === 'done' ? state.answer : undefined;
  const way = useMemo(() => answer && chooseWay(answer, wanted), [answer, wanted]);
  const [found, setFound] = useState<FoundPath>();
  useEffect(() => {
    if (!way) return;
    return askWay(plan, way.question, {
      onPath: (path) => setFound({ way, path }),
      onProblem: (problem) => setFound({ way, problem }),
    });
  }, [plan, way]);
  if (state.kind === 'problem') return { kind: 'problem', message: state.message };
  if (state.kind === 'empty' || state.kind === 'stopped' || (answer && !way))
    return { kind: 'problem', message: 'This part is not put in: nothing of it moves.' };
  if (found && found.way === way && found.problem !== undefined)
    return { kind: 'problem', message: found.problem };
  if (answer && way && found?.way === way && found.path)
    return { kind: 'done', answer, way, path: found.path };
  const share = state.kind === 'working' ? state.progress?.share : undefined;
  return { kind: 'working', share, title: way?.title ?? 'How it goes in' };
}
