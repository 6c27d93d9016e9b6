/** Another of the same kind in its place, in one step. A shelf of thousands is searched in the shelf list instead. */
import type { PlacedPart } from '../../../geometry';
import { keyDimension } from '../../shelf/key-dimension';
import { useShelf } from '../../shelf/use-shelf';
import { swapPart } from '../../store/part-actions';

/** A menu that is longer is not read, and holds the page up. */
const MOST_OFFERED = 200;

interface ReplaceSelectProps {
  readonly part: PlacedPart;
  readonly shelfId: string | undefined;
}

export function ReplaceSelect({ part, shelfId }: ReplaceSelectProps) {
  const entries = useShelf().filter((entry) => entry.spec.kind === part.kind);
  if (entries.length === 0) return null;
  const offered = entries.slice(0, MOST_OFFERED);
  const current = offered.some((entry) => entry.id === shelfId) ? shelfId : '';
  return (
    <label className="labelled">
      <span>Replace with</span>
      <select
        className="select"
        value={current}
        onChange={(event) => {
          const entry = entries.find((candidate) => candidate.id === event.target.value);
          if (entry) swapPart(part.id, entry.spec, entry.id);
        }}
      >
        {current === '' && <option value="">As typed: {part.spec.model}</option>}
        {offered.map(({ id, spec }) => (
          <option key={id} value={id}>
            {spec.model}, {keyDimension(spec)}
          </option>
        ))}
      </select>
    </label>
  );
}
