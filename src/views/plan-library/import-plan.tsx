/** Opens a plan file; a file that cannot be read is answered by name and field, and changes nothing. */
import { type ChangeEvent, useRef, useState } from 'react';
import type { Problem } from '../../../geometry';
import { readPlanFile } from '../../store/plan-file';
import { openNewPlan } from '../../store/plan-session';

interface Refusal {
  readonly file: string;
  readonly problems: readonly Problem[];
}

export function ImportPlan({ onDone }: { readonly onDone: () => void }) {
  const input = useRef<HTMLInputElement>(null);
  const [refusal, setRefusal] = useState<Refusal>();
  const take = async (event: ChangeEvent<HTMLInputElement>) => {
    const { files } = event.target;
    const file = files?.[0];
    if (!file) return;
    const read = await readPlanFile(file);
    // The same file may be chosen again after it has been mended.
    if (input.current) input.current.value = '';
    if (!read.ok) return setRefusal({ file: file.name, problems: read.problems });
    openNewPlan(read.plan);
    onDone();
  };
  return (
    <>
      <button type="button" className="button" onClick={() => input.current?.click()}>
        Import a file
      </button>
      <input
        ref={input}
        type="file"
        className="unseen"
        tabIndex={-1}
        accept=".json,application/json"
        aria-label="Plan file"
        onChange={(event) => void take(event)}
      />
      {refusal && (
        <div className="library-refusal" role="alert">
          <p>'{refusal.file}' cannot be opened as a plan. The open plan is as it was.</p>
          <ul>
            {refusal.problems.map(({ path, message }) => (
              <li key={`${path} ${message}`}>
                <strong>{path}</strong> {message}
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}
