/** What a fan more, fewer, turned round or slowed would do: the machine run again for each. */
import type { EstimatesAnswer, FanChangeRow } from '../../../workers/estimates-request';

type Running = NonNullable<EstimatesAnswer['running']>;

const MINUS = '\u2212';

/** '+2.1', '−0.4', '0' */
function signed(by: number): string {
  const text = Math.abs(by).toFixed(1);
  if (text === '0.0') return '0';
  return `${by < 0 ? MINUS : '+'}${text}`;
}

const plain = (value: number, digits: number) => value.toFixed(digits).replace('-', MINUS);

export function ChangeTable({ changes, watched }: Pick<Running, 'changes' | 'watched'>) {
  if (changes.length === 0) return null;
  return (
    <>
      <p>{bestWords(changes)}</p>
      <table className="estimates-table">
        <caption>What changes if a fan is turned round, slowed, left out or added, estimates</caption>
        <thead>
          <tr>
            <th scope="col">Change</th>
            {watched.map(({ part, label }) => (
              <th key={part} scope="col" className="number">
                {label}, K
              </th>
            ))}
            <th scope="col" className="number">
              Sound, dB
            </th>
            <th scope="col" className="number">
              Drawn in, m³/h
            </th>
            <th scope="col" className="number">
              Inside, Pa
            </th>
          </tr>
        </thead>
        <tbody>
          {changes.map(({ id, what, temperatures, level, drawn, pressure, inTheWay }) => (
            <tr key={id}>
              <th scope="row">
                {capital(what)}
                {inTheWay !== undefined && <span className="fault"> overlaps {inTheWay}</span>}
              </th>
              {watched.map(({ part }) => {
                const row = temperatures.find((one) => one.part === part);
                return (
                  <td key={part} className="number">
                    {row ? signed(row.by) : '–'}
                  </td>
                );
              })}
              <td className="number">{level ? signed(level.by) : '–'}</td>
              <td className="number">{signed(drawn.by)}</td>
              <td className="number">{plain(pressure, 2)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

/** A change smaller than this is none: K for temperatures, dB for sound. */
const WORTH = 0.5;

/** The change that cools the processor most without making the machine louder, in words. */
function bestWords(changes: readonly FanChangeRow[]): string {
  const cooling = changes
    .filter(({ inTheWay, level }) => inTheWay === undefined && (level?.by ?? 0) < WORTH)
    .flatMap(({ what, temperatures, level }) => {
      const [first] = temperatures;
      const worst = Math.max(...temperatures.map(({ by }) => by));
      return first && first.by < -WORTH && worst < WORTH ? [{ what, first, level }] : [];
    })
    .sort((a, b) => a.first.by - b.first.by);
  const [best] = cooling;
  if (!best)
    return 'No single change of a fan tried here cools the machine by more than half a degree without more noise.';
  const sound = best.level ? ` and ${signed(best.level.by)} dB` : '';
  return `${capital(best.what)} would help most: ${best.first.label} ${signed(best.first.by)} K${sound}, an estimate.`;
}
