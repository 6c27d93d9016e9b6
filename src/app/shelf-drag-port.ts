/** Joins the shelf to the drawing: neither knows the other. */
import { beginShelfDrag, cancelShelfDrag, dropShelfDrag, moveShelfDrag } from '../viewport/shelf-drag';
import type { ShelfDragPort } from '../views/shelf-list/shelf-drag-port';

export const shelfDragPort: ShelfDragPort = {
  begin: beginShelfDrag,
  move: moveShelfDrag,
  drop: dropShelfDrag,
  cancel: cancelShelfDrag,
};
