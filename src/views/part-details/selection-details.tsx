/** Details of whatever is selected: a part, a clearance or a finding. */
import { useSolutionStore, useViewStore } from '../../store/use-store';
import { ClearanceCard } from '../clearances/clearance-card';
import { FindingCard } from '../findings/finding-card';
import { PartDetails } from './part-details';
import './selection-details.css';

export function SelectionDetails() {
  const partId = useViewStore((state) => state.selectedPart);
  const clearanceId = useViewStore((state) => state.selectedClearance);
  const findingId = useViewStore((state) => state.selectedFinding);
  const part = useSolutionStore(({ scene }) =>
    partId === undefined ? undefined : scene.parts[scene.indexById.get(partId) ?? -1],
  );
  const clearance = useSolutionStore(({ solution }) =>
    clearanceId === undefined ? undefined : solution.clearances.find((one) => one.id === clearanceId),
  );
  const finding = useSolutionStore(({ solution }) =>
    findingId === undefined ? undefined : solution.findings.find((one) => one.id === findingId),
  );
  if (part) return <PartDetails key={part.id} part={part} />;
  if (clearance) return <ClearanceCard clearance={clearance} />;
  if (finding) return <FindingCard finding={finding} />;
  return (
    <p className="empty">
      {findingId !== undefined || clearanceId !== undefined
        ? 'What was selected is no longer there.'
        : 'Select a part, a clearance or a finding to see it here.'}
    </p>
  );
}
