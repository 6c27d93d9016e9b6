/** The assembly sheet over the page: found beside it, with progress, to be stopped, ticked and printed. */
import { useRef } from 'react';
import type { Plan, Scene } from '../../../geometry';
import type { StepPicturePort } from '../../store/step-pictures';
import { usePlanStore, useSolutionStore } from '../../store/use-store';
import { Dialog } from '../../ui/dialog';
import type { AssemblyPhase } from '../../workers/assembly-request';
import { SheetPage } from './sheet-page';
import { useStepTicks } from './step-ticks';
import { type AssemblyState, useAssembly } from './use-assembly';
import { type AnsweredPlan, useStepPictures } from './use-step-pictures';
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
  const last = useLastAnswer(planId, plan, scene, state);
  const answer = last?.answer;
  const shown = useStepPictures(last, drawSteps);
  return (
    <Dialog title="Assembly sheet" onClose={onClose} wide>
      <div className="dialog-body assembly" aria-busy={state.kind === 'working'}>
        {answer ? (
          <SheetPage answer={answer} ticks={ticks} pictures={shown.pictures} onTick={tick} onShow={onClose} />
        ) : (
          state.kind !== 'done' && <Unfinished state={state} />
        )}
      </div>
      <div className="dialog-actions">
        {state.kind === 'working' && answer && (
          <span className="quiet assembly-drawing" role="status">
            Working it out anew…
          </span>
        )}
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

/** The sheet stays while it is worked out anew after a small change, so that its effect is seen where it is made. */
function useLastAnswer(
  planId: string,
  plan: Plan,
  scene: Scene,
  state: AssemblyState,
): AnsweredPlan | undefined {
  const last = useRef<AnsweredPlan & { readonly planId: string }>(undefined);
  if (state.kind === 'done') {
    if (last.current?.answer !== state.answer)
      last.current = { planId, answer: state.answer, scene, parts: JSON.stringify(plan.parts) };
  } else if (state.kind !== 'working' || last.current?.planId !== planId) last.current = undefined;
  return last.current;
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
