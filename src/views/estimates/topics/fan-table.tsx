/** Fans where they work. */
import type { FanPoint } from '../../../../geometry';

interface FanTableProps {
  readonly fans: readonly FanPoint[];
}

export function FanTable({ fans }: FanTableProps) {
  return (
    <table className="estimates-table">
      <caption>Fans where they work, estimates</caption>
      <thead>
        <tr>
          <th scope="col">Fan</th>
          <th scope="col" className="number">
            Of top speed
          </th>
          <th scope="col" className="number">
            Flow, m³/h
          </th>
          <th scope="col" className="number">
            Pressure, Pa
          </th>
        </tr>
      </thead>
      <tbody>
        {fans.map(({ stream, label, share, at }) => (
          <tr key={stream}>
            <th scope="row">{label}</th>
            <td className="number">{Math.round(share * 100)} %</td>
            <td className="number">{at.flow.toFixed(0)}</td>
            <td className="number">{at.pressure.toFixed(1).replace('-', '\u2212')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
