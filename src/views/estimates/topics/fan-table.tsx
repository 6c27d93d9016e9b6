/** Fans where they work. */
import type { FanPoint } from '../../../../geometry';
import { fanName } from './fan-name';

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
        {fans.map((fan) => (
          <tr key={fan.stream}>
            <th scope="row">{fanName(fans, fan)}</th>
            <td className="number">{Math.round(fan.share * 100)} %</td>
            <td className="number">{fan.at.flow.toFixed(0)}</td>
            <td className="number">{fan.at.pressure.toFixed(1).replace('-', '\u2212')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
