/** The brief in a client's words; nothing when there is none. */
import type { Brief } from '../../../geometry';

interface BriefNotesProps {
  readonly brief: Brief | undefined;
  readonly notes: string | undefined;
}

export function BriefNotes({ brief = {}, notes }: BriefNotesProps) {
  const { client, purpose, budget, currency, roomTemperature, noiseWish, stands, upgrades } = brief;
  const rows: readonly (readonly [string, string | undefined])[] = [
    ['For', client],
    ['Purpose', purpose],
    ['Budget', budget === undefined ? undefined : `${budget.toLocaleString()} ${currency ?? ''}`],
    ['Room', roomTemperature === undefined ? undefined : `${roomTemperature} °C`],
    ['Noise wish', noiseWish && `at most ${noiseWish.decibels} dB at ${noiseWish.metres} m`],
    ['Stands', stands],
    ['Keep open', upgrades?.join('; ')],
    ['Notes', notes],
  ];
  const given = rows.filter(([, value]) => value !== undefined && value !== '');
  if (given.length === 0) return null;
  return (
    <section aria-labelledby="client-brief">
      <h2 id="client-brief">Brief</h2>
      <dl className="brief-notes">
        {given.map(([title, value]) => (
          <div key={title}>
            <dt>{title}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
