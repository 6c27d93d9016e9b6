/** The shelf: search, filter by kind, drag into the drawing, or place and replace by a button. */
import { lazy, Suspense, useDeferredValue, useMemo, useState } from 'react';
import { findMounts, kindName, type PartKind, partKinds } from '../../../geometry';
import { searchShelf } from '../../shelf/search-shelf';
import { useShelf } from '../../shelf/use-shelf';
import { useSolutionStore, useViewStore } from '../../store/use-store';
import type { ShelfDragPort } from './shelf-drag-port';
import { ShelfRow } from './shelf-row';
import './shelf-list.css';

const NewPartDialog = lazy(() =>
  import('../part-editor/new-part-dialog').then((module) => ({ default: module.NewPartDialog })),
);

export function ShelfList({ drag }: { readonly drag: ShelfDragPort }) {
  const entries = useShelf();
  const scene = useSolutionStore((state) => state.scene);
  const selected = useViewStore((state) => state.selectedPart);
  const [typed, setTyped] = useState('');
  const [kind, setKind] = useState<PartKind>();
  const [onlyFitting, setOnlyFitting] = useState(false);
  const [making, setMaking] = useState(false);
  const settledScene = useDeferredValue(scene);
  const found = useMemo(() => searchShelf(entries, typed, kind), [entries, typed, kind]);
  const shown = useMemo(
    () =>
      onlyFitting
        ? found.filter(({ spec }) =>
            findMounts(settledScene, spec).some((mount) => mount.takenBy === undefined),
          )
        : found,
    [found, onlyFitting, settledScene],
  );
  const selectedKind =
    selected === undefined ? undefined : scene.parts[scene.indexById.get(selected) ?? -1]?.kind;
  return (
    <div className="shelf">
      <div className="shelf-tools">
        <div className="shelf-search">
          <input
            type="search"
            className="field"
            placeholder="Find a part"
            aria-label="Find a part on the shelf"
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
          />
          <button type="button" className="button" onClick={() => setMaking(true)}>
            New part
          </button>
        </div>
        <div className="shelf-filters">
          <select
            className="select"
            aria-label="Kind of part"
            value={kind ?? ''}
            onChange={(event) => setKind(partKinds.find((one) => one === event.target.value))}
          >
            <option value="">All kinds</option>
            {partKinds.map((one) => (
              <option key={one} value={one}>
                {kindName(one)}
              </option>
            ))}
          </select>
          <label className="check">
            <input
              type="checkbox"
              checked={onlyFitting}
              onChange={(event) => setOnlyFitting(event.target.checked)}
            />
            Has a mount
          </label>
        </div>
      </div>
      <ul className="shelf-rows" aria-label="Shelf">
        {shown.map((entry) => (
          <ShelfRow
            key={entry.id}
            entry={entry}
            drag={drag}
            replaces={entry.spec.kind === selectedKind ? selected : undefined}
          />
        ))}
      </ul>
      {shown.length === 0 && entries.length > 0 && <p className="empty">Nothing on the shelf matches.</p>}
      {making && (
        <Suspense>
          <NewPartDialog kind={kind ?? selectedKind ?? 'cooler'} onClose={() => setMaking(false)} />
        </Suspense>
      )}
    </div>
  );
}
