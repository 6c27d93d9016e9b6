/** The viewport with its bar. When it cannot draw, the tables and the tree still work and the reason is said. */
import { lazy, Suspense } from 'react';
import { useWayWanted } from '../store/way-in-store';
import { ErrorBoundary } from '../ui/error-boundary';
import { Viewport } from '../viewport/viewport';
import { ViewBar } from '../views/view-bar/view-bar';

const WayInBar = lazy(() =>
  import('../views/way-in/way-in-bar').then((module) => ({ default: module.WayInBar })),
);

export function Drawing({ readOnly = false }: { readonly readOnly?: boolean }) {
  const wanted = useWayWanted();
  return (
    <>
      <div className="drawing">
        <ErrorBoundary
          fallback={(message, tryAgain) => <NoDrawing message={message} onTryAgain={tryAgain} />}
        >
          <Viewport readOnly={readOnly} />
        </ErrorBoundary>
      </div>
      {wanted && !readOnly && (
        <Suspense>
          <WayInBar wanted={wanted} />
        </Suspense>
      )}
      <ViewBar readOnly={readOnly} />
    </>
  );
}

function NoDrawing({ message, onTryAgain }: { readonly message: string; readonly onTryAgain: () => void }) {
  return (
    <div className="no-drawing" role="alert">
      <p>The drawing cannot be shown. The tree, the shelf and the clearances go on working.</p>
      <p className="quiet">{message}</p>
      <button type="button" className="button" onClick={onTryAgain}>
        Try again
      </button>
    </div>
  );
}
