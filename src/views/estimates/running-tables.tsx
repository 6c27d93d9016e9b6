/** Fans where they work, and what sounds, loudest first. */
import type { FanRow, SoundRow } from '../../workers/estimates-request';

const percent = (share: number) => `${Math.round(share * 100)} %`;

export function FanTable({ fans }: { readonly fans: readonly FanRow[] }) {
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
        {fans.map(({ stream, label, share, flow, pressure }) => (
          <tr key={stream}>
            <th scope="row">{label}</th>
            <td className="number">{percent(share)}</td>
            <td className="number">{flow.toFixed(0)}</td>
            <td className="number">{pressure.toFixed(1).replace('-', '\u2212')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function SoundTable({ sounds }: { readonly sounds: readonly SoundRow[] }) {
  return (
    <table className="estimates-table">
      <caption>What sounds, loudest first, estimates</caption>
      <thead>
        <tr>
          <th scope="col">Source</th>
          <th scope="col" className="number">
            Of top speed
          </th>
          <th scope="col" className="number">
            At 1 m, dB
          </th>
        </tr>
      </thead>
      <tbody>
        {sounds.map(({ id, label, share, atOneMetre, starved }) => (
          <tr key={id}>
            <th scope="row">
              {label}
              {starved && <span className="quiet">, starved of air</span>}
            </th>
            <td className="number">{share === undefined ? '–' : percent(share)}</td>
            <td className="number">{atOneMetre.toFixed(0)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
