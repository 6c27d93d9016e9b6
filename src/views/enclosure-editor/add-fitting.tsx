/** Puts another fitting into the middle of a face; from there it is dragged on the drawing or moved by number. */
import { useState } from 'react';
import type { EnclosureSpec } from '../../../geometry';
import { announce } from '../../store/status-store';
import type { FilledValue } from '../part-form/fill-draft';
import type { FormHandle } from '../part-form/part-form';
import { type NewFitting, needsFace, newFitting, newFittings } from './new-fitting';

const faces = ['rear', 'front', 'top', 'floor', 'side', 'back', 'tray', 'tray back'] as const;
type Face = (typeof faces)[number];

interface AddFittingProps {
  readonly form: FormHandle;
  readonly spec: EnclosureSpec;
}

export function AddFitting({ form, spec }: AddFittingProps) {
  const [kind, setKind] = useState<NewFitting>('fan seat');
  const [face, setFace] = useState<Face>('front');
  const add = () => {
    const values: readonly FilledValue[] = newFitting(spec, kind, face);
    const done = form.tryFill(values);
    announce(
      done
        ? `${kind} added. Drag it on the drawing, or use the arrow keys.`
        : `There is no room for a ${kind} on the ${face}, or it would not suit the figures as they stand.`,
    );
  };
  return (
    <fieldset className="add-fitting">
      <legend className="quiet">
        Add to the drawing, then drag it into place; vents behind a dust filter get the open share that is
        left.
      </legend>
      <select
        className="select"
        aria-label="What to add"
        value={kind}
        onChange={(event) => setKind(newFittings.find((one) => one === event.target.value) ?? kind)}
      >
        {newFittings.map((one) => (
          <option key={one}>{one}</option>
        ))}
      </select>
      <select
        className="select"
        aria-label="On which face"
        value={face}
        disabled={!needsFace(kind)}
        onChange={(event) => setFace(faces.find((one) => one === event.target.value) ?? face)}
      >
        {faces.map((one) => (
          <option key={one}>{one}</option>
        ))}
      </select>
      <button type="button" className="button" onClick={add}>
        Add it
      </button>
    </fieldset>
  );
}
