/** What a client sees behind a snapshot link: the plan, read-only, in plain words. */
import type { ReactNode } from 'react';
import { keyDimension } from '../../shelf/key-dimension';
import { usePlanStore, useSolutionStore } from '../../store/use-store';
import { countOf } from '../../ui/numbers';
import { ClearanceTable } from '../clearances/clearance-table';
import { FindingsList } from '../findings/findings-list';
import { VerdictLine } from '../top-bar/verdict-line';
import { BriefNotes } from './brief-notes';
import './client-page.css';

interface ClientPageProps {
  readonly onTakeCopy: () => void;
  readonly onOpenOwn: () => void;
  readonly onPrint: () => void;
  /** The drawing with its bar. */
  readonly children: ReactNode;
}

export function ClientPage({ onTakeCopy, onOpenOwn, onPrint, children }: ClientPageProps) {
  const plan = usePlanStore((state) => state.plan);
  const parts = useSolutionStore((state) => state.scene.parts);
  const findings = useSolutionStore((state) => state.solution.findings);
  return (
    <div className="client">
      <header className="client-head">
        <div className="client-name">
          <span className="quiet">Elbowroom, a snapshot to read</span>
          <h1>
            {plan.name}
            {plan.revision && <span className="quiet"> revision {plan.revision}</span>}
          </h1>
        </div>
        <VerdictLine />
        <div className="client-actions buttons">
          <button type="button" className="button" onClick={onPrint}>
            Print
          </button>
          <button type="button" className="button" onClick={onOpenOwn}>
            Open my own plans
          </button>
          <button type="button" className="button strong" onClick={onTakeCopy}>
            Take a copy
          </button>
        </div>
      </header>
      <main className="client-main">
        <section className="client-drawing" aria-label="Drawing">
          {children}
        </section>
        <div className="client-words">
          <p className="client-caution">
            Every figure here is an estimate from published standards and spec sheets. Measure before
            ordering.
          </p>
          <BriefNotes brief={plan.brief} notes={plan.notes} />
          <section aria-labelledby="client-findings">
            <h2 id="client-findings">
              {findings.length === 0 ? 'Findings' : countOf(findings.length, 'finding')}
            </h2>
            <FindingsList />
          </section>
          <section aria-labelledby="client-clearances">
            <h2 id="client-clearances">Clearances</h2>
            <ClearanceTable />
          </section>
          <section aria-labelledby="client-parts">
            <h2 id="client-parts">{countOf(parts.length, 'part')}</h2>
            <table className="client-parts">
              <thead>
                <tr>
                  <th scope="col" className="column-title">
                    Part
                  </th>
                  <th scope="col" className="column-title">
                    Maker and model
                  </th>
                  <th scope="col" className="column-title">
                    Main figure
                  </th>
                </tr>
              </thead>
              <tbody>
                {parts.map((part) => (
                  <tr key={part.id}>
                    <th scope="row">{part.label}</th>
                    <td>
                      {part.spec.maker} {part.spec.model}
                    </td>
                    <td>{keyDimension(part.spec)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
        </div>
      </main>
    </div>
  );
}
