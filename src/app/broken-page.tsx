/** Shown when drawing the page fails: the plan is still there and can be taken to safety. */
import { exportPlanFile } from '../store/plan-file';
import { planStore } from '../store/plan-store';

interface BrokenPageProps {
  readonly message: string;
  readonly onTryAgain: () => void;
}

export function BrokenPage({ message, onTryAgain }: BrokenPageProps) {
  return (
    <main className="opening" role="alert">
      <h1>The page has stumbled</h1>
      <p>Your plan is still here. Export it to be safe, then try again.</p>
      <p className="quiet">{message}</p>
      <div className="buttons">
        <button
          type="button"
          className="button strong"
          onClick={() => exportPlanFile(planStore.getState().plan)}
        >
          Export the plan
        </button>
        <button type="button" className="button" onClick={onTryAgain}>
          Try again
        </button>
      </div>
    </main>
  );
}
