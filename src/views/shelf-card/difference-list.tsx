/** Fields that differ between two sheets, each with what it was and what it is. */
import type { SpecDifference } from '../../shelf/spec-differences';

/** More are counted, not listed: nobody reads on. */
const MOST_SHOWN = 12;

export function DifferenceList({ differences }: { readonly differences: readonly SpecDifference[] }) {
  return (
    <ul className="difference-list">
      {differences.slice(0, MOST_SHOWN).map(({ path, title, before, after }) => (
        <li key={path}>
          {title}: <del>{before ?? 'nothing'}</del> <ins>{after ?? 'nothing'}</ins>
        </li>
      ))}
      {differences.length > MOST_SHOWN && <li>and {differences.length - MOST_SHOWN} more</li>}
    </ul>
  );
}
