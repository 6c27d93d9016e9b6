/** Free travel of a part in all six directions, and what it would meet. */
import type { Direction } from '../../../geometry';
import { useSolutionStore } from '../../store/use-store';
import { formatMillimetres } from '../../ui/numbers';

const ORDER: readonly { readonly direction: Direction; readonly title: string }[] = [
  { direction: '-x', title: 'Rear' },
  { direction: '+x', title: 'Front' },
  { direction: '-y', title: 'Down' },
  { direction: '+y', title: 'Up' },
  { direction: '-z', title: 'Tray' },
  { direction: '+z', title: 'Side' },
];

export function RoomRound({ id }: { readonly id: string }) {
  const scene = useSolutionStore((state) => state.scene);
  const neighbours = useSolutionStore((state) => state.solution.neighbours);
  const own = neighbours.filter((neighbour) => neighbour.part === id);
  if (own.length === 0) return null;
  return (
    <section aria-label="Room round it">
      <h4 className="heading">Room round it, mm</h4>
      <dl className="room">
        {ORDER.map(({ direction, title }) => {
          const found = own.find((neighbour) => neighbour.direction === direction);
          const met = found?.to && scene.parts[scene.indexById.get(found.to.part) ?? -1]?.label;
          return (
            <div key={direction}>
              <dt>{title}</dt>
              <dd className="number">
                {found?.millimetres === undefined ? 'open' : formatMillimetres(found.millimetres)}
              </dd>
              {met && (
                <dd className="meets">
                  {met}
                  {found?.to?.box && found.to.box.toLowerCase() !== met.toLowerCase() && `, ${found.to.box}`}
                </dd>
              )}
            </div>
          );
        })}
      </dl>
    </section>
  );
}
