/** Whether the plan is safe in this browser, and what to do when another tab has overtaken this one. */
import { exportPlanFile } from '../../store/plan-file';
import { keepMineAsCopy, loadTheirs } from '../../store/plan-session';
import { planStore } from '../../store/plan-store';
import { announce } from '../../store/status-store';
import { useSaving } from '../../store/use-store';

const exportOpenPlan = () => exportPlanFile(planStore.getState().plan);

async function takeTheirs(): Promise<void> {
  const [problem] = await loadTheirs().catch(() => [
    { path: 'plan', message: 'could not be read from storage' },
  ]);
  announce(problem ? `The ${problem.path} ${problem.message}.` : 'Loaded what the other tab saved.');
}

/** A word beside the name while all is well. */
export function SavingMark() {
  const { kind } = useSaving();
  if (kind !== 'saving' && kind !== 'saved') return null;
  return <span className="saving quiet">{kind === 'saving' ? 'Saving…' : 'Saved'}</span>;
}

/** A line of its own when nothing can be saved. */
export function SavingWarning() {
  const saving = useSaving();
  if (saving.kind === 'off')
    return (
      <div className="saving-warning" role="alert">
        <span>Saving is off: {saving.why}. Export the plan to keep it.</span>
        <button type="button" className="button small" onClick={exportOpenPlan}>
          Export to a file
        </button>
      </div>
    );
  if (saving.kind !== 'overtaken') return null;
  return (
    <div className="saving-warning" role="alert">
      <span>
        {saving.by === 'deletion'
          ? 'Another tab deleted this plan. Nothing more is saved here.'
          : 'Another tab saved a newer version of this plan. Nothing more is saved here.'}
      </span>
      {saving.by === 'newer revision' && (
        <button type="button" className="button small" onClick={() => void takeTheirs()}>
          Load theirs
        </button>
      )}
      <button type="button" className="button small" onClick={keepMineAsCopy}>
        Keep mine as a copy
      </button>
    </div>
  );
}
