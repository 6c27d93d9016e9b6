/** The whole library to a file and back: plans, own parts with their history, remarks, measurements and photos. */
import { type ChangeEvent, useRef, useState } from 'react';
import type { Problem } from '../../../geometry';
import { type RestoreWay, readLibrary, restoreLibrary, undoRestore } from '../../shelf/library-backup';
import { packInWorker, readLibraryFile } from '../../shelf/library-client';
import { LIBRARY_LIMITS, type Library } from '../../shelf/library-file';
import { reloadOwnShelf } from '../../shelf/shelf-store';
import { tellOtherShelves } from '../../shelf/shelf-tabs';
import { reopenFromStorage, saveNow } from '../../store/plan-session';
import { Dialog } from '../../ui/dialog';
import { countOf } from '../../ui/numbers';
import './backup-dialog.css';

type State =
  | { readonly kind: 'ready' }
  | { readonly kind: 'busy'; readonly what: string }
  | { readonly kind: 'done'; readonly what: string; readonly before?: Library }
  | { readonly kind: 'refused'; readonly file: string; readonly problems: readonly Problem[] }
  | { readonly kind: 'failed'; readonly why: string }
  | { readonly kind: 'asking'; readonly file: string; readonly library: Library };

export function BackupDialog({ onClose }: { readonly onClose: () => void }) {
  const [state, setState] = useState<State>({ kind: 'ready' });
  const input = useRef<HTMLInputElement>(null);
  const attempt = async (what: string, action: () => Promise<State>) => {
    setState({ kind: 'busy', what });
    try {
      setState(await action());
    } catch (error) {
      setState({ kind: 'failed', why: error instanceof Error ? error.message : String(error) });
    }
  };
  const save = () =>
    attempt('Packing the library…', async () => {
      await saveNow();
      const library = await readLibrary();
      download(await packInWorker(library));
      return { kind: 'done', what: `Saved to a file: ${wordsOf(library)}.` };
    });
  const choose = ({ target }: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0];
    if (!file) return;
    void attempt('Reading the file…', async () => {
      const read = await readLibraryFile(file);
      // The same file may be chosen again after it has been mended.
      if (input.current) input.current.value = '';
      return read.ok
        ? { kind: 'asking', file: file.name, library: read.library }
        : { kind: 'refused', file: file.name, problems: read.problems };
    });
  };
  const restore = (library: Library, way: RestoreWay) =>
    attempt('Restoring…', async () => {
      await saveNow();
      const before = await restoreLibrary(library, way);
      await showAnew();
      const what = way === 'replace' ? 'The library is now that of the file' : 'The file is merged in';
      return { kind: 'done', what: `${what}: ${wordsOf(library)}.`, before };
    });
  const takeBack = (before: Library) =>
    attempt('Taking it back…', async () => {
      await undoRestore(before);
      await showAnew();
      return { kind: 'done', what: 'The library is as it was before.' };
    });
  return (
    <Dialog title="Backup of the library" onClose={onClose}>
      <div className="dialog-body" aria-busy={state.kind === 'busy'}>
        <p>
          One file holds all your plans, own parts with their history, remarks, measurements and photos. It is
          made and read on this computer; nothing is sent.
        </p>
        <div className="buttons">
          <button
            type="button"
            className="button"
            disabled={state.kind === 'busy'}
            onClick={() => void save()}
          >
            Save to a file
          </button>
          <button
            type="button"
            className="button"
            disabled={state.kind === 'busy'}
            onClick={() => input.current?.click()}
          >
            Restore from a file
          </button>
          <input
            ref={input}
            type="file"
            className="unseen"
            tabIndex={-1}
            accept=".zip,application/zip"
            aria-label="Library file"
            onChange={choose}
          />
        </div>
        <p className="quiet">
          A file may have up to {LIBRARY_LIMITS.fileBytes / 1e6} MB with {LIBRARY_LIMITS.plans} plans,{' '}
          {LIBRARY_LIMITS.parts} parts and {LIBRARY_LIMITS.photos} photos.
        </p>
        <Outcome
          state={state}
          onRestore={(library, way) => void restore(library, way)}
          onTakeBack={(before) => void takeBack(before)}
          onCancel={() => setState({ kind: 'ready' })}
        />
      </div>
    </Dialog>
  );
}

interface OutcomeProps {
  readonly state: State;
  readonly onRestore: (library: Library, way: RestoreWay) => void;
  readonly onTakeBack: (before: Library) => void;
  readonly onCancel: () => void;
}

function Outcome({ state, onRestore, onTakeBack, onCancel }: OutcomeProps) {
  switch (state.kind) {
    case 'ready':
      return null;
    case 'busy':
      return <p role="status">{state.what}</p>;
    case 'failed':
      return (
        <p className="fault" role="alert">
          That did not work, and nothing has changed: {state.why}.
        </p>
      );
    case 'refused':
      return (
        <div role="alert">
          <p className="fault">'{state.file}' cannot be restored. Your library is as it was.</p>
          <ul>
            {state.problems.map(({ path, message }) => (
              <li key={`${path} ${message}`}>
                <strong>{path}</strong> {message}
              </li>
            ))}
          </ul>
        </div>
      );
    case 'asking':
      return (
        <section className="restore-question" aria-label="How to restore">
          <p role="status">
            '{state.file}' holds {wordsOf(state.library)}.
          </p>
          <p className="quiet">
            Merging keeps what is here and adds what is missing; what is here in another form comes beside it
            as a copy. Replacing lets go of everything that is here. Either can be taken back as long as this
            window is open.
          </p>
          <div className="buttons">
            <button type="button" className="button strong" onClick={() => onRestore(state.library, 'merge')}>
              Merge
            </button>
            <button type="button" className="button" onClick={() => onRestore(state.library, 'replace')}>
              Replace everything
            </button>
            <button type="button" className="button plain" onClick={onCancel}>
              Cancel
            </button>
          </div>
        </section>
      );
    case 'done': {
      const { before } = state;
      return (
        <p role="status">
          {state.what}{' '}
          {before && (
            <button type="button" className="button small" onClick={() => onTakeBack(before)}>
              Undo
            </button>
          )}
        </p>
      );
    }
  }
}

async function showAnew(): Promise<void> {
  await reloadOwnShelf();
  tellOtherShelves(undefined);
  await reopenFromStorage();
}

function wordsOf({ plans, parts, remarks, photos }: Library): string {
  return [
    countOf(plans.length, 'plan'),
    countOf(parts.length, 'own part'),
    `remarks on ${countOf(remarks.length, 'part')}`,
    countOf(photos.length, 'photo'),
  ].join(', ');
}

function download(bytes: Uint8Array<ArrayBuffer>): void {
  const address = URL.createObjectURL(new Blob([bytes], { type: 'application/zip' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `${new Date().toLocaleDateString('sv-SE')}.elbowroom-library.zip`;
  link.click();
  // The browser needs the address until the download has begun.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
