/** One finding: the sentence, the number, the faces, what could be done. */
import { lazy, Suspense } from 'react';
import type { Finding } from '../../../geometry';
import { usePlanStore, useSolutionStore } from '../../store/use-store';
import { FitMark } from '../../ui/fit-mark';
import { formatMillimetres, keepUnits } from '../../ui/numbers';
import { directionWords } from '../clearances/direction-words';
import { faceWords } from '../clearances/face-words';
import { PartLinks } from '../part-details/part-links';
import { weightTone } from './weight-tone';

const WhatToChange = lazy(() =>
  import('../what-to-change/what-to-change').then((module) => ({ default: module.WhatToChange })),
);

export function FindingCard({ finding }: { readonly finding: Finding }) {
  const scene = useSolutionStore((state) => state.scene);
  const readOnly = usePlanStore((state) => state.readOnly);
  const { weight, kind, sentence, millimetres, volume, escape: wayFree, faces, waysOut, parts } = finding;
  return (
    <article className="card" aria-label="Selected finding">
      <div className="card-heading">
        <h3>{kind.charAt(0).toUpperCase() + kind.slice(1)}</h3>
        <FitMark tone={weightTone(weight)} word={weight} worded />
      </div>
      <p>{keepUnits(sentence)}</p>
      <dl className="card-faces">
        {millimetres !== undefined && (
          <>
            <dt>{millimetres < 0 ? 'Overlap' : 'Gap'}</dt>
            <dd className="number">{formatMillimetres(Math.abs(millimetres))} mm</dd>
          </>
        )}
        {volume !== undefined && (
          <>
            <dt>Volume</dt>
            <dd className="number">{(volume / 1000).toFixed(1)} cm³</dd>
          </>
        )}
        {faces.map((face, index) => (
          <FaceLine key={`${face.part}/${face.box}/${face.face ?? ''}`} title={index === 0 ? 'From' : 'To'}>
            {faceWords(scene, face)}
          </FaceLine>
        ))}
        {wayFree && (
          <FaceLine title="Free by">
            {formatMillimetres(wayFree.distance)} mm {directionWords(wayFree.direction)}
          </FaceLine>
        )}
      </dl>
      {waysOut.length > 0 && (
        <section>
          <h4 className="heading">Ways out</h4>
          <ul className="ways-out">
            {waysOut.map((way) => (
              <li key={way}>{keepUnits(way)}</li>
            ))}
          </ul>
        </section>
      )}
      {!readOnly && weight !== 'note' && (
        <Suspense>
          <WhatToChange key={finding.id} target={finding.id} parts={parts} />
        </Suspense>
      )}
      <PartLinks ids={parts} />
    </article>
  );
}

function FaceLine({ title, children }: { readonly title: string; readonly children: React.ReactNode }) {
  return (
    <>
      <dt>{title}</dt>
      <dd>{children}</dd>
    </>
  );
}
