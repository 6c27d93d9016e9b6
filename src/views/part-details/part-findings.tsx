/** What the solver says about one part, each line a way to that finding. */

import type { Weight } from '../../../geometry';
import { useSolutionStore } from '../../store/use-store';
import { selectFinding } from '../../store/view-store';
import { FitMark } from '../../ui/fit-mark';
import { keepUnits } from '../../ui/numbers';
import { weightTone } from '../findings/weight-tone';

interface PartFindingsProps {
  readonly id: string;
  readonly title: string;
  readonly weights: readonly Weight[];
}

export function PartFindings({ id, title, weights }: PartFindingsProps) {
  const findings = useSolutionStore((state) => state.solution.findings);
  const own = findings.filter((finding) => weights.includes(finding.weight) && finding.parts.includes(id));
  if (own.length === 0) return null;
  return (
    <section className="part-findings">
      <h4 className="heading">{title}</h4>
      <ul>
        {own.map((finding) => (
          <li key={finding.id}>
            <button type="button" className="finding-row" onClick={() => selectFinding(finding.id)}>
              <FitMark tone={weightTone(finding.weight)} word={finding.weight} />
              <span>{keepUnits(finding.sentence)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
