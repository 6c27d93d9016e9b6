/** The head of the sheet: which plan, does it fit, what can be done with the whole of it. */
import { lazy, Suspense, useState } from 'react';
import { redo, undo } from '../../store/plan-store';
import { useUndoSteps } from '../../store/use-store';
import { KeyList } from '../key-list/key-list';
import { PlanName } from './plan-name';
import { SavingMark, SavingWarning } from './saving-mark';
import { ThemeButton } from './theme-button';
import { VerdictLine } from './verdict-line';
import './top-bar.css';

const PlanLibrary = lazy(() =>
  import('../plan-library/plan-library').then((module) => ({ default: module.PlanLibrary })),
);
const SnapshotDialog = lazy(() =>
  import('../snapshot-link/snapshot-dialog').then((module) => ({ default: module.SnapshotDialog })),
);
const BriefDialog = lazy(() =>
  import('../brief/brief-dialog').then((module) => ({ default: module.BriefDialog })),
);

type OpenDialog = 'plans' | 'snapshot' | 'brief';

interface TopBarProps {
  readonly keysShown: boolean;
  readonly onShowKeys: (shown: boolean) => void;
}

export function TopBar({ keysShown, onShowKeys }: TopBarProps) {
  const { past, future } = useUndoSteps();
  const [dialog, setDialog] = useState<OpenDialog>();
  const close = () => setDialog(undefined);
  return (
    <header className="top-bar">
      <div className="top-name">
        <h1>Elbowroom</h1>
        <PlanName />
        <SavingMark />
      </div>
      <VerdictLine />
      <div className="top-actions" role="toolbar" aria-label="Plan">
        <button type="button" className="button" disabled={past === 0} onClick={undo}>
          Undo
        </button>
        <button type="button" className="button" disabled={future === 0} onClick={redo}>
          Redo
        </button>
        <button type="button" className="button" onClick={() => setDialog('brief')}>
          Brief
        </button>
        <button type="button" className="button" onClick={() => setDialog('plans')}>
          Plans
        </button>
        <ThemeButton />
        <button
          type="button"
          className="button icon keys-button"
          aria-label="Keys"
          title="Keys"
          onClick={() => onShowKeys(true)}
        >
          ?
        </button>
        <button type="button" className="button strong" onClick={() => setDialog('snapshot')}>
          Send snapshot
        </button>
      </div>
      <SavingWarning />
      <Suspense>
        {dialog === 'plans' && <PlanLibrary onClose={close} />}
        {dialog === 'snapshot' && <SnapshotDialog onClose={close} />}
        {dialog === 'brief' && <BriefDialog onClose={close} />}
      </Suspense>
      {keysShown && <KeyList onClose={() => onShowKeys(false)} />}
    </header>
  );
}
