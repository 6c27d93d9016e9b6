/** The shelf comes a moment after the plan: none of it belongs to the first load. */
import { lazy, Suspense } from 'react';
import { shelfDragPort } from './shelf-drag-port';

const ShelfList = lazy(() =>
  import('../views/shelf-list/shelf-list').then((module) => ({ default: module.ShelfList })),
);

export function LazyShelf() {
  return (
    <Suspense>
      <ShelfList drag={shelfDragPort} />
    </Suspense>
  );
}
