/** What the plan would draw, blow, heat, sound, weigh and cost for a profile, as a sheet that can be printed. */
import { useRef, useState } from 'react';
import type { Profile } from '../../../geometry';
import { airStore } from '../../store/air-store';
import { useSolutionStore } from '../../store/use-store';
import { Dialog } from '../../ui/dialog';
import { useLightPaper } from '../../ui/use-light-paper';
import { loadNames, profileWords } from './estimate-words';
import { EstimatesSheet } from './estimates-sheet';
import { ProfileControls } from './profile-controls';
import { useEstimates } from './use-estimates';
import './estimates.css';
import './estimates-print.css';

export function EstimatesDialog({ onClose }: { readonly onClose: () => void }) {
  const plan = useSolutionStore((state) => state.plan);
  const [profile, setProfile] = useState<Profile>(() => {
    const { shown, profile: drawn } = airStore.getState();
    return shown ? drawn : { load: 'game' };
  });
  const { answer, busy, problem, askAgain } = useEstimates(plan, profile);
  const sheet = useRef<HTMLDivElement>(null);
  useLightPaper();
  const unfold = (open: boolean, which = 'details') => {
    for (const details of sheet.current?.querySelectorAll<HTMLDetailsElement>(which) ?? [])
      details.open = open;
  };
  const shown = answer !== undefined && !answer.empty;
  return (
    <Dialog title="Estimates" onClose={onClose} wide>
      <div className="dialog-body estimates" aria-busy={busy} ref={sheet}>
        <p>
          <strong>{plan.name}</strong>
          {plan.revision !== undefined && `, revision ${plan.revision}`}
          {plan.brief?.client !== undefined && `, for ${plan.brief.client}`}
          <span className="estimates-profile-printed">
            . {profileWords(plan, answer?.profile ?? profile)}
          </span>
        </p>
        <ProfileControls plan={plan} profile={profile} onChange={setProfile} />
        <p className="quiet">
          Every figure here is an estimate from a model with stated assumptions, not a measurement and no
          certificate. The band behind a figure says how far the assumptions can move it.
        </p>
        <p className="quiet estimates-status" role="status">
          {busy && (answer ? `Working out ${loadNames[profile.load].toLowerCase()}…` : 'Working it out…')}
        </p>
        {problem !== undefined && (
          <div className="estimates-problem">
            <p className="fault">This could not be worked out: {problem}.</p>
            <button type="button" className="button small" onClick={askAgain}>
              Try again
            </button>
          </div>
        )}
        {answer?.empty && (
          <p>There is nothing to estimate yet: place an enclosure, a board and a supply, and come back.</p>
        )}
        {shown && <EstimatesSheet answer={answer} plan={plan} />}
      </div>
      <div className="dialog-actions">
        <button
          type="button"
          className="button plain"
          disabled={!shown}
          onClick={() => unfold(true, '.estimates-topic')}
        >
          Unfold topics
        </button>
        <button type="button" className="button plain" disabled={!shown} onClick={() => unfold(true)}>
          Unfold all
        </button>
        <button type="button" className="button plain" disabled={!shown} onClick={() => unfold(false)}>
          Fold all
        </button>
        <button type="button" className="button" disabled={!shown || busy} onClick={() => window.print()}>
          Print
        </button>
      </div>
    </Dialog>
  );
}
