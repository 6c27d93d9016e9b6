/** Which assumption to measure first. */
import type { EstimatesAnswer } from '../../../workers/estimates-request';

const SHOWN = 8;

export function RankingTable({ ranking }: Pick<EstimatesAnswer, 'ranking'>) {
  return (
    <table className="estimates-table">
      <caption>
        What is assumed, the strongest first: the mean share of the bands of all figures that each answers for
      </caption>
      <thead>
        <tr>
          <th scope="col">Assumption, with its lowest and highest value</th>
          <th scope="col" className="number">
            Share
          </th>
        </tr>
      </thead>
      <tbody>
        {ranking.slice(0, SHOWN).map(({ id, words, share }) => (
          <tr key={id}>
            <th scope="row">{words}</th>
            <td className="number">{(100 * share).toFixed(0)} %</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
