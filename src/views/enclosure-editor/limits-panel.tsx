/** From a layout and what a maker publishes to an enclosure, with a report on how each wall was found. */
import { useEffect, useMemo, useState } from 'react';
import {
  enclosureFromLimits,
  type FoundFace,
  type PublishedLimits,
  publishedLimitsSchema,
} from '../../../geometry';
import { describeSchema } from '../part-form/describe-schema';
import { asObject, type Draft, toDraft, toValue } from '../part-form/draft';
import { FieldEditor } from '../part-form/field-editor';
import { type FilledValue, fillDraft } from '../part-form/fill-draft';
import type { FormHandle } from '../part-form/part-form';

const field = describeSchema(publishedLimitsSchema);

const START: PublishedLimits = {
  layout: 'upright tower',
  boardForm: 'microATX',
  slots: 4,
  supply: 'ATX',
};

interface LimitsPanelProps {
  readonly form: FormHandle;
  /** Read from a pasted sheet. */
  readonly pasted?: readonly FilledValue[] | undefined;
}

/** The form keeps the names that stand in it. */
const NAMELESS = { maker: '-', model: '-' } as const;

export function LimitsPanel({ form, pasted }: LimitsPanelProps) {
  const [draft, setDraft] = useState<Draft>(() => toDraft(field, START));
  useEffect(() => {
    if (pasted) setDraft((before) => fillDraft(field, before, pasted).draft);
  }, [pasted]);
  const read = useMemo(() => publishedLimitsSchema.safeParse(toValue(field, draft)), [draft]);
  const faults = useMemo(
    () =>
      new Map(
        read.success
          ? []
          : read.error.issues.map(({ path, message }) => [`limits.${path.join('.')}`, message]),
      ),
    [read],
  );
  const built = read.success ? enclosureFromLimits(read.data, NAMELESS) : undefined;
  if (field.type !== 'object') return null;
  const values = asObject(draft);
  return (
    <div className="limits-panel">
      <p className="quiet">
        Fill in what the maker states and leave the rest empty. Nothing typed: the layout with usual sizes,
        every wall assumed, to be measured.
      </p>
      <div className="form-fields">
        {field.fields.map(([key, inner]) => (
          <FieldEditor
            key={key}
            field={inner}
            draft={values[key]}
            path={`limits.${key}`}
            faults={faults}
            onChange={(next) => setDraft({ ...values, [key]: next })}
          />
        ))}
      </div>
      {built && built.problems.length > 0 && (
        <ul className="fault" role="alert">
          {built.problems.map((problem) => (
            <li key={problem}>{problem}</li>
          ))}
        </ul>
      )}
      {built && <FaceReport faces={built.faces} />}
      <div className="buttons">
        <button
          type="button"
          className="button strong"
          disabled={!built || built.problems.length > 0}
          onClick={() => built && form.replace(built.spec)}
        >
          Build the enclosure
        </button>
      </div>
    </div>
  );
}

const foundWords: Readonly<Record<FoundFace['found'], string>> = {
  limit: 'from a limit',
  'outer size': 'from the outer size',
  standard: 'from the standard',
  assumed: 'unknown, assumed',
};

function FaceReport({ faces }: { readonly faces: readonly FoundFace[] }) {
  const unknown = faces.filter(({ found }) => found === 'assumed').length;
  return (
    <table className="face-report">
      <caption>
        {unknown === 0
          ? 'All six inner faces are found.'
          : `${unknown} of six inner faces ${unknown === 1 ? 'is' : 'are'} still unknown: measure ${unknown === 1 ? 'it' : 'them'}.`}
      </caption>
      <thead>
        <tr>
          <th scope="col">Inner face</th>
          <th scope="col">Found</th>
          <th scope="col">How</th>
          <th scope="col">±, mm</th>
        </tr>
      </thead>
      <tbody>
        {faces.map(({ face, found, how, plusMinus, outerSays }) => (
          <tr key={face} data-found={found}>
            <th scope="row">{face}</th>
            <td>
              {found === 'assumed' && <span aria-hidden="true">○ </span>}
              {foundWords[found]}
            </td>
            <td>
              {how}
              {outerSays !== undefined && <span className="quiet">{outerWords(outerSays)}</span>}
            </td>
            <td className="number">{plusMinus.toFixed(1)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Nearer than this the two sources agree, mm. */
const AGREE_MM = 1.5;

function outerWords(difference: number): string {
  if (Math.abs(difference) <= AGREE_MM) return '; the outer size agrees';
  return difference > 0
    ? `; the outer size leaves ${difference.toFixed(1)} mm more, so something else may end the limit`
    : `; the outer size leaves ${(-difference).toFixed(1)} mm less than the limit needs`;
}
