/** A cut across the machine: axis, place, side kept. */
import { useMemo } from 'react';
import { type Bounds, boundsOfBoxes, type Scene } from '../../../geometry';
import { useSolutionStore, useViewStore } from '../../store/use-store';
import { type SectionAxis, viewStore } from '../../store/view-store';
import { formatMillimetres } from '../../ui/numbers';

const AXES: readonly (readonly [axis: SectionAxis, title: string])[] = [
  ['x', 'Rear to front'],
  ['y', 'Floor to top'],
  ['z', 'Tray to side'],
];
const INDEX = { x: 0, y: 1, z: 2 } as const;

function rangeAlong(bounds: Bounds | undefined, axis: SectionAxis): readonly [number, number] {
  const index = INDEX[axis];
  return bounds ? [Math.floor(bounds.min[index]), Math.ceil(bounds.max[index])] : [0, 1];
}

function boundsOf(scene: Scene): Bounds | undefined {
  return boundsOfBoxes(scene.boxes.filter(({ body }) => body.role === 'solid').map(({ box }) => box));
}

export function SectionTool() {
  const section = useViewStore((state) => state.section);
  const scene = useSolutionStore((state) => state.scene);
  const bounds = useMemo(() => boundsOf(scene), [scene]);
  const cut = (axis: SectionAxis | undefined) => {
    if (axis === undefined) return viewStore.setState({ section: undefined });
    const [from, to] = rangeAlong(bounds, axis);
    viewStore.setState({
      section: { axis, at: Math.round((from + to) / 2), flipped: section?.flipped ?? false },
    });
  };
  const [from, to] = rangeAlong(bounds, section?.axis ?? 'x');
  return (
    <>
      <select
        className="select section-select"
        aria-label="Section"
        value={section?.axis ?? ''}
        onChange={(event) => cut(AXES.find(([axis]) => axis === event.target.value)?.[0])}
      >
        <option value="">No cut</option>
        {AXES.map(([axis, title]) => (
          <option key={axis} value={axis} title={title}>
            Cut {axis}
          </option>
        ))}
      </select>
      {section && (
        <div className="section-place">
          <input
            className="section-slider"
            type="range"
            aria-label={`Place of the cut along ${section.axis}, mm`}
            min={from}
            max={to}
            step={1}
            value={section.at}
            onChange={(event) =>
              viewStore.setState({ section: { ...section, at: Number(event.target.value) } })
            }
          />
          <output className="section-at">{formatMillimetres(section.at)}</output>
          <button
            type="button"
            className="button small"
            aria-pressed={section.flipped}
            aria-label="Keep the other side of the cut"
            title="Keep the other side of the cut"
            onClick={() => viewStore.setState({ section: { ...section, flipped: !section.flipped } })}
          >
            Flip
          </button>
        </div>
      )}
    </>
  );
}
