/** Shows the air in the drawing behind the sheet, at the profile the sheet is for. */
import type { Profile } from '../../../../geometry';
import { useAir } from '../../../store/air-store';
import { closeSheet } from '../../../store/sheet-store';
import { hideAir, showAir } from '../../../store/show-air';

export function AirSwitch({ profile }: { readonly profile: Profile }) {
  const shown = useAir((state) => state.shown);
  return (
    <p className="estimates-on-screen buttons">
      <button
        type="button"
        className="button small"
        onClick={() => {
          showAir(profile);
          closeSheet();
        }}
      >
        Show the air in the drawing
      </button>
      {shown && (
        <button type="button" className="button small" onClick={hideAir}>
          Hide it
        </button>
      )}
    </p>
  );
}
