/** A link that cannot be read: what was met, and the way on. */
import './client-page.css';

interface BadLinkProps {
  readonly message: string;
  readonly onOpenOwn: () => void;
}

export function BadLink({ message, onOpenOwn }: BadLinkProps) {
  return (
    <main className="bad-link">
      <p className="quiet">Elbowroom</p>
      <h1>This link cannot be opened</h1>
      <p role="alert">{message}</p>
      <p>Nothing of yours has been touched. The sender can also export the plan to a file and send that.</p>
      <button type="button" className="button strong" onClick={onOpenOwn}>
        Open my own plans
      </button>
    </main>
  );
}
