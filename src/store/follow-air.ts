/** Keeps the picture of the air up with the plan and the profile while it is shown; a moment after every change. */
import { askAir } from '../workers/estimates-client';
import { airStore } from './air-store';
import { solutionStore } from './solution-store';

/** A hand that moves a part does not wait for the air. */
const PAUSE_MS = 120;

export function followAir(): () => void {
  let asking: AbortController | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let known: { readonly plan: unknown; readonly profile: unknown } | undefined;
  const ask = async () => {
    const { plan } = solutionStore.getState();
    const { profile } = airStore.getState();
    asking?.abort();
    const mine = new AbortController();
    asking = mine;
    known = { plan, profile };
    try {
      const answer = await askAir({ plan, profile }, mine.signal);
      if (mine.signal.aborted) return;
      airStore.setState(
        answer.picture
          ? { picture: answer.picture, problem: undefined }
          : { picture: undefined, problem: answer.because },
      );
    } catch (error) {
      if (mine.signal.aborted) return;
      airStore.setState({
        picture: undefined,
        problem: error instanceof Error ? error.message : String(error),
      });
    }
  };
  const follow = () => {
    const { shown, profile } = airStore.getState();
    if (!shown || (known?.plan === solutionStore.getState().plan && known.profile === profile)) return;
    clearTimeout(timer);
    timer = setTimeout(ask, PAUSE_MS);
  };
  follow();
  const stops = [solutionStore.subscribe(follow), airStore.subscribe(follow)];
  return () => {
    clearTimeout(timer);
    asking?.abort();
    for (const stop of stops) stop();
  };
}
