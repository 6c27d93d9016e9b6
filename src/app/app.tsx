/** Whose plan is on the page: the person's own, or someone else's from a link. */
import { lazy, Suspense } from 'react';
import { ErrorBoundary } from '../ui/error-boundary';
import { BadLink } from '../views/client/bad-link';
import { StatusLine } from '../views/status-line/status-line';
import { BrokenPage } from './broken-page';
import { PlanScreen } from './plan-screen';
import { useRoute } from './use-route';
import './app.css';

const ClientScreen = lazy(() =>
  import('./client-screen').then((module) => ({ default: module.ClientScreen })),
);

export function App() {
  const { route, takeCopy, openOwn } = useRoute();
  return (
    <ErrorBoundary fallback={(message, tryAgain) => <BrokenPage message={message} onTryAgain={tryAgain} />}>
      {route.kind === 'own' && <PlanScreen />}
      {route.kind === 'bad link' && <BadLink message={route.message} onOpenOwn={openOwn} />}
      <Suspense fallback={<Opening />}>
        {route.kind === 'snapshot' && <ClientScreen onTakeCopy={takeCopy} onOpenOwn={openOwn} />}
      </Suspense>
      {route.kind === 'opening' && <Opening />}
      <StatusLine />
    </ErrorBoundary>
  );
}

function Opening() {
  return (
    <main className="opening" aria-busy="true">
      <h1>Elbowroom</h1>
      <p className="quiet">Opening the plan…</p>
    </main>
  );
}
