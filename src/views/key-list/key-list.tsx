/** The keys the plan view listens to. */
import { Dialog } from '../../ui/dialog';
import './key-list.css';

const KEYS: readonly (readonly [keys: string, does: string])[] = [
  ['Arrows', 'Nudge the selected part by 1 mm, in the directions of the view'],
  ['Shift + arrows', 'Nudge by 0.1 mm'],
  ['Page Up, Page Down', 'Nudge towards you, away from you'],
  ['R', 'Turn the selected part by 90 degrees, or to the next turn its mount allows'],
  ['Delete', 'Remove the selected part and what it carries'],
  ['Ctrl + Z', 'Undo'],
  ['Ctrl + Shift + Z, Ctrl + Y', 'Redo'],
  ['Escape', 'Give up a drag; let go of the selection'],
  ['1 to 6', 'Side, front, rear, back, top, floor view'],
  ['0', 'Three-quarter view'],
  ['F', 'Fit the drawing to the view'],
  ['X', 'X-ray'],
  ['?', 'This list'],
];

export function KeyList({ onClose }: { readonly onClose: () => void }) {
  return (
    <Dialog title="Keys" onClose={onClose}>
      <div className="dialog-body">
        <dl className="keys">
          {KEYS.map(([keys, does]) => (
            <div key={keys}>
              <dt>{keys}</dt>
              <dd>{does}</dd>
            </div>
          ))}
        </dl>
        <p className="quiet">
          The keys work while the drawing or nothing has the focus. In the tree the arrows choose a part; in a
          number field they change the number.
        </p>
      </div>
    </Dialog>
  );
}
