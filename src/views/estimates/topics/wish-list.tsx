/** What the brief asks for, each with the figure that answers it. */
import type { WishRow } from '../../../../geometry';
import { FitMark, type Tone } from '../../../ui/fit-mark';

const TONES: Readonly<Record<WishRow['standing'], Tone>> = {
  met: 'clearance',
  perhaps: 'transition',
  'not met': 'interference',
  unknown: 'note',
};

export function WishList({ wishes }: { readonly wishes: readonly WishRow[] }) {
  return (
    <ul className="estimates-wishes">
      {wishes.map(({ id, wish, standing, says }) => (
        <li key={id}>
          <span>{wish}</span>
          <FitMark tone={TONES[standing]} word={standing} worded />
          <span className="quiet">{says}</span>
        </li>
      ))}
    </ul>
  );
}
