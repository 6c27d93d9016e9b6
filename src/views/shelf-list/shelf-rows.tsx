/** The rows of the shelf: only those in view stand in the page when there are many. */
import { useMemo, useRef } from 'react';
import { useSeatVerdicts } from '../../shelf/seat-verdicts';
import type { ShelfEntry } from '../../shelf/shelf-entry';
import { useRemarks } from '../../shelf/use-shelf';
import { useSolutionStore, useViewStore } from '../../store/use-store';
import type { ShelfDragPort } from './shelf-drag-port';
import { ShelfRow } from './shelf-row';
import { useRowKeys } from './use-row-keys';
import { ROW_HEIGHT, useRowWindow } from './use-row-window';

interface ShelfRowsProps {
  readonly entries: readonly ShelfEntry[];
  /** Those that order or filter need to know about, beside the ones in view. */
  readonly judged: readonly ShelfEntry[];
  readonly drag: ShelfDragPort;
  readonly onOpen: (entry: ShelfEntry) => void;
}

export function ShelfRows({ entries, judged, drag, onOpen }: ShelfRowsProps) {
  const list = useRef<HTMLUListElement>(null);
  const count = entries.length;
  const view = useRowWindow(count, list);
  const { active, onKeyDown, onFocus } = useRowKeys(count, view, list);
  const { first, last } = view;
  const inView = useMemo(() => entries.slice(first, last + 1), [entries, first, last]);
  useSeatVerdicts(inView, judged);
  const remarks = useRemarks();
  const replaced = useSelectedKind();
  return (
    <ul
      ref={list}
      className="shelf-rows"
      aria-label="Shelf"
      style={{ height: count * ROW_HEIGHT }}
      onKeyDown={onKeyDown}
    >
      {view.rows.map((index) => {
        const entry = entries[index];
        if (!entry) return null;
        return (
          <ShelfRow
            key={entry.id}
            entry={entry}
            remarks={remarks.get(entry.id)}
            index={index}
            count={count}
            isActive={index === active}
            drag={drag}
            replaces={entry.spec.kind === replaced.kind ? replaced.id : undefined}
            onFocus={onFocus}
            onOpen={onOpen}
          />
        );
      })}
    </ul>
  );
}

/** The selected part, that one of its kind can take the place of. */
function useSelectedKind() {
  const id = useViewStore((state) => state.selectedPart);
  const kind = useSolutionStore(({ scene }) =>
    id === undefined ? undefined : scene.parts[scene.indexById.get(id) ?? -1]?.kind,
  );
  return { id, kind };
}
