/** The gaps under a drooping card, as placed, with the tip as low as its weight puts it, and with a prop. */
import { FitMark } from '../../../ui/fit-mark';
import { formatMillimetres } from '../../../ui/numbers';
import type { DroopRow } from '../../../workers/estimates-request';

export function DroopTable({ droops }: { readonly droops: readonly DroopRow[] }) {
  if (droops.length === 0) return null;
  return (
    <table className="estimates-table">
      <caption>Gaps under a card whose tip sinks, mm, estimates</caption>
      <thead>
        <tr>
          <th scope="col">Gap</th>
          <th scope="col" className="number">
            As placed
          </th>
          <th scope="col" className="number">
            Tip sunk
          </th>
          <th scope="col" className="number">
            With a prop
          </th>
          <th scope="col" className="number">
            Wanted
          </th>
        </tr>
      </thead>
      <tbody>
        {droops.map(({ card, title, placed, sunk, propped, wanted }) => (
          <tr key={`${card} ${title}`}>
            <th scope="row">{title}</th>
            <td className="number">{formatMillimetres(placed)}</td>
            <td className="number">
              {formatMillimetres(sunk)}{' '}
              {sunk < 0 ? (
                <FitMark tone="interference" word="touches" worded />
              ) : (
                sunk < wanted &&
                placed >= wanted && <FitMark tone="transition" word="less than wanted" worded />
              )}
            </td>
            <td className="number">{formatMillimetres(propped)}</td>
            <td className="number">{formatMillimetres(wanted)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
