/** Starts the study of the plan once the page stands: none of it belongs to the first load. */
import { useEffect } from 'react';

/** The page draws first; where it cannot be asked when it is idle, so much later. */
const LATER_MS = 400;

export function useStudy(): void {
  useEffect(() => {
    let stop: (() => void) | undefined;
    let ended = false;
    const start = async () => {
      const { followStudy } = await import('../store/follow-study');
      if (!ended) stop = followStudy();
    };
    const timer = setTimeout(() => {
      // Offline before it was ever loaded: the plan goes on with nominal sizes.
      start().catch(() => undefined);
    }, LATER_MS);
    return () => {
      ended = true;
      clearTimeout(timer);
      stop?.();
    };
  }, []);
}
