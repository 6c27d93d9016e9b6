/** One part on the shelf. */
import { memo } from 'react';
import { kindName } from '../../../geometry';
import { keyDimension } from '../../shelf/key-dimension';
import { verdictStore } from '../../shelf/seat-verdicts';
import type { ShelfEntry } from '../../shelf/shelf-entry';
import { remark } from '../../shelf/shelf-store';
import { placePart, swapPart } from '../../store/part-actions';
import { announce } from '../../store/status-store';
import type { Remarks } from '../../store/stored-records';
import { DragLabel } from './drag-label';
import { SeatLine } from './seat-line';
import type { ShelfDragPort } from './shelf-drag-port';
import { useRowDrag } from './use-row-drag';
import { ROW_HEIGHT } from './use-row-window';

interface ShelfRowProps {
  readonly entry: ShelfEntry;
  readonly remarks: Remarks | undefined;
  readonly index: number;
  readonly count: number;
  /** Of all rows, this is the one whose buttons the Tab key reaches. */
  readonly isActive: boolean;
  readonly drag: ShelfDragPort;
  /** Id of the selected part when it is of this kind. */
  readonly replaces: string | undefined;
  readonly onFocus: (index: number) => void;
  readonly onOpen: (entry: ShelfEntry) => void;
}

/** Where its verdict says that it would sit. */
function place({ id, spec }: ShelfEntry, remarks: Remarks | undefined): void {
  const verdict = verdictStore.getState().verdicts.get(id);
  const placement = verdict?.fresh ? verdict.placement : undefined;
  const price = remarks?.price;
  placePart(spec, id, { ...(placement ? { placement } : {}), ...(price ? { price } : {}) });
}

function setFavourite({ id, spec }: ShelfEntry, favourite: boolean): void {
  remark(id, ({ favourite: _, ...others }) => (favourite ? { ...others, favourite } : others)).then(
    () => announce(`${spec.model} is ${favourite ? 'one of' : 'no longer among'} your favourites.`),
    () => announce('The browser keeps no data for this page, so that could not be kept.'),
  );
}

export const ShelfRow = memo(function ShelfRow(props: ShelfRowProps) {
  const { entry, remarks, index, count, isActive, drag, replaces, onFocus, onOpen } = props;
  const { spec, note } = entry;
  const { at, handlers } = useRowDrag(entry, drag);
  const name = `${spec.maker} ${spec.model}`;
  const favourite = remarks?.favourite === true;
  const tabIndex = isActive ? 0 : -1;
  return (
    <li
      className="shelf-row"
      data-shelf-id={entry.id}
      data-index={index}
      aria-setsize={count}
      aria-posinset={index + 1}
      title={note}
      style={{ transform: `translateY(${index * ROW_HEIGHT}px)` }}
      onFocus={() => onFocus(index)}
      {...handlers}
    >
      <span className="shelf-grip" aria-hidden="true">
        <svg width="8" height="14" viewBox="0 0 8 14" aria-hidden="true">
          <path d="M2 2h.01M6 2h.01M2 7h.01M6 7h.01M2 12h.01M6 12h.01" />
        </svg>
      </span>
      <span className="shelf-name">
        <span>{spec.model}</span>
        <span className="quiet">
          {kindName(spec.kind)}, {keyDimension(spec)}
          {entry.generic ? ', by the standard' : ''}
          {entry.own ? ', your own' : ''}
        </span>
        <SeatLine id={entry.id} />
      </span>
      <span className="shelf-actions">
        <button
          type="button"
          className="button small icon plain"
          data-action="favourite"
          tabIndex={tabIndex}
          aria-pressed={favourite}
          aria-label={`Favourite: ${name}`}
          onClick={() => setFavourite(entry, !favourite)}
        >
          <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
            <path d="M8 1.8l1.9 3.9 4.3.6-3.1 3 .7 4.3L8 11.6l-3.8 2 .7-4.3-3.1-3 4.3-.6z" />
          </svg>
        </button>
        <button
          type="button"
          className="button small"
          data-action="open"
          tabIndex={tabIndex}
          aria-label={`Card of ${name}`}
          onClick={() => onOpen(entry)}
        >
          Card
        </button>
        {replaces !== undefined && (
          <button
            type="button"
            className="button small"
            data-action="replace"
            tabIndex={tabIndex}
            aria-label={`Replace the selected part with ${name}`}
            onClick={() => swapPart(replaces, spec, entry.id)}
          >
            Replace
          </button>
        )}
        <button
          type="button"
          className="button small"
          data-action="place"
          tabIndex={tabIndex}
          aria-label={`Place ${name}`}
          onClick={() => place(entry, remarks)}
        >
          Place
        </button>
      </span>
      {at && <DragLabel text={`${kindName(spec.kind)} ${spec.model}`} x={at.x} y={at.y} />}
    </li>
  );
});
