/**
 * Dragging a part from the shelf into the drawing. The shelf owns the pointer; it tells where it is, and the drawing
 * previews the part on the nearest mount that takes it, or in exchange for a part of its kind. Off the canvas nothing
 * is previewed.
 */
import type { PartSpec } from '../../geometry';
import { previewPlan } from '../store/plan-store';
import { viewStore } from '../store/view-store';
import type { PartInHand } from './pointer/part-in-hand';
import { takeFromShelf } from './pointer/take-part';
import { currentViewport } from './viewport-session';

interface ShelfDrag {
  readonly spec: PartSpec;
  readonly shelf: string | undefined;
  held: { readonly hand: PartInHand; readonly free: boolean } | undefined;
}

let drag: ShelfDrag | undefined;

/** Begins a drag; one that is still open is cancelled. `shelf` is the id of the shelf entry. */
export function beginShelfDrag(spec: PartSpec, shelf?: string): void {
  cancelShelfDrag();
  drag = { spec, shelf, held: undefined };
}

/** Follows the pointer, in window coordinates. Returns whether it is over the drawing. */
export function moveShelfDrag(clientX: number, clientY: number, alt = false): boolean {
  if (!drag) return false;
  const session = currentViewport();
  const pixel = session?.pixelAt(clientX, clientY);
  if (!session || !pixel) {
    putBack(drag);
    return false;
  }
  drag.held ??= takeFromShelf(session, drag.spec, drag.shelf, pixel);
  drag.held?.hand.moveTo(pixel, drag.held.free || alt || viewStore.getState().freePlacement);
  return drag.held !== undefined;
}

/** Leaves the part where it is previewed, as one step. Returns whether it was over the drawing. */
export function dropShelfDrag(): boolean {
  const held = drag?.held;
  drag = undefined;
  held?.hand.drop();
  return held !== undefined;
}

export function cancelShelfDrag(): void {
  if (!drag) return;
  putBack(drag);
  drag = undefined;
}

function putBack(open: ShelfDrag): void {
  open.held?.hand.cancel();
  open.held = undefined;
  previewPlan(undefined);
}
