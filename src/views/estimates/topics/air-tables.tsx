/** Air in tables: who breathes whose exhaust, room before the fans, what the arrows of the drawing stand for. */
import type { AirPicture, Breath, BreathingSpace } from '../../../../geometry';

const kelvins = (value: number) => value.toFixed(1);

export function BreathTable({ breaths }: { readonly breaths: readonly Breath[] }) {
  return (
    <table className="estimates-table">
      <caption>Who breathes whose exhaust: what each adds to the air taken in, K, estimates</caption>
      <thead>
        <tr>
          <th scope="col">Intake of</th>
          <th scope="col" className="number">
            Over the room, K
          </th>
          <th scope="col">From</th>
        </tr>
      </thead>
      <tbody>
        {breaths.map(({ device, label, rise, fromRoom, from }) => (
          <tr key={device}>
            <th scope="row">{label}</th>
            <td className="number">{kelvins(rise)}</td>
            <td>
              {from
                .slice(0, 4)
                .map(({ part, label: source, kelvins: by }) =>
                  part === device ? `its own heat ${kelvins(by)}` : `${source} ${kelvins(by)}`,
                )
                .concat(fromRoom > 0.05 ? [`air blown out and drawn in again ${kelvins(fromRoom)}`] : [])
                .join(', ')}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function SpaceTable({ spaces }: { readonly spaces: readonly BreathingSpace[] }) {
  if (spaces.length === 0) return null;
  return (
    <table className="estimates-table">
      <caption>Breathing space before fans that draw from the inside</caption>
      <thead>
        <tr>
          <th scope="col">Fan</th>
          <th scope="col" className="number">
            Free before it, mm
          </th>
          <th scope="col" className="number">
            Wanted, mm
          </th>
          <th scope="col" className="number">
            Flow, m³/h
          </th>
        </tr>
      </thead>
      <tbody>
        {spaces.map(({ stream, label, gap, seen, wanted, blocked, flow }) => (
          <tr key={stream}>
            <th scope="row">{label}</th>
            <td className="number">
              {gap >= 0.98 * seen ? `over ${Math.floor(seen)}` : gap.toFixed(1)}
              <span className={gap < wanted ? 'fault' : 'quiet'}>
                {blocked
                  ? ', against closed sheet'
                  : gap < wanted / 2
                    ? ', starved'
                    : gap < wanted
                      ? ', narrow'
                      : ', free'}
              </span>
            </td>
            <td className="number">{wanted.toFixed(1)}</td>
            <td className="number">{flow.toFixed(0)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Arrows at fans and openings; those inside are left to the drawing. */
export function ArrowTable({ picture }: { readonly picture: AirPicture }) {
  const arrows = picture.arrows.filter(({ kind }) => kind !== 'inside');
  if (arrows.length === 0) return null;
  return (
    <details className="estimates-more">
      <summary>Air through every fan and opening, as the arrows in the drawing show it</summary>
      <table className="estimates-table">
        <caption>Estimates</caption>
        <thead>
          <tr>
            <th scope="col">At</th>
            <th scope="col">Goes</th>
            <th scope="col" className="number">
              Flow, m³/h
            </th>
            <th scope="col" className="number">
              Air, °C
            </th>
          </tr>
        </thead>
        <tbody>
          {arrows.map(({ label, along, flow, celsius, at }) => (
            <tr key={`${label} ${at.join(' ')}`}>
              <th scope="row">{label}</th>
              <td>{wayWords(along)}</td>
              <td className="number">{flow.toFixed(1)}</td>
              <td className="number">{celsius.toFixed(0)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

function wayWords([x, y, z]: readonly [number, number, number]): string {
  const ways = [
    [x, 'to the front', 'to the rear'],
    [y, 'upwards', 'downwards'],
    [z, 'to the panel side', 'to the tray side'],
  ] as const;
  const [size, ahead, back] = ways.reduce((most, one) => (Math.abs(one[0]) > Math.abs(most[0]) ? one : most));
  return size >= 0 ? ahead : back;
}
