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

export function SavingMark() {
  const saving = useSaving();
  if (saving.kind === 'idle') return null;
  if (saving.kind === 'off')
    return (
      <span className="saving warn" role="alert">
        Saving is off: {saving.why}.
        <button type="button" className="button small" onClick={exportOpenPlan}>
          Export to a file
        </button>
      </span>
    );
  if (saving.kind === 'overtaken')
    return (
      <span className="saving warn" role="alert">
        {saving.by === 'deletion'
          ? 'Another tab deleted this plan. Nothing more is saved here.'
          : 'Another tab saved a newer version of this plan. Nothing more is saved here.'}
        {saving.by === 'newer revision' && (
          <button type="button" className="button small" onClick={() => void takeTheirs()}>
            Load theirs
          </button>
        )}
        <button type="button" className="button small" onClick={keepMineAsCopy}>
          Keep mine as a copy
        </button>
      </span>
    );
  return <span className="saving quiet">{saving.kind === 'saving' ? 'Saving…' : 'Saved'}</span>;
}
