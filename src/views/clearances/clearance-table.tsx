/** Every clearance a builder asks for, tightest first. Choosing a row puts its dimension line in the drawing. */
import { memo } from 'react';
import type { Clearance } from '../../../geometry';
import { openSheet, type SheetName } from '../../store/sheet-store';
import { bandAbout, useStackUp } from '../../store/study-store';
import { usePlanStore, useSolutionStore, useViewStore } from '../../store/use-store';
import { selectClearance } from '../../store/view-store';
import { FitMark } from '../../ui/fit-mark';
import { GapBar } from '../../ui/gap-bar';
import { formatMillimetres } from '../../ui/numbers';
import { clearanceMark } from '../findings/weight-tone';
import './clearance-table.css';

interface RowProps {
  readonly clearance: Clearance;
  readonly chosen: boolean;
}

const ClearanceRow = memo(function ClearanceRow({ clearance, chosen }: RowProps) {
  const { title, towards, millimetres, wanted, id } = clearance;
  const stackUp = useStackUp(id);
  const band = stackUp && bandAbout(clearance, stackUp);
  const { tone, word } = clearanceMark(clearance, band);
  const choose = () => selectClearance(chosen ? undefined : id);
  return (
    <tr className={`clearance-row ${tone}`} data-chosen={chosen} onClick={choose}>
      <th scope="row" className="clearance-title">
        <button
          type="button"
          aria-pressed={chosen}
          onClick={(event) => {
            event.stopPropagation();
            choose();
          }}
        >
          <span>{title}</span>
          <span className="quiet">{towards}</span>
        </button>
      </th>
      <td className="bar-cell">
        <GapBar millimetres={millimetres} wanted={wanted} tone={tone} band={band} />
        {stackUp && <span className="plus-minus">± {formatMillimetres(stackUp.rss)}</span>}
      </td>
      <td className="number">
        <span className="gap-value">
          <FitMark tone={tone} word={word} /> {formatMillimetres(millimetres)}
        </span>
        <span className="wanted">
          <span className="unseen">wanted </span>
          <span aria-hidden="true">≥ </span>
          {formatMillimetres(wanted)}
        </span>
      </td>
    </tr>
  );
});

export function ClearanceTable() {
  const clearances = useSolutionStore((state) => state.solution.clearances);
  const selected = useViewStore((state) => state.selectedClearance);
  const readOnly = usePlanStore((state) => state.readOnly);
  if (clearances.length === 0)
    return <p className="empty">No clearances yet: place a board, a cooler, a card.</p>;
  return (
    <>
      <table className="clearances">
        <caption className="unseen">Clearances in millimetres, tightest first</caption>
        <thead>
          <tr>
            <th scope="col" className="clearance-heading">
              Between
            </th>
            <th scope="col" className="clearance-heading bar-cell">
              <span className="unseen">Bar and tolerance</span>
            </th>
            <th scope="col" className="clearance-heading number">
              Gap, mm
              <span className="unseen"> and wanted gap</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {clearances.map((clearance) => (
            <ClearanceRow key={clearance.id} clearance={clearance} chosen={clearance.id === selected} />
          ))}
        </tbody>
      </table>
      <div className="clearance-tools">
        <SheetButton sheet="upgrade envelope" label="What would still go here" />
        <SheetButton sheet="assembly sheet" label="Assembly sheet" />
        <SheetButton sheet="estimates" label="Estimates" />
        {!readOnly && <SheetButton sheet="measure list" label="Measure these" />}
        {!readOnly && <SheetButton sheet="wanted gaps" label="Wanted gaps" />}
      </div>
    </>
  );
}

/** Nothing of a sheet is loaded before it is asked for. */
function SheetButton({ sheet, label }: { readonly sheet: SheetName; readonly label: string }) {
  return (
    <button type="button" className="button small" onClick={() => openSheet(sheet)}>
      {label}
    </button>
  );
}
