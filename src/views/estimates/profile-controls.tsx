/** What the estimates are asked for: load, room, height, how fast the fans may turn. */
import { type Load, loads, type Plan, type Profile } from '../../../geometry';
import { NumberField } from '../../ui/number-field';
import { loadNames, USUAL_ROOM } from './estimate-words';

interface ProfileControlsProps {
  readonly plan: Plan;
  readonly profile: Profile;
  readonly onChange: (profile: Profile) => void;
}

const CAPS = [0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1] as const;

export function ProfileControls({ plan, profile, onChange }: ProfileControlsProps) {
  const { load, room, altitude, fanCap } = profile;
  const ofBrief = { room: plan.brief?.roomTemperature ?? USUAL_ROOM, altitude: plan.brief?.altitude ?? 0 };
  // A profile tells only what differs, so that the brief is named as the source of what it said.
  const set = (change: { readonly [K in keyof Profile]?: Profile[K] | undefined }) =>
    onChange(
      Object.fromEntries(
        Object.entries({ ...profile, ...change }).filter(([, value]) => value !== undefined),
      ) as unknown as Profile,
    );
  return (
    <div className="estimates-controls">
      <fieldset className="buttons" aria-label="Load">
        {loads.map((one: Load) => (
          <button
            key={one}
            type="button"
            className="button small"
            aria-pressed={one === load}
            onClick={() => set({ load: one })}
          >
            {loadNames[one]}
          </button>
        ))}
      </fieldset>
      <NumberField
        label="Room"
        unit="°C"
        min={-20}
        max={60}
        value={room ?? ofBrief.room}
        onChange={(value) => set({ room: value === ofBrief.room ? undefined : value })}
      />
      <NumberField
        label="Altitude"
        unit="m"
        min={-430}
        max={6000}
        step={100}
        value={altitude ?? ofBrief.altitude}
        onChange={(value) => set({ altitude: value === ofBrief.altitude ? undefined : value })}
      />
      <label className="labelled">
        <span>Case fans, cap on cooler fans</span>
        <select
          className="select"
          value={fanCap ?? ''}
          onChange={({ target }) => set({ fanCap: target.value === '' ? undefined : Number(target.value) })}
        >
          <option value="">As the load asks</option>
          {CAPS.map((cap) => (
            <option key={cap} value={cap}>
              {Math.round(cap * 100)} % of top speed
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
