/** One clearance: the number, the sum behind it, the two faces that set it, the direction, the gap wanted. */
import { lazy, Suspense } from 'react';
import type { Clearance } from '../../../geometry';
import { bandAbout, useStackUp } from '../../store/study-store';
import { usePlanStore, useSolutionStore } from '../../store/use-store';
import { wantGap } from '../../store/wanted-gap';
import { FitMark } from '../../ui/fit-mark';
import { NumberField } from '../../ui/number-field';
import { formatMillimetres, keepUnits } from '../../ui/numbers';
import { clearanceMark } from '../findings/weight-tone';
import { PartLinks } from '../part-details/part-links';
import { directionWords } from './direction-words';
import { faceWords } from './face-words';

const WhatToChange = lazy(() =>
  import('../what-to-change/what-to-change').then((module) => ({ default: module.WhatToChange })),
);
const StackUpSection = lazy(() =>
  import('../stack-up/stack-up-section').then((module) => ({ default: module.StackUpSection })),
);

export function ClearanceCard({ clearance }: { readonly clearance: Clearance }) {
  const scene = useSolutionStore((state) => state.scene);
  const readOnly = usePlanStore((state) => state.readOnly);
  const { title, towards, millimetres, wanted, rule } = clearance;
  const stackUp = useStackUp(clearance.id);
  const mark = clearanceMark(clearance, stackUp && bandAbout(clearance, stackUp));
  return (
    <article className="card" aria-label="Selected clearance">
      <div className="card-heading">
        <h3>
          {title} {towards}
        </h3>
        <FitMark {...mark} worded />
      </div>
      <p>{keepUnits(clearance.sentence)}</p>
      <Suspense fallback={<p className="quiet">Looking for the dimensions behind it…</p>}>
        <StackUpSection clearance={clearance} />
      </Suspense>
      {clearance.limit !== undefined && <p className="limit">{clearance.limit}</p>}
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
            onChange={(value) => wantGap(rule, value)}
          />
        </section>
      )}
      {!readOnly && millimetres < wanted && (
        <Suspense>
          <WhatToChange key={clearance.id} target={clearance.id} parts={clearance.parts} />
        </Suspense>
      )}
      <PartLinks ids={clearance.parts} />
    </article>
  );
}
