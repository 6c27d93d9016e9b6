/** What the solver says about one part, each line a way to that finding. */

import { useSolutionStore } from '../../store/use-store';
import { selectFinding } from '../../store/view-store';
import { FitMark } from '../../ui/fit-mark';
import { weightTone } from '../findings/weight-tone';

export function PartFindings({ id }: { readonly id: string }) {
  const findings = useSolutionStore((state) => state.solution.findings);
  const own = findings.filter((finding) => finding.parts.includes(id));
  if (own.length === 0) return null;
  return (
    <section aria-label="Findings of this part" className="part-findings">
      <ul>
        {own.map((finding) => (
          <li key={finding.id}>
            <button type="button" className="finding-row" onClick={() => selectFinding(finding.id)}>
              <FitMark tone={weightTone(finding.weight)} word={finding.weight} />
              <span>{finding.sentence}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
