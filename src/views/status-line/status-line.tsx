/** The last thing that happened, read out and shown for a while, perhaps with a way back. */
import { useEffect } from 'react';
import { clearStatus } from '../../store/status-store';
import { useStatus } from '../../store/use-store';
import './status-line.css';

const SHOWN_MS = 6000;
/** Long enough to reach a button in it. */
const SHOWN_WITH_ACTION_MS = 12_000;

export function StatusLine() {
  const { message, action, count } = useStatus();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the count restarts the clock when the same words come again.
  useEffect(() => {
    if (message === '') return undefined;
    const timer = setTimeout(clearStatus, action ? SHOWN_WITH_ACTION_MS : SHOWN_MS);
    return () => clearTimeout(timer);
  }, [message, action, count]);
  return (
    <div className="status-line" data-shown={message !== ''}>
      <span role="status">{message}</span>
      {action && (
        <button
          type="button"
          className="button small"
          onClick={() => {
            action.run();
            clearStatus();
          }}
        >
          {action.label}
        </button>
      )}
    </div>
  );
}
