/** The draft of a form with its own undo: steps back through what was typed, placed or filled in. */
import { useCallback, useState } from 'react';
import type { Draft } from './draft';

interface Steps {
  readonly past: readonly Draft[];
  readonly now: Draft;
  readonly future: readonly Draft[];
  /** Changes with the same name that follow one another are one step: typing in one field, one drag. */
  readonly name: string | undefined;
}

export interface DraftSteps {
  readonly draft: Draft;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly change: (next: Draft | ((before: Draft) => Draft), name?: string) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

const MOST_STEPS = 200;

export function useDraft(first: () => Draft): DraftSteps {
  const [steps, setSteps] = useState<Steps>(() => ({ past: [], now: first(), future: [], name: undefined }));
  const change = useCallback((next: Draft | ((before: Draft) => Draft), name?: string) => {
    setSteps(({ past, now, name: before }) => {
      const made = typeof next === 'function' ? next(now) : next;
      if (made === now) return { past, now, future: [], name };
      const joins = name !== undefined && name === before && past.length > 0;
      return { past: joins ? past : [...past, now].slice(-MOST_STEPS), now: made, future: [], name };
    });
  }, []);
  const undo = useCallback(() => {
    setSteps(({ past, now, future, name }) => {
      const back = past.at(-1);
      if (past.length === 0) return { past, now, future, name };
      return { past: past.slice(0, -1), now: back, future: [now, ...future], name: undefined };
    });
  }, []);
  const redo = useCallback(() => {
    setSteps(({ past, now, future, name }) => {
      const [next, ...rest] = future;
      if (future.length === 0) return { past, now, future, name };
      return { past: [...past, now], now: next, future: rest, name: undefined };
    });
  }, []);
  return {
    draft: steps.now,
    canUndo: steps.past.length > 0,
    canRedo: steps.future.length > 0,
    change,
    undo,
    redo,
  };
}
