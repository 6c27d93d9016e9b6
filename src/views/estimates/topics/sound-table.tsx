/** What sounds, loudest first, and fans that may beat against one another. */
import type { EstimatesAnswer } from '../../../workers/estimates-request';

type Running = NonNullable<EstimatesAnswer['running']>;

export function SoundTable({ sounds, beating }: Pick<Running, 'sounds' | 'beating'>) {
  if (sounds.length === 0) return null;
  return (
    <>
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
              <td className="number">{share === undefined ? '–' : `${Math.round(share * 100)} %`}</td>
              <td className="number">{atOneMetre.toFixed(0)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {beating.length > 0 && (
        <p>
          Alike and at nearly one speed, so they may beat against one another:{' '}
          {beating.map(([one, other]) => `${one} and ${other}`).join('; ')}. A few per cent between their
          speeds moves the beat out of hearing.
        </p>
      )}
    </>
  );
}
