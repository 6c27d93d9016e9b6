/** The name that follows the pointer while a part is dragged from the shelf. */
import { createPortal } from 'react-dom';

interface DragLabelProps {
  readonly text: string;
  /** Client pixels. */
  readonly x: number;
  readonly y: number;
}

export function DragLabel({ text, x, y }: DragLabelProps) {
  return createPortal(
    <div
      className="drag-label"
      style={{ transform: `translate(${x + 14}px, ${y + 10}px)` }}
      aria-hidden="true"
    >
      {text}
    </div>,
    document.body,
  );
}
