/** One figure: its value and band at once; formula, inputs, assumptions and limit when unfolded. */
import { type Estimate, unitName, writeValue } from '../../../geometry';
import { FitMark, type Tone } from '../../ui/fit-mark';
import { bandText, effectText, inputText, standingWords, valueText } from './estimate-words';

const TONES: Readonly<Record<Estimate['standing'], Tone>> = {
  met: 'clearance',
  perhaps: 'transition',
  'not met': 'interference',
  unknown: 'note',
  'no limit': 'note',
};

/** Assumptions named with a figure; the weaker ones are counted. */
const STRONGEST = 6;

interface FigureProps {
  readonly estimate: Estimate;
  readonly currency: string;
}

export function FigureDetails({ estimate, currency }: FigureProps) {
  const { title, unknown, standing } = estimate;
  return (
    <details className="estimates-figure">
      <summary>
        <span>{title}</span>
        {unknown === undefined ? (
          <span className="estimates-value">
            <strong>{valueText(estimate, currency)}</strong>{' '}
            <span className="quiet">{bandText(estimate, currency)}</span>
          </span>
        ) : (
          <span className="estimates-value quiet">{unknown}</span>
        )}
        {standing !== 'no limit' && <FitMark tone={TONES[standing]} word={standingWords[standing]} worded />}
      </summary>
      <FigureReasons estimate={estimate} currency={currency} />
    </details>
  );
}

function FigureReasons({ estimate, currency }: FigureProps) {
  const { unit, formula, inputs, assumptions, missing, limit } = estimate;
  return (
    <dl className="estimates-reasons">
      <dt>How</dt>
      <dd>{formula}</dd>
      {limit && (
        <>
          <dt>Limit</dt>
          <dd>
            {limit.kind} {writeValue(limit.value, unit)}
            {unitName(unit, currency)}, {limit.from}
          </dd>
        </>
      )}
      {inputs.length > 0 && (
        <>
          <dt>From</dt>
          {[...new Set(inputs.map((input) => inputText(input, currency)))].map((text) => (
            <dd key={text}>{text}</dd>
          ))}
        </>
      )}
      {missing.length > 0 && (
        <>
          <dt>Missing</dt>
          {[...new Set(missing)].map((rating) => (
            <dd key={rating}>{rating}; an assumption stands in for it</dd>
          ))}
        </>
      )}
      {assumptions.length > 0 && (
        <>
          <dt>Assumed</dt>
          {assumptions.slice(0, STRONGEST).map((effect) => (
            <dd key={effect.id}>
              {effect.words}: {effectText(effect, unit, currency)}{' '}
              <span className="quiet">({effect.source})</span>
            </dd>
          ))}
          {assumptions.length > STRONGEST && (
            <dd className="quiet">and {assumptions.length - STRONGEST} weaker ones</dd>
          )}
        </>
      )}
    </dl>
  );
}
