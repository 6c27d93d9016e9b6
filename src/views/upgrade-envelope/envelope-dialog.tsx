/** What would still go here: the largest thing for every mount, filled or empty, as a sheet that can be printed. */
import { useMemo } from 'react';
import type { MountEnvelope } from '../../../geometry';
import { useSolutionStore } from '../../store/use-store';
import { useStudyAnswer } from '../../store/use-study-answer';
import { Dialog } from '../../ui/dialog';
import { formatMillimetres } from '../../ui/numbers';
import { useLightPaper } from '../../ui/use-light-paper';
import { envelopeGroups, occupant } from './envelope-groups';
import { atMost, behindWords, bindingWords, largest } from './limit-words';
import './envelope.css';

export function EnvelopeDialog({ onClose }: { readonly onClose: () => void }) {
  const plan = useSolutionStore((state) => state.plan);
  const request = useMemo(() => ({ topic: 'envelope', plan }) as const, [plan]);
  const { answer, busy, problem } = useStudyAnswer(request);
  useLightPaper();
  return (
    <Dialog title="What would still go here" onClose={onClose} wide>
      <section
        className="dialog-body envelope"
        aria-label="Largest sizes"
        aria-busy={busy}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be within reach of the keyboard.
        tabIndex={0}
      >
        <p className="envelope-plan">
          <strong>{plan.name}</strong>
          {plan.revision !== undefined && `, revision ${plan.revision}`}
          {plan.brief?.client !== undefined && `, for ${plan.brief.client}`}
        </p>
        <p className="quiet">
          Largest sizes in mm that keep every wanted gap, each size for itself, all else as planned. “By the
          sheet” holds when every part is exactly as its sheet says; “for certain” whatever pieces one gets.
        </p>
        {problem !== undefined && <p className="fault">This could not be worked out: {problem}.</p>}
        {!answer && busy && <p role="status">Trying every mount…</p>}
        {answer && <EnvelopeTable mounts={answer} />}
      </section>
      <div className="dialog-actions">
        <button type="button" className="button" disabled={!answer} onClick={() => window.print()}>
          Print
        </button>
      </div>
    </Dialog>
  );
}

function EnvelopeTable({ mounts }: { readonly mounts: readonly MountEnvelope[] }) {
  return (
    <table className="envelope-table">
      <thead>
        <tr>
          <th scope="col">Size</th>
          <th scope="col" className="number">
            Now
          </th>
          <th scope="col" className="number">
            By the sheet
          </th>
          <th scope="col" className="number">
            For certain
          </th>
          <th scope="col">What binds</th>
          <th scope="col">Without that</th>
        </tr>
      </thead>
      {envelopeGroups(mounts).map(({ title, mounts: ofKind }) =>
        ofKind.map((mount, index) => (
          <tbody key={`${mount.on}/${mount.mount}`}>
            <MountRows mount={mount} kindTitle={index === 0 ? title : undefined} />
          </tbody>
        )),
      )}
    </table>
  );
}

interface MountRowsProps {
  readonly mount: MountEnvelope;
  /** Before the first mount of a kind. */
  readonly kindTitle: string | undefined;
}

function MountRows({ mount, kindTitle }: MountRowsProps) {
  const scene = useSolutionStore((state) => state.scene);
  const there = occupant(scene, mount);
  return (
    <>
      {kindTitle !== undefined && (
        <tr>
          <th scope="rowgroup" colSpan={6} className="envelope-kind heading">
            {kindTitle}
          </th>
        </tr>
      )}
      <tr>
        <th scope="rowgroup" colSpan={6} className="envelope-mount">
          {mount.label} <span className="quiet">{there ?? 'empty'}</span>
        </th>
      </tr>
      {mount.blockedBy !== undefined && (
        <tr>
          <td colSpan={6}>Nothing goes here: {mount.blockedBy} stands in the way.</td>
        </tr>
      )}
      {mount.limits.map((limit) => {
        const most = largest(limit);
        return (
          <tr key={limit.path}>
            <th scope="row" title={limit.datum === undefined ? undefined : `Measured ${limit.datum}`}>
              {limit.title}
            </th>
            <td className="number">{there === undefined ? '' : formatMillimetres(limit.standing)}</td>
            <td className="number most">{most === undefined ? '> 1000' : atMost(most)}</td>
            <td className="number">
              {limit.withTolerance === undefined ? '–' : atMost(limit.withTolerance)}
            </td>
            <td>{bindingWords(limit)}</td>
            <td>{behindWords(limit)}</td>
          </tr>
        );
      })}
    </>
  );
}
