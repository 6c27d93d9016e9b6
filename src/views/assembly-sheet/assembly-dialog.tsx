/** The assembly sheet over the page: found beside it, with progress, to be stopped, ticked and printed. */
import type { StepPicturePort } from '../../store/step-pictures';
import { usePlanStore, useSolutionStore } from '../../store/use-store';
import { Dialog } from '../../ui/dialog';
import type { AssemblyPhase } from '../../workers/assembly-request';
import { SheetPage } from './sheet-page';
import { useStepTicks } from './step-ticks';
import { type AssemblyState, useAssembly } from './use-assembly';
import { useStepPictures } from './use-step-pictures';
import './assembly-sheet.css';

const PHASES: Readonly<Record<AssemblyPhase, string>> = {
  machine: 'Trying ways in, hands and tools…',
  order: 'Looking for the order…',
  leads: 'Laying the leads…',
  service: 'Taking out each part…',
};

interface AssemblyDialogProps {
  readonly onClose: () => void;
  /** Draws the steps; without it the sheet has no pictures. */
  readonly drawSteps?: StepPicturePort;
}

export function AssemblyDialog({ onClose, drawSteps }: AssemblyDialogProps) {
  const plan = useSolutionStore(({ plan }) => plan);
  const scene = useSolutionStore(({ scene }) => scene);
  const planId = usePlanStore(({ planId }) => planId);
  const { state, stop, askAgain } = useAssembly(plan);
  const { ticks, tick, clear } = useStepTicks(planId);
  const shown = useStepPictures(scene, state.kind === 'done' ? state.answer : undefined, drawSteps);
  return (
    <Dialog title="Assembly sheet" onClose={onClose} wide>
      <div className="dialog-body assembly" aria-busy={state.kind === 'working'}>
        {state.kind === 'done' ? (
          <SheetPage
            answer={state.answer}
            ticks={ticks}
            pictures={shown.pictures}
            onTick={tick}
            onShow={onClose}
          />
        ) : (
          <Unfinished state={state} />
        )}
      </div>
      <div className="dialog-actions">
        {state.kind === 'working' && (
          <button type="button" className="button" onClick={stop}>
            Stop
          </button>
        )}
        {(state.kind === 'stopped' || state.kind === 'problem') && (
          <button type="button" className="button" onClick={askAgain}>
            Work it out
          </button>
        )}
        {state.kind === 'done' && (
          <>
            {shown.drawing && (
              <span className="quiet assembly-drawing" role="status">
                Drawing the steps, {shown.pictures.size} of {shown.wanted}…
              </span>
            )}
            <button type="button" className="button plain" disabled={ticks.size === 0} onClick={clear}>
              Clear the ticks
            </button>
            <button type="button" className="button" disabled={shown.drawing} onClick={() => window.print()}>
              Print
            </button>
          </>
        )}
      </div>
    </Dialog>
  );
}

function Unfinished({ state }: { readonly state: Exclude<AssemblyState, { readonly kind: 'done' }> }) {
  switch (state.kind) {
    case 'empty':
      return <p>Nothing is placed yet. Place an enclosure, a board and what goes on it; then come back.</p>;
    case 'stopped':
      return <p role="status">Stopped. Nothing of the plan has changed.</p>;
    case 'problem':
      return (
        <p role="alert" className="fault">
          This could not be worked out: {state.message}
        </p>
      );
    case 'working':
      return (
        <div className="assembly-progress">
          <p role="status">{PHASES[state.progress?.phase ?? 'machine']}</p>
          <progress aria-label="Assembly sheet" max={1} value={state.progress?.share ?? 0} />
        </div>
      );
  }
}
