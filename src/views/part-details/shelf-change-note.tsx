/** Says when a part of the plan is not what the shelf has any more, and offers to take that over. */
import { useEffect, useState } from 'react';
import type { PlanPart } from '../../../geometry';
import { entryOfPart, findShelfChange, type ShelfChange, takeOverFromShelf } from '../../shelf/shelf-change';
import { useRemarks, useShelf } from '../../shelf/use-shelf';
import { DifferenceList } from '../shelf-card/difference-list';

interface ShelfChangeNoteProps {
  readonly id: string;
  readonly part: PlanPart;
}

export function ShelfChangeNote({ id, part }: ShelfChangeNoteProps) {
  const shelf = useShelf();
  const remarks = useRemarks();
  const [change, setChange] = useState<ShelfChange>();
  const entry = entryOfPart(part, shelf, remarks);
  useEffect(() => {
    let wanted = true;
    setChange(undefined);
    if (entry)
      findShelfChange(part, entry).then(
        (found) => wanted && setChange(found),
        () => undefined,
      );
    return () => {
      wanted = false;
    };
  }, [part, entry]);
  if (!change) return null;
  return (
    <details className="shelf-change" open={change.changed === 'shelf'}>
      <summary>
        {change.changed === 'shelf'
          ? 'The part has changed on the shelf since it was put in.'
          : 'Its figures are not those of the shelf.'}
      </summary>
      <DifferenceList differences={change.differences} />
      <button type="button" className="button small" onClick={() => takeOverFromShelf(id, change.entry)}>
        Take over what the shelf has
      </button>
    </details>
  );
}
