/** One lead by hand: pin it to places, and see what that does to its length; type the length it really has. */
import { type LeadWaypoint, length, type RoutedLead, subtract, type Vector3 } from '../../../geometry';
import { measureLead, pinLead } from '../../store/lead-actions';
import { NumberField } from '../../ui/number-field';
import { isRouted, upperFirst } from './sheet-words';

interface LeadEditorProps {
  readonly lead: RoutedLead;
  readonly waypoints: readonly LeadWaypoint[];
}

/** As many as the plan keeps. */
const MOST_PINS = 6;

export function LeadEditor({ lead, waypoints }: LeadEditorProps) {
  const name = upperFirst(lead.name);
  const pin = (pins: readonly Vector3[]) =>
    pinLead(
      lead.id,
      name,
      pins.map(([x, y, z]) => [x, y, z]),
    );
  const free = waypoints.filter(({ at }) => !lead.pins.some((other) => isSamePlace(at, other)));
  return (
    <div className="lead-editor">
      {lead.pins.length > 0 && (
        <ol aria-label={`${name} is led through`}>
          {lead.pins.map((at, k) => (
            <li key={at.join(' ')}>
              {placeName(at, waypoints)}
              <button
                type="button"
                className="button plain small"
                aria-label={`Let go of ${placeName(at, waypoints)}`}
                onClick={() => pin(lead.pins.filter((_, other) => other !== k))}
              >
                Let go
              </button>
            </li>
          ))}
        </ol>
      )}
      {lead.unpinned !== undefined && <p>{pinEffect(lead)}</p>}
      {free.length > 0 && lead.pins.length < MOST_PINS && (
        <label className="labelled">
          <span>Lead it through</span>
          <select
            className="select"
            value=""
            onChange={(event) => {
              const chosen = free.find(({ name }) => name === event.target.value);
              if (chosen) pin([...lead.pins, chosen.at]);
            }}
          >
            <option value="">Choose a place…</option>
            {free.map(({ name }) => (
              <option key={name} value={name}>
                {upperFirst(name)}
              </option>
            ))}
          </select>
        </label>
      )}
      <div className="lead-length">
        <NumberField
          label={lead.measured ? 'Length, measured' : 'Length, usual'}
          value={lead.available}
          unit="mm"
          min={20}
          max={3000}
          step={10}
          onChange={(value) => measureLead(lead.id, name, value)}
        />
        {lead.measured && (
          <button
            type="button"
            className="button small"
            onClick={() => measureLead(lead.id, name, undefined)}
          >
            Usual length
          </button>
        )}
      </div>
    </div>
  );
}

/** What the pins cost, in words. */
export function pinEffect(lead: Pick<RoutedLead, 'points' | 'needed' | 'unpinned'>): string {
  if (!isRouted(lead)) return 'No way was found through these places.';
  const more = Math.round(lead.needed - (lead.unpinned ?? lead.needed));
  if (more === 0) return 'The pins change nothing about the length it needs.';
  return more > 0
    ? `The pins make it need ${more} mm more.`
    : `With the pins it needs ${-more} mm less than the way found without.`;
}

function isSamePlace(a: Vector3, b: Vector3): boolean {
  return length(subtract(a, b)) < 0.1;
}

/** Pins of another enclosure, or moved since, have no name any more. */
function placeName(at: Vector3, waypoints: readonly LeadWaypoint[]): string {
  const known = waypoints.find((waypoint) => isSamePlace(waypoint.at, at));
  return known ? upperFirst(known.name) : `The point ${at.map((value) => value.toFixed(0)).join(', ')}`;
}
