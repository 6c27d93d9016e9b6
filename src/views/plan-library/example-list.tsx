/** The plans that come with the page; opening one makes a copy of one's own. */
import { useState } from 'react';
import { examplePlans } from '../../store/example-plans';
import { openExample } from '../../store/plan-session';

export function ExampleList({ onDone }: { readonly onDone: () => void }) {
  const [fault, setFault] = useState<string>();
  const open = async (file: string) => {
    try {
      await openExample(file);
      onDone();
    } catch (error) {
      setFault(error instanceof Error ? error.message : 'The example plan could not be fetched.');
    }
  };
  return (
    <>
      {fault !== undefined && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
      <ul className="library-list">
        {examplePlans.map(({ file, name, about }) => (
          <li className="library-row" key={file}>
            <span className="library-name">
              <span>{name}</span>
              <span className="quiet">{about}</span>
            </span>
            <button
              type="button"
              className="button small"
              aria-label={`Open a copy of ${name}`}
              onClick={() => void open(file)}
            >
              Open a copy
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
