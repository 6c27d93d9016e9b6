/** Everything the solver has to say, worst first, as sentences. Choosing one shows it in the drawing. */

import { memo } from 'react';
import type { Finding } from '../../../geometry';
import { useSolutionStore, useViewStore } from '../../store/use-store';
import { selectFinding } from '../../store/view-store';
import { FitMark } from '../../ui/fit-mark';
import { keepUnits } from '../../ui/numbers';
import { weightTone } from './weight-tone';
import './findings-list.css';

const FindingRow = memo(function FindingRow({ finding, chosen }: { finding: Finding; chosen: boolean }) {
  return (
    <li>
      <button
        type="button"
        className="finding-row"
        aria-pressed={chosen}
        onClick={() => selectFinding(chosen ? undefined : finding.id)}
      >
        <FitMark tone={weightTone(finding.weight)} word={finding.weight} />
        <span>
          {keepUnits(finding.sentence)}
          {finding.waysOut[0] && <span className="way-out">{keepUnits(finding.waysOut[0])}</span>}
        </span>
      </button>
    </li>
  );
});

export function FindingsList() {
  const findings = useSolutionStore((state) => state.solution.findings);
  const selected = useViewStore((state) => state.selectedFinding);
  if (findings.length === 0) return <p className="empty">Nothing found: no overlap, nothing covered.</p>;
  return (
    <ul aria-label="Findings">
      {findings.map((finding) => (
        <FindingRow key={finding.id} finding={finding} chosen={finding.id === selected} />
      ))}
    </ul>
  );
}
