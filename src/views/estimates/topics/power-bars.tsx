/** What every part draws, and all together for a while, on one scale with the lines that the supply sets. */
import { durationName, type PlanEstimates } from '../../../../geometry';

type Power = Pick<PlanEstimates['power'], 'bars' | 'rated' | 'excursions'>;

interface BarRow {
  readonly key: string;
  readonly label: string;
  readonly filled: number;
  /** End of the outline behind the fill. */
  readonly outlined?: number;
  /** What the supply allows here. */
  readonly limit?: number;
  readonly words: string;
}

const watts = (value: number) => `${Math.round(value)} W`;

function partRows({ bars }: Power): readonly BarRow[] {
  return [...bars]
    .sort((a, b) => b.sustained - a.sustained)
    .map(({ part, label, sustained, peak }) => ({
      key: part,
      label,
      filled: sustained,
      outlined: peak,
      words:
        Math.round(peak) > Math.round(sustained)
          ? `${watts(sustained)}, peak ${watts(peak)}`
          : watts(sustained),
    }));
}

function togetherRows({ excursions, rated }: Power): readonly BarRow[] {
  return excursions.map(({ microseconds, load, allowedShare }) => {
    const key = durationName(microseconds);
    const label = Number.isFinite(microseconds) ? `All for ${key}` : 'All for long';
    if (rated === undefined) return { key, label, filled: load, words: watts(load) };
    const limit = rated * allowedShare;
    const words = `${watts(load)} of ${watts(limit)}${load > limit ? ', too much' : ''}`;
    return { key, label, filled: load, limit, words };
  });
}

export function PowerBars({ power }: { readonly power: Power }) {
  const parts = partRows(power);
  if (parts.length === 0) return null;
  const together = togetherRows(power);
  const ends = [...parts, ...together].flatMap(({ filled, outlined, limit }) => [
    filled,
    outlined ?? 0,
    limit ?? 0,
  ]);
  const end = Math.max(power.rated ?? 0, ...ends);
  const { rated } = power;
  return (
    <figure className="estimates-bars">
      <figcaption className="quiet">
        Power by part: filled as sustained, outlined as peak.{' '}
        {rated === undefined
          ? 'The plan has no supply, so there is no line to stay below.'
          : `Line: the rating of the supply, ${watts(rated)}; for all parts together, what it must ride for that long.`}{' '}
        Estimates.
      </figcaption>
      <ul>
        {parts.map((row) => (
          <Bar key={row.key} row={row} end={end} line={rated} />
        ))}
      </ul>
      <ul>
        {together.map((row) => (
          <Bar key={row.key} row={row} end={end} line={row.limit} />
        ))}
      </ul>
    </figure>
  );
}

interface BarProps {
  readonly row: BarRow;
  /** Watts at the right end of the track. */
  readonly end: number;
  readonly line: number | undefined;
}

function Bar({ row: { label, filled, outlined, limit, words }, end, line }: BarProps) {
  const at = (value: number) => `${(100 * value) / end}%`;
  const over = limit !== undefined && filled > limit;
  return (
    <li className={over ? 'over' : undefined}>
      <span>{label}</span>
      <span className="estimates-track" aria-hidden="true">
        {outlined !== undefined && <span className="outline" style={{ width: at(outlined) }} />}
        <span className="fill" style={{ width: at(filled) }} />
        {line !== undefined && <span className="line" style={{ left: at(line) }} />}
      </span>
      <span className="number">{words}</span>
    </li>
  );
}
