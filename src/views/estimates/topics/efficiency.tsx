/** Efficiency of the supply over its load, and where it works. */
import type { EfficiencyCurve } from '../../../../geometry';
import { LineChart } from '../chart/line-chart';

const percent = (share: number) => `${(share * 100).toFixed(0)} %`;

export function Efficiency({ curve, rated }: { readonly curve: EfficiencyCurve; readonly rated: number }) {
  const { at, mains, samples } = curve;
  const least = Math.floor(Math.min(...samples.map(({ efficiency }) => efficiency)) * 20) / 20;
  const words = `${at.output.toFixed(0)} W out, ${at.wall.toFixed(0)} W from the wall, ${percent(at.efficiency)}`;
  const shown = [0.1, 0.2, 0.5, 1].flatMap((share) => {
    const nearest = samples.find(({ output }) => Math.abs(output - share * rated) < 1e-6);
    return nearest ? [nearest] : [];
  });
  return (
    <figure className="estimates-figure-block">
      <figcaption>
        Efficiency of the supply on {mains} V.{' '}
        <span className="quiet">At this load: {words}. Between the certified points, an estimate.</span>
      </figcaption>
      <LineChart
        says={`Efficiency of the supply against what it gives; at this load ${words}.`}
        x={{ label: 'Out of the supply, W', from: 0, to: rated, write: (value) => value.toFixed(0) }}
        y={{ label: 'Out over in', from: least, to: 1, write: percent }}
        lines={[
          {
            id: 'efficiency',
            label: 'Efficiency',
            stroke: 'first',
            points: samples.map(({ output, efficiency }) => ({ x: output, y: efficiency })),
          },
        ]}
        dots={[{ x: at.output, y: at.efficiency, label: percent(at.efficiency) }]}
        height={180}
      />
      <table className="estimates-table">
        <caption>Supply, estimates</caption>
        <thead>
          <tr>
            <th scope="col">Of its rating</th>
            <th scope="col" className="number">
              Out, W
            </th>
            <th scope="col" className="number">
              From the wall, W
            </th>
            <th scope="col" className="number">
              Efficiency
            </th>
          </tr>
        </thead>
        <tbody>
          {[...shown, at].map((row) => (
            <tr key={row.output}>
              <th scope="row">
                {percent(row.output / rated)}
                {row === at && ', this load'}
              </th>
              <td className="number">{row.output.toFixed(0)}</td>
              <td className="number">{row.wall.toFixed(0)}</td>
              <td className="number">{percent(row.efficiency)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </figure>
  );
}
