/** What the address asks for. A snapshot link never touches the reader's own plans until a copy is taken. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { isSnapshotFragment } from '../sharing/snapshot-format';
import { loadShelf } from '../shelf/shelf-store';
import { adoptPlan, endSession, startSession } from '../store/plan-session';
import { planStore, showPlan } from '../store/plan-store';
import { resetView } from '../store/view-store';

export type Route =
  | { readonly kind: 'opening' }
  | { readonly kind: 'own' }
  | { readonly kind: 'snapshot' }
  | { readonly kind: 'bad link'; readonly message: string };

const isSnapshotAddress = () => isSnapshotFragment(window.location.hash);

function wipeFragment(): void {
  const { pathname, search } = window.location;
  window.history.replaceState(null, '', `${pathname}${search}`);
}

async function openSnapshot(): Promise<Route> {
  endSession();
  const { decodeSnapshot } = await import('../sharing/snapshot');
  const result = await decodeSnapshot(window.location.hash);
  if (!result.ok) return { kind: 'bad link', message: result.message };
  showPlan(result.plan);
  resetView();
  return { kind: 'snapshot' };
}

async function openOwnPlans(): Promise<Route> {
  await startSession();
  void loadShelf();
  return { kind: 'own' };
}

export interface Routing {
  readonly route: Route;
  readonly takeCopy: () => void;
  readonly openOwn: () => void;
}

export function useRoute(): Routing {
  const [route, setRoute] = useState<Route>({ kind: 'opening' });
  /** Of two ways that are under way at once, the later one counts. */
  const turn = useRef(0);
  const go = useCallback((open: () => Promise<Route>) => {
    turn.current += 1;
    const mine = turn.current;
    void open().then((next) => {
      if (mine === turn.current) setRoute(next);
    });
  }, []);
  useEffect(() => {
    const follow = () => go(isSnapshotAddress() ? openSnapshot : openOwnPlans);
    follow();
    window.addEventListener('hashchange', follow);
    return () => window.removeEventListener('hashchange', follow);
  }, [go]);
  const openOwn = useCallback(() => {
    wipeFragment();
    go(openOwnPlans);
  }, [go]);
  const takeCopy = useCallback(() => {
    const { plan } = planStore.getState();
    wipeFragment();
    go(async () => {
      adoptPlan(plan);
      void loadShelf();
      return { kind: 'own' };
    });
  }, [go]);
  return { route, takeCopy, openOwn };
}
