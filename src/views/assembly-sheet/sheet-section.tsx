/** A part of the sheet under its heading, and the one that says why a plan cannot be put together. */
import { type ReactNode, useId } from 'react';
import type { KnotReport } from '../../../geometry';
import { inWords } from './sheet-words';

interface SectionProps {
  readonly title: string;
  readonly children: ReactNode;
}

export function Section({ title, children }: SectionProps) {
  const heading = useId();
  return (
    <section className="assembly-section" aria-labelledby={heading}>
      <h3 id={heading} className="heading">
        {title}
      </h3>
      {children}
    </section>
  );
}

interface KnotSectionProps {
  readonly problem: string | undefined;
  readonly knot: KnotReport | undefined;
  readonly unitNames: Readonly<Record<string, string>>;
  /** Called with a unit of the knot, to see in the drawing what it meets. */
  readonly onPlay: (unit: string) => void;
}

export function KnotSection({ problem, knot, unitNames, onPlay }: KnotSectionProps) {
  const named = (units: readonly string[]) => inWords(units.map((unit) => unitNames[unit] ?? unit));
  return (
    <Section title="This plan cannot be put together">
      {knot === undefined || knot.knots.length === 0 ? (
        <p className="fault">{problem ?? 'No order was found.'}</p>
      ) : (
        knot.knots.map(({ units, sentence, pairs }) => (
          <div key={units.join(' ')} className="assembly-knot">
            <p className="fault">{sentence}</p>
            <ul>
              {pairs.map((pair) => (
                <li key={pair}>{pair}</li>
              ))}
            </ul>
            <div className="buttons">
              {units.map((unit) => (
                <button key={unit} type="button" className="button small" onClick={() => onPlay(unit)}>
                  How far {unitNames[unit] ?? unit} comes
                </button>
              ))}
            </div>
          </div>
        ))
      )}
      {knot !== undefined && (knot.freeing.length > 0 || knot.openings.length > 0) && (
        <p>
          <strong>The way out.</strong> {knot.openings.join(' ')}{' '}
          {knot.freeing.map((units) => `Without ${named(units)} the rest goes together.`).join(' ')} Change it
          or move it, and ask again.
        </p>
      )}
      {knot !== undefined && knot.waiting.length > 0 && (
        <p className="quiet">Only waiting for that: {named(knot.waiting)}.</p>
      )}
    </Section>
  );
}
