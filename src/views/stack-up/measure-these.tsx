/** What measuring would be worth for the clearance that is looked at: which dimensions decide it. */
import { useMemo } from 'react';
import type { Measurement } from '../../../geometry';
import { usePlanStore } from '../../store/use-store';
import { useStudyAnswer } from '../../store/use-study-answer';
import { promiseWords, worthWords } from './measuring-words';
import { dimensionName } from './sum-rows';

interface MeasureTheseProps {
  readonly clearance: string;
  /** Someone wants to type what they measured. */
  readonly onChoose: (measurement: Measurement) => void;
}

export function MeasureThese({ clearance, onChoose }: MeasureTheseProps) {
  const plan = usePlanStore((state) => state.plan);
  const dragging = usePlanStore((state) => state.preview !== undefined);
  const request = useMemo(
    () => (dragging ? undefined : ({ topic: 'worth measuring', plan } as const)),
    [plan, dragging],
  );
  const { answer } = useStudyAnswer(request);
  const worth = answer?.find((one) => one.clearance === clearance);
  if (!worth) return null;
  return (
    <section className="measure-these" aria-label="What to measure">
      <p>{promiseWords(worth)}</p>
      <ol>
        {worth.measurements.map((measurement) => (
          <li key={`${measurement.part}/${measurement.path}`}>
            <button type="button" className="term" onClick={() => onChoose(measurement)}>
              <span className="term-title">{dimensionName(measurement)}</span>
              <span className="term-source quiet">{worthWords(measurement)}</span>
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}
