/** Which assumption to measure first. */

import type { EstimatesAnswer } from '../../../workers/estimates-request';
import { endsText } from '../estimate-words';

const SHOWN = 8;

/** How far the strongest assumption alone moves each figure at the head of a topic. */
export function StrongestTable({ strongest }: Pick<EstimatesAnswer, 'strongest'>) {
  return (
    <table className="estimates-table">
      <caption>
        The strongest assumption behind the figures asked for first, and its share of their bands
      </caption>
      <thead>
        <tr>
          <th scope="col">Figure</th>
          <th scope="col">Assumption, with its lowest and highest value</th>
          <th scope="col">Moves it, at its ends, by</th>
          <th scope="col" className="number">
            Share
          </th>
        </tr>
      </thead>
      <tbody>
        {strongest.map(({ estimate, title, unit, effect, share }) => (
          <tr key={estimate}>
            <th scope="row">{title}</th>
            <td>{effect.words}</td>
            <td>{endsText(effect, unit)}</td>
            <td className="number">{(100 * share).toFixed(0)} %</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

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
