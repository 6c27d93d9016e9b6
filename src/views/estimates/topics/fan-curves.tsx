/** One fan at a time: what it gives, what the machine asks, and where the two meet. */
import { useState } from 'react';
import type { FanPoint } from '../../../../geometry';
import { LineChart } from '../chart/line-chart';
import { fanName } from './fan-name';
import { FanTable } from './fan-table';

interface FanCurvesProps {
  readonly fans: readonly FanPoint[];
}

const whole = (value: number) => value.toFixed(0);
const tenth = (value: number) => value.toFixed(value < 10 ? 1 : 0);

export function FanCurves({ fans }: FanCurvesProps) {
  const [chosen, setChosen] = useState<string>();
  const fan = fans.find(({ stream }) => stream === chosen) ?? fans[0];
  if (!fan) return null;
  const { at, share } = fan;
  const most = Math.max(at.flow, ...fan.fan.map(({ flow }) => flow));
  const highest = Math.max(at.pressure, ...fan.fan.map(({ pressure }) => pressure), 0.1);
  const speed = `${Math.round(share * 100)} %`;
  const meets = `${tenth(at.flow)} m³/h at ${tenth(at.pressure)} Pa`;
  return (
    <figure className="estimates-figure-block">
      <figcaption>
        <label className="estimates-pick">
          <span>Fan curve and system curve of</span>
          <select
            className="select"
            value={fan.stream}
            onChange={(event) => setChosen(event.target.value)}
            aria-label="Fan shown"
          >
            {fans.map((one) => (
              <option key={one.stream} value={one.stream}>
                {fanName(fans, one)}
              </option>
            ))}
          </select>
        </label>
        <p className="quiet">
          At {speed} of top speed it works at {meets}. What the machine asks grows with the square of the
          flow. An estimate.
        </p>
      </figcaption>
      <LineChart
        says={`${fanName(fans, fan)} at ${speed} of top speed: the fan curve falls from ${tenth(fan.fan[0]?.pressure ?? 0)} Pa shut off to ${whole(most)} m³/h free; the system curve rises through the working point, ${meets}.`}
        x={{ label: 'Flow, m³/h', from: 0, to: most, write: whole }}
        y={{ label: 'Pressure, Pa', from: 0, to: highest * 1.1, write: tenth }}
        lines={[
          { id: 'fan', label: 'Fan gives', stroke: 'first', points: pointsOf(fan.fan, highest) },
          { id: 'system', label: 'Machine asks', stroke: 'second', points: pointsOf(fan.system, highest) },
        ]}
        dots={[{ x: at.flow, y: Math.max(at.pressure, 0), label: meets }]}
      />
      <FanTable fans={fans} />
    </figure>
  );
}

/** Cut where they leave the drawing. */
function pointsOf(samples: FanPoint['fan'], highest: number) {
  return samples
    .filter(({ pressure }) => pressure >= -0.01 && pressure <= highest * 1.1)
    .map(({ flow, pressure }) => ({ x: flow, y: pressure }));
}
