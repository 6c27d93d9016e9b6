import type { PartSpec } from '../../../geometry';

/** The drawing's side of a drag from the shelf: pointer places in client pixels. Wired up by the app. */
export interface ShelfDragPort {
  readonly begin: (spec: PartSpec, shelfId: string) => void;
  readonly move: (x: number, y: number) => void;
  readonly drop: () => void;
  readonly cancel: () => void;
}
