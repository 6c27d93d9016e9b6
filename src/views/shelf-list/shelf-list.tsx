/** The shelf: find a part and see how it would sit, drag it into the drawing, or place and replace by a button. */
import { lazy, Suspense, useDeferredValue, useEffect, useMemo, useState } from 'react';
import { arrangeShelf, matchShelf, type ShelfWish } from '../../shelf/arrange-shelf';
import { prepareShelf } from '../../shelf/search-shelf';
import { useAllVerdicts } from '../../shelf/seat-verdicts';
import type { ShelfEntry } from '../../shelf/shelf-entry';
import { useRemarks, useShelf } from '../../shelf/use-shelf';
import { planStore } from '../../store/plan-store';
import { viewStore } from '../../store/view-store';
import { countOf } from '../../ui/numbers';
import type { ShelfDragPort } from './shelf-drag-port';
import { ShelfRows } from './shelf-rows';
import { ShelfTools } from './shelf-tools';
import './shelf-list.css';

const NewPartDialog = lazy(() =>
  import('../part-editor/new-part-dialog').then((module) => ({ default: module.NewPartDialog })),
);

const ShelfCard = lazy(() =>
  import('../shelf-card/shelf-card-dialog').then((module) => ({ default: module.ShelfCard })),
);
const DuplicatesDialog = lazy(() =>
  import('./duplicates-dialog').then((module) => ({ default: module.DuplicatesDialog })),
);
const BackupDialog = lazy(() =>
  import('../library-backup/backup-dialog').then((module) => ({ default: module.BackupDialog })),
);
const PartFilesDialog = lazy(() =>
  import('../part-files/part-files-dialog').then((module) => ({ default: module.PartFilesDialog })),
);

const EVERYTHING: ShelfWish = {
  typed: '',
  kind: undefined,
  longest: undefined,
  favourites: false,
  fitting: false,
  order: 'shelf',
};

const NOBODY: readonly ShelfEntry[] = [];

export function ShelfList({ drag }: { readonly drag: ShelfDragPort }) {
  const entries = useShelf();
  const remarks = useRemarks();
  const [wish, setWish] = useState(EVERYTHING);
  const [open, setOpen] = useState<'new part' | 'duplicates' | 'backup' | 'part files' | ShelfEntry>();
  const close = () => setOpen(undefined);
  useEffect(() => prepareShelf(entries), [entries]);
  const needsAll = wish.fitting || wish.order === 'tightest' || wish.order === 'most room';
  const verdicts = useAllVerdicts(needsAll);
  const { typed, kind, longest, favourites, fitting, order } = useDeferredValue(wish);
  const matching = useMemo(
    () => matchShelf(entries, { typed, kind, longest, favourites }, remarks),
    [entries, typed, kind, longest, favourites, remarks],
  );
  const shown = useMemo(
    () => arrangeShelf(matching, { fitting, order }, { remarks, verdicts }),
    [matching, fitting, order, remarks, verdicts],
  );
  return (
    <div className="shelf">
      <ShelfTools
        wish={wish}
        onWish={(change) => setWish((before) => ({ ...before, ...change }))}
        onNewPart={() => setOpen('new part')}
        onTidy={() => setOpen('duplicates')}
        onBackup={() => setOpen('backup')}
        onFiles={() => setOpen('part files')}
      >
        <ShelfCount shown={shown.length} matching={needsAll ? matching : NOBODY} all={entries.length} />
      </ShelfTools>
      <ShelfRows entries={shown} judged={needsAll ? matching : NOBODY} drag={drag} onOpen={setOpen} />
      {shown.length === 0 && entries.length > 0 && <p className="empty">Nothing on the shelf matches.</p>}
      <Suspense>
        {open === 'duplicates' && <DuplicatesDialog onClose={close} />}
        {open === 'backup' && <BackupDialog onClose={close} />}
        {typeof open === 'object' && <ShelfCard id={open.id} onClose={close} />}
        {open === 'part files' && <PartFilesDialog onClose={close} />}
        {open === 'new part' && (
          <NewPartDialog kind={wish.kind ?? selectedKind() ?? 'cooler'} onClose={close} />
        )}
      </Suspense>
    </div>
  );
}

interface ShelfCountProps {
  readonly shown: number;
  /** What is to be tried in the plan; nothing when neither order nor filter ask for it. */
  readonly matching: readonly ShelfEntry[];
  readonly all: number;
}

function ShelfCount({ shown, matching, all }: ShelfCountProps) {
  const verdicts = useAllVerdicts(matching.length > 0);
  const open = matching.filter(({ id }) => !verdicts.get(id)?.fresh).length;
  return (
    <p className="quiet">
      <span role="status">
        {shown === all ? countOf(all, 'part') : `${shown} of ${countOf(all, 'part')}`}
      </span>
      {/* Not read out: it counts down several times a second. */}
      {open > 0 && <span aria-hidden="true">, {open} still to be tried</span>}
    </p>
  );
}

function selectedKind() {
  return planStore.getState().plan.parts[viewStore.getState().selectedPart ?? '']?.spec.kind;
}
