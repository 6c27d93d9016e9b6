/** The bar under the drawing: cut it, look through it, look at it from elsewhere. */

import { useAir } from '../../store/air-store';
import { hideAir, showAir } from '../../store/show-air';
import { useViewStore } from '../../store/use-store';
import { fitView, lookFrom, type StandardView, viewStore } from '../../store/view-store';
import { SectionTool } from './section-tool';
import './view-bar.css';

export const VIEWS: readonly (readonly [view: StandardView, title: string])[] = [
  ['three-quarter', '3D'],
  ['side', 'Side'],
  ['front', 'Front'],
  ['rear', 'Rear'],
  ['back', 'Back'],
  ['top', 'Top'],
  ['floor', 'Floor'],
];

export function ViewBar({ readOnly }: { readonly readOnly: boolean }) {
  const xray = useViewStore((state) => state.xray);
  const reserved = useViewStore((state) => state.reservedSpaces);
  const view = useViewStore((state) => state.view);
  const free = useViewStore((state) => state.freePlacement);
  const air = useAir((state) => state.shown);
  return (
    <div className="view-bar" role="toolbar" aria-label="Drawing">
      <div className="view-group">
        <SectionTool />
        <button
          type="button"
          className="button small"
          aria-pressed={xray}
          onClick={() => viewStore.setState({ xray: !xray })}
        >
          X-ray
        </button>
        <button
          type="button"
          className="button small"
          aria-pressed={reserved}
          onClick={() => viewStore.setState({ reservedSpaces: !reserved })}
        >
          Reserved
        </button>
        <button
          type="button"
          className="button small"
          aria-pressed={air}
          title="Arrows for the air, an estimate"
          onClick={() => (air ? hideAir() : showAir())}
        >
          Air
        </button>
        {!readOnly && (
          <button
            type="button"
            className="button small"
            aria-pressed={free}
            title="Dragged parts follow the pointer instead of seating themselves on mounts"
            onClick={() => viewStore.setState({ freePlacement: !free })}
          >
            Free
          </button>
        )}
      </div>
      <div className="view-group">
        <label>
          <span className="unseen">View</span>
          <select
            className="select view-select"
            value={view}
            onChange={(event) => {
              const wanted = VIEWS.find(([name]) => name === event.target.value);
              if (wanted) lookFrom(wanted[0]);
            }}
          >
            {VIEWS.map(([name, title]) => (
              <option key={name} value={name}>
                {title}
              </option>
            ))}
          </select>
        </label>
        <fieldset className="view-buttons" aria-label="View">
          {VIEWS.map(([name, title]) => (
            <button
              key={name}
              type="button"
              className="button small"
              aria-pressed={name === view}
              onClick={() => lookFrom(name)}
            >
              {title}
            </button>
          ))}
        </fieldset>
        <button type="button" className="button small" onClick={fitView}>
          Fit
        </button>
      </div>
    </div>
  );
}
