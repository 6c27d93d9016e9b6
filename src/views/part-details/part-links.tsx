/** The parts something is about, each a way to select it. */

import { useSolutionStore } from '../../store/use-store';
import { selectPart } from '../../store/view-store';

export function PartLinks({ ids }: { readonly ids: readonly string[] }) {
  const scene = useSolutionStore((state) => state.scene);
  const known = [...new Set(ids)].filter((id) => scene.indexById.has(id));
  return (
    <div className="part-links">
      {known.map((id) => (
        <button key={id} type="button" className="button small" onClick={() => selectPart(id)}>
          {scene.parts[scene.indexById.get(id) ?? -1]?.label}
        </button>
      ))}
    </div>
  );
}
