/** What keeps a form from being saved, each with a way to its field. */
import type { Ref } from 'react';
import { countOf } from '../../ui/numbers';
import { goToField } from './go-to-field';
import type { FieldFault } from './spec-field';

interface FaultListProps {
  readonly ref: Ref<HTMLDivElement>;
  readonly faults: readonly FieldFault[];
}

export function FaultList({ ref, faults }: FaultListProps) {
  return (
    <div ref={ref} className="form-faults" tabIndex={-1} role="alert">
      <p>{countOf(faults.length, 'field needs', 'fields need')} another look. Nothing is saved yet.</p>
      <ul>
        {faults.map(({ path, title, message }) => (
          <li key={path}>
            <button type="button" onClick={() => goToField(path)}>
              {title || path}
            </button>{' '}
            {message}
          </li>
        ))}
      </ul>
    </div>
  );
}
