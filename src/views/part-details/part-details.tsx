/** Everything about the selected part: where it sits, how it is set, what is round it, what to put in its place. */
import { lazy, Suspense, useState } from 'react';
import type { PlacedPart } from '../../../geometry';
import { keyDimension } from '../../shelf/key-dimension';
import { deletePart, setAdjustment } from '../../store/part-actions';
import { usePlanStore } from '../../store/use-store';
import { playPart } from '../../store/way-in-store';
import { NumberField } from '../../ui/number-field';
import { PartFindings } from './part-findings';
import { PlacementFields } from './placement-fields';
import { ReplaceSelect } from './replace-select';
import { RoomRound } from './room-round';

const EditPartDialog = lazy(() =>
  import('../part-editor/edit-part-dialog').then((module) => ({ default: module.EditPartDialog })),
);

const ShelfChangeNote = lazy(() =>
  import('./shelf-change-note').then((module) => ({ default: module.ShelfChangeNote })),
);

export function PartDetails({ part }: { readonly part: PlacedPart }) {
  const stored = usePlanStore((state) => (state.preview ?? state.plan).parts[part.id]);
  const readOnly = usePlanStore((state) => state.readOnly);
  const [editing, setEditing] = useState(false);
  if (!stored) return null;
  const { spec, model, id, label } = part;
  return (
    <article className="card" aria-label="Selected part">
      <div className="card-heading">
        <h3>{label}</h3>
        <span className="quiet">{keyDimension(spec)}</span>
      </div>
      <p>
        {spec.maker} {spec.model}
        {spec.remark && <span className="quiet">. {spec.remark}</span>}
      </p>
      {!readOnly && (
        <>
          <div className="buttons">
            <button type="button" className="button small" onClick={() => setEditing(true)}>
              Edit by number
            </button>
            {part.kind !== 'enclosure' && (
              <button type="button" className="button small" onClick={() => playPart(id)}>
                How it goes in
              </button>
            )}
            <button type="button" className="button small" onClick={() => deletePart(id)}>
              Remove
            </button>
          </div>
          <ReplaceSelect part={part} shelfId={stored.shelf} />
          {stored.shelf !== undefined && (
            <Suspense>
              <ShelfChangeNote id={id} part={stored} />
            </Suspense>
          )}
        </>
      )}
      <PartFindings id={id} title="To settle" weights={['fault', 'caution']} />
      {!readOnly && <PlacementFields part={part} placement={stored.placement} adjust={stored.adjust} />}
      {!readOnly && model.adjustments.length > 0 && (
        <fieldset>
          <legend className="heading">Settings</legend>
          <div className="coordinates">
            {model.adjustments.map((adjustment) => (
              <NumberField
                key={adjustment.id}
                label={adjustment.label}
                value={stored.adjust?.[adjustment.id] ?? 0}
                unit={adjustment.unit}
                min={adjustment.min}
                max={adjustment.max}
                step={adjustment.step}
                onChange={(value) => setAdjustment(id, adjustment.id, value)}
              />
            ))}
          </div>
        </fieldset>
      )}
      <RoomRound id={id} />
      <PartFindings id={id} title="Good to know" weights={['note']} />
      {editing && (
        <Suspense>
          <EditPartDialog id={id} label={label} spec={stored.spec} onClose={() => setEditing(false)} />
        </Suspense>
      )}
    </article>
  );
}
