/** How an own part came to be what it is: each change with what it changed. */
import { useEffect, useState } from 'react';
import { earlierVersions } from '../../shelf/own-parts';
import type { ShelfEntry } from '../../shelf/shelf-entry';
import { changeOwnPart } from '../../shelf/shelf-store';
import { differencesOf } from '../../shelf/spec-differences';
import { announce } from '../../store/status-store';
import type { PartVersion } from '../../store/stored-records';
import { DifferenceList } from './difference-list';

export function PartHistory({ entry }: { readonly entry: ShelfEntry }) {
  const { id, spec, revision } = entry;
  const [versions, setVersions] = useState<readonly PartVersion[]>([]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each change of the part makes a version more.
  useEffect(() => {
    earlierVersions(id).then(setVersions, () => setVersions([]));
  }, [id, revision]);
  const goBack = (version: PartVersion) =>
    void changeOwnPart(id, version.spec, revision ?? 1, 'back to an earlier version').then(
      ({ saved }) =>
        announce(
          saved
            ? `${spec.model} is as it was on ${dayOf(version.savedAt)}.`
            : 'Another tab has changed the part since; look at it again.',
        ),
      () => announce('The browser keeps no data for this page, so the part was not changed.'),
    );
  if (versions.length === 0) return null;
  return (
    <section aria-label="History">
      <h3 className="heading">History</h3>
      <ol className="history-list">
        {versions.map((version, index) => (
          <li key={version.revision}>
            <p>
              Changed from version {version.revision} of {dayOf(version.savedAt)}
              {version.reason ? `: ${version.reason}` : ''}
              <button
                type="button"
                className="button small plain"
                aria-label={`Go back to version ${version.revision}`}
                onClick={() => goBack(version)}
              >
                Go back to it
              </button>
            </p>
            <DifferenceList differences={differencesOf(version.spec, versions[index - 1]?.spec ?? spec)} />
          </li>
        ))}
      </ol>
    </section>
  );
}

function dayOf(milliseconds: number): string {
  return new Date(milliseconds).toLocaleDateString('sv-SE');
}
