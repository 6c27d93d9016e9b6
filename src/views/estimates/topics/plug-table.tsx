/** Plugs the parts want against plugs the supply offers; what is missing is said by name. */
import type { PlanEstimates } from '../../../../geometry';

type PlugTableProps = Pick<PlanEstimates['power'], 'plugs' | 'sharedLeads'>;

export function PlugTable({ plugs, sharedLeads }: PlugTableProps) {
  if (plugs.length === 0) return null;
  const said = [
    ...plugs.flatMap(({ sentence }) => sentence ?? []),
    ...sharedLeads.map(({ sentence }) => sentence),
  ];
  return (
    <>
      <table className="estimates-table">
        <caption>Plugs</caption>
        <thead>
          <tr>
            <th scope="col">Plug</th>
            <th scope="col">Wanted by</th>
            <th scope="col" className="number">
              Wanted
            </th>
            <th scope="col" className="number">
              Offered
            </th>
            <th scope="col" className="number">
              Missing
            </th>
          </tr>
        </thead>
        <tbody>
          {plugs.map(({ type, wanted, offered, missing }) => (
            <tr key={type}>
              <th scope="row">{type}</th>
              <td>{[...new Set(wanted.map(({ by }) => by))].join(', ')}</td>
              <td className="number">{wanted.length}</td>
              <td className="number">{offered}</td>
              <td className={missing > 0 ? 'number fault' : 'number'}>{missing}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {said.map((sentence) => (
        <p key={sentence} className="fault">
          {sentence}
        </p>
      ))}
    </>
  );
}
