/** One clearance: the number, the two faces that set it, the direction, the gap wanted. */
import type { Clearance } from '../../../geometry';
import { editPlan } from '../../store/plan-store';
import { usePlanStore, useSolutionStore } from '../../store/use-store';
import { FitMark } from '../../ui/fit-mark';
import { NumberField } from '../../ui/number-field';
import { formatMillimetres } from '../../ui/numbers';
import { clearanceMark } from '../findings/weight-tone';
import { PartLinks } from '../part-details/part-links';
import { directionWords } from './direction-words';
import { faceWords } from './face-words';

export function ClearanceCard({ clearance }: { readonly clearance: Clearance }) {
  const scene = useSolutionStore((state) => state.scene);
  const readOnly = usePlanStore((state) => state.readOnly);
  const { title, towards, millimetres, wanted, rule } = clearance;
  const mark = clearanceMark(clearance);
  const want = (value: number) => editPlan((plan) => ({ ...plan, gaps: { ...plan.gaps, [rule]: value } }));
  return (
    <article className="card" aria-label="Selected clearance">
      <div className="card-heading">
        <h3>
          {title} {towards}
        </h3>
        <FitMark {...mark} worded />
      </div>
      <p>{clearance.sentence}</p>
      <dl className="card-faces">
        <dt>Gap</dt>
        <dd className="number">{formatMillimetres(millimetres)} mm</dd>
        <dt>From</dt>
        <dd>{faceWords(scene, clearance.from)}</dd>
        <dt>To</dt>
        <dd>{faceWords(scene, clearance.to)}</dd>
        <dt>Along</dt>
        <dd>{directionWords(clearance.direction)}</dd>
      </dl>
      {!readOnly && (
        <section aria-label="Wanted gap">
          <NumberField
            label={`Wanted gap, ${rule}`}
            value={wanted}
            unit="mm"
            min={0}
            max={200}
            step={0.5}
            onChange={want}
          />
        </section>
      )}
      <PartLinks ids={clearance.parts} />
    </article>
  );
}
