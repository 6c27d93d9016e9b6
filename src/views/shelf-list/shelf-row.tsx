/** One part on the shelf. */
import { memo } from 'react';
import { kindName } from '../../../geometry';
import { keyDimension } from '../../shelf/key-dimension';
import type { ShelfEntry } from '../../shelf/shelf-entry';
import { dropOwnParts, restoreOwnParts } from '../../shelf/shelf-store';
import { placePart, swapPart } from '../../store/part-actions';
import { announce } from '../../store/status-store';
import { DragLabel } from './drag-label';
import type { ShelfDragPort } from './shelf-drag-port';
import { useRowDrag } from './use-row-drag';

interface ShelfRowProps {
  readonly entry: ShelfEntry;
  readonly drag: ShelfDragPort;
  /** Id of the selected part when it is of this kind. */
  readonly replaces: string | undefined;
}

export const ShelfRow = memo(function ShelfRow({ entry, drag, replaces }: ShelfRowProps) {
  const { spec, note } = entry;
  const { at, handlers } = useRowDrag(entry, drag);
  const name = `${spec.maker} ${spec.model}`;
  const forget = () =>
    void dropOwnParts([entry.id]).then(
      (dropped) =>
        announce(`${name} is off your shelf.`, { label: 'Undo', run: () => void restoreOwnParts(dropped) }),
      () => announce('The browser did not let the part go.'),
    );
  return (
    <li className="shelf-row" data-shelf-id={entry.id} title={note} {...handlers}>
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
      </span>
      <span className="shelf-actions">
        {entry.own && (
          <button
            type="button"
            className="button small plain"
            aria-label={`Take ${name} off your shelf`}
            onClick={forget}
          >
            Forget
          </button>
        )}
        {replaces !== undefined && (
          <button
            type="button"
            className="button small"
            aria-label={`Replace the selected part with ${name}`}
            onClick={() => swapPart(replaces, spec, entry.id)}
          >
            Replace
          </button>
        )}
        <button
          type="button"
          className="button small"
          aria-label={`Place ${name}`}
          onClick={() => placePart(spec, entry.id)}
        >
          Place
        </button>
      </span>
      {at && <DragLabel text={`${kindName(spec.kind)} ${spec.model}`} x={at.x} y={at.y} />}
    </li>
  );
});
