/** Opens the assembly sheet; nothing of it is loaded before that. */
import { openSheet } from '../../store/sheet-store';

export function AssemblyButton() {
  return (
    <button type="button" className="button small" onClick={() => openSheet('assembly sheet')}>
      Assembly sheet
    </button>
  );
}
