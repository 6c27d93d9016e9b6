/**
 * Sound and heat as one question: how fast may the fans turn for the noise wish, and what does that do to
 * temperatures. Two drawings over the same axis, and the same numbers in a table.
 */
import type { ReactNode } from 'react';
import type { EstimatesAnswer } from '../../../workers/estimates-request';
import { LineChart, type Stroke } from '../chart/line-chart';

type Running = NonNullable<EstimatesAnswer['running']>;

interface SpeedAnswerProps {
  readonly running: Running;
  /** Of the brief, dB. */
  readonly wish: number | undefined;
  /** Where on the axis the machine is now; nothing where it has no case fan and no cap is set. */
  readonly now: { readonly at: number; readonly label: string } | undefined;
}

const STROKES: readonly Stroke[] = ['first', 'second', 'third'];
const percent = (share: number) => `${Math.round(share * 100)} %`;
const degrees = (celsius: number | undefined) =>
  celsius === undefined ? 'unknown' : `${celsius.toFixed(0)} °C`;

export function SpeedAnswer({ running, wish, now }: SpeedAnswerProps) {
  const { sweep, watched } = running;
  if (sweep.length < 2) return null;
  return (
    <figure className="estimates-figure-block">
      <figcaption>
        <p>
          <strong>{answerWords(running, wish)}</strong>
        </p>
        <p className="quiet">
          Sound and heat are solved together: slower case fans make the air inside warmer, the card then turns
          its own fans up, and the sum may get louder again. Estimates.
        </p>
      </figcaption>
      <SpeedCharts running={running} wish={wish} now={now} />
      <table className="estimates-table">
        <caption>For each speed of case fans and cap on cooler fans, estimates</caption>
        <thead>
          <tr>
            <th scope="col">Of top speed</th>
            <th scope="col" className="number">
              Sound, dB
            </th>
            {watched.map(({ part, label }) => (
              <th key={part} scope="col" className="number">
                {label}, °C
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sweep.map(({ share, level, temperatures }) => (
            <tr key={share}>
              <th scope="row">{percent(share)}</th>
              <td className="number">
                {level === undefined ? '–' : level.toFixed(1)}
                {wish !== undefined && level !== undefined && level > wish && <Over>over the wish</Over>}
              </td>
              {watched.map(({ part, limit }) => {
                const celsius = temperatures[part];
                return (
                  <td key={part} className="number">
                    {celsius === undefined ? '–' : celsius.toFixed(0)}
                    {celsius !== undefined && celsius > limit && <Over>over its limit</Over>}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </figure>
  );
}

function Over({ children }: { readonly children: ReactNode }) {
  return <span className="fault"> {children}</span>;
}

function SpeedCharts({ running: { sweep, watched, speeds }, wish, now }: SpeedAnswerProps) {
  const levels = sweep.flatMap(({ share, level }) => (level === undefined ? [] : [{ x: share, y: level }]));
  const lines = watched.slice(0, STROKES.length).map(({ part, label }, i) => ({
    id: part,
    label,
    stroke: STROKES[i] ?? 'first',
    points: sweep.flatMap(({ share, temperatures }) => {
      const celsius = temperatures[part];
      return celsius === undefined ? [] : [{ x: share, y: celsius }];
    }),
  }));
  const limits = watched.map(({ label, limit }) => ({
    at: limit,
    label: `limit of the ${label.toLowerCase()}`,
  }));
  const [least, most] = [sweep[0]?.share ?? 0, sweep.at(-1)?.share ?? 1];
  const x = { label: 'Of top speed', from: least, to: most, write: percent };
  const uprights = [
    ...(now ? [now] : []),
    ...(speeds.kind === 'met' ? [{ at: speeds.point.share, label: 'for the wish' }] : []),
  ].filter(({ at }) => at >= least && at <= most);
  const warm = rangeOf([
    ...lines.flatMap(({ points }) => points.map(({ y }) => y)),
    ...limits.map(({ at }) => at),
  ]);
  const loud = rangeOf([...levels.map(({ y }) => y), ...(wish === undefined ? [] : [wish])]);
  return (
    <>
      {lines.length > 0 && (
        <LineChart
          says={`Temperatures against fan speed: ${lines
            .map(
              ({ label, points }) =>
                `${label} ${degrees(points[0]?.y)} at the slowest, ${degrees(points.at(-1)?.y)} at full speed`,
            )
            .join('; ')}.`}
          x={x}
          y={{ label: 'Temperature, °C', ...warm, write: (value) => value.toFixed(0) }}
          lines={lines}
          levels={limits}
          uprights={uprights}
        />
      )}
      {levels.length > 1 && (
        <LineChart
          says={`Sound against fan speed: ${levels[0]?.y.toFixed(0)} dB at the slowest, ${levels.at(-1)?.y.toFixed(0)} dB at full speed.`}
          x={x}
          y={{ label: 'Sound at the ear, dB', ...loud, write: (value) => value.toFixed(0) }}
          lines={[{ id: 'sound', label: 'All together', stroke: 'first', points: levels }]}
          levels={wish === undefined ? [] : [{ at: wish, label: `wish, ${wish} dB` }]}
          uprights={uprights}
          height={190}
        />
      )}
    </>
  );
}

/** A little room round what is drawn. */
function rangeOf(values: readonly number[]): { readonly from: number; readonly to: number } {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = Math.max((most - least) * 0.12, 1);
  return { from: Math.floor(least - room), to: Math.ceil(most + room) };
}

function answerWords({ speeds, watched }: Running, wish: number | undefined): string {
  const hot = (temperatures: Readonly<Record<string, number>>) =>
    watched.map(({ part, label }) => `${label} ${degrees(temperatures[part])}`).join(', ');
  if (speeds.kind === 'unknown') return `The speed for the noise wish is unknown, because ${speeds.because}.`;
  if (speeds.kind === 'not met')
    return `No fan speed meets ${wish ?? ''} dB: at its quietest, fans at ${percent(speeds.quietest.share)}, it makes ${speeds.quietest.level?.toFixed(0) ?? '?'} dB.`;
  const { share, level, temperatures } = speeds.point;
  return `${wish ?? ''} dB is met with case and cooler fans at up to ${percent(share)} of top speed: ${level?.toFixed(0) ?? '?'} dB, ${hot(temperatures)}.`;
}
