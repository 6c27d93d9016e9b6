/** A link that cannot be read: what was met, and the way on. */
import './client-page.css';

interface BadLinkProps {
  readonly message: string;
  readonly onOpenOwn: () => void;
}

export function BadLink({ message, onOpenOwn }: BadLinkProps) {
  return (
    <main className="bad-link">
      <h1>This link cannot be opened</h1>
      <p role="alert">{message}</p>
      <p>Nothing of yours has been touched. Ask the sender for the link again, or for the plan as a file.</p>
      <button type="button" className="button strong" onClick={onOpenOwn}>
        Open my own plans
      </button>
    </main>
  );
}
