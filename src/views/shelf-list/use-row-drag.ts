/** Drags a row of the shelf: begins after a few pixels, follows the captured pointer, ends on every way a drag can end. */
import { type PointerEvent, useEffect, useRef, useState } from 'react';
import type { ShelfEntry } from '../../shelf/shelf-entry';
import type { ShelfDragPort } from './shelf-drag-port';

/** A pointer that moves less than this is a click. */
const THRESHOLD_PX = 5;

interface Press {
  readonly pointer: number;
  readonly x: number;
  readonly y: number;
}

export interface RowDrag {
  /** Where the pointer is while a drag is under way. */
  readonly at: { readonly x: number; readonly y: number } | undefined;
  readonly handlers: {
    readonly onPointerDown: (event: PointerEvent<HTMLElement>) => void;
    readonly onPointerMove: (event: PointerEvent<HTMLElement>) => void;
    readonly onPointerUp: () => void;
    readonly onPointerCancel: () => void;
    readonly onLostPointerCapture: () => void;
  };
}

export function useRowDrag(entry: ShelfEntry, port: ShelfDragPort): RowDrag {
  const press = useRef<Press>(undefined);
  const [at, setAt] = useState<{ x: number; y: number }>();
  const dragging = at !== undefined;

  const end = (finish: () => void) => {
    press.current = undefined;
    if (dragging) finish();
    setAt(undefined);
  };

  useEffect(() => {
    if (!dragging) return undefined;
    const stop = () => {
      press.current = undefined;
      port.cancel();
      setAt(undefined);
    };
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      event.stopPropagation();
      stop();
    };
    window.addEventListener('keydown', onKey, true);
    window.addEventListener('blur', stop);
    return () => {
      window.removeEventListener('keydown', onKey, true);
      window.removeEventListener('blur', stop);
    };
  }, [dragging, port]);

  return {
    at,
    handlers: {
      onPointerDown(event) {
        if (event.button !== 0 || !event.isPrimary) return;
        const target = event.target instanceof Element ? event.target : undefined;
        if (target?.closest('button')) return;
        // A finger scrolls the list; it drags by the grip only.
        if (event.pointerType === 'touch' && !target?.closest('.shelf-grip')) return;
        press.current = { pointer: event.pointerId, x: event.clientX, y: event.clientY };
        event.currentTarget.setPointerCapture(event.pointerId);
      },
      onPointerMove(event) {
        const start = press.current;
        if (!start || event.pointerId !== start.pointer) return;
        const { clientX: x, clientY: y } = event;
        if (!dragging) {
          if (Math.hypot(x - start.x, y - start.y) < THRESHOLD_PX) return;
          port.begin(entry.spec, entry.id);
        }
        port.move(x, y);
        setAt({ x, y });
      },
      onPointerUp: () => end(port.drop),
      onPointerCancel: () => end(port.cancel),
      onLostPointerCapture: () => end(port.cancel),
    },
  };
}
