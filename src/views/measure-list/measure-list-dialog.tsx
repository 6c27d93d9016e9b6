/** Everything undecided in the plan, and what to measure to decide it: a list to take to the bench. */
import { useMemo, useState } from 'react';
import type { Measurement, WorthMeasuring } from '../../../geometry';
import { usePlanStore, useSolutionStore } from '../../store/use-store';
import { useStudyAnswer } from '../../store/use-study-answer';
import { Dialog } from '../../ui/dialog';
import { formatMillimetres } from '../../ui/numbers';
import { MeasureForm } from '../stack-up/measure-form';
import { promiseWords, questionWords, worthWords } from '../stack-up/measuring-words';
import { dimensionName } from '../stack-up/sum-rows';
import '../stack-up/stack-up.css';
import './measure-list.css';

export function MeasureListDialog({ onClose }: { readonly onClose: () => void }) {
  const plan = usePlanStore((state) => state.plan);
  const request = useMemo(() => ({ topic: 'worth measuring', plan }) as const, [plan]);
  const { answer, busy, problem } = useStudyAnswer(request);
  return (
    <Dialog title="Measure these" onClose={onClose}>
      <div className="dialog-body measure-list" aria-busy={busy}>
        {problem !== undefined && <p className="fault">This could not be worked out: {problem}.</p>}
        {!answer && busy && <p role="status">Looking for what is undecided…</p>}
        {answer?.length === 0 && (
          <p>Nothing is undecided: every wanted gap is kept, or missed, for certain.</p>
        )}
        {answer?.map((worth) => (
          <Undecided key={worth.clearance} worth={worth} />
        ))}
      </div>
    </Dialog>
  );
}

function Undecided({ worth }: { readonly worth: WorthMeasuring }) {
  const clearance = useSolutionStore(({ solution }) =>
    solution.clearances.find(({ id }) => id === worth.clearance),
  );
  const [least, most] = worth.band.map(formatMillimetres);
  return (
    <section>
      <h3>
        {clearance ? `${clearance.title} ${clearance.towards}` : worth.clearance}
        <span className="number">
          {formatMillimetres(worth.nominal)}{' '}
          <span className="quiet">
            ({least} to {most})
          </span>
        </span>
      </h3>
      <p>
        {questionWords(worth)} {promiseWords(worth)}
      </p>
      <ol>
        {worth.measurements.map((measurement) => (
          <MeasurementRow key={`${measurement.part}/${measurement.path}`} measurement={measurement} />
        ))}
      </ol>
    </section>
  );
}

function MeasurementRow({ measurement }: { readonly measurement: Measurement }) {
  const [open, setOpen] = useState(false);
  const { datum } = measurement;
  return (
    <li>
      <button type="button" className="term" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span className="term-title">{dimensionName(measurement)}</span>
        <span className="number">{formatMillimetres(measurement.nominal)}</span>
        <span className="term-source quiet">
          {worthWords(measurement)}
          {datum !== undefined && `; ${datum}`}
        </span>
      </button>
      {open && <MeasureForm dimension={measurement} onDone={() => setOpen(false)} />}
    </li>
  );
}
