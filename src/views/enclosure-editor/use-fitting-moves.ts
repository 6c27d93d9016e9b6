/** Moves a fitting by dragging it or with the arrow keys; it stops where the enclosure could no longer be. */
import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { onPaper, type PlacedView } from '../part-drawing/sheet-layout';
import type { FormHandle } from '../part-form/part-form';
import type { Fitting } from './fittings';

/** Steps of the drag and of the arrow keys, mm. */
const DRAG_MM = 0.5;
const STEP_MM = 1;
const FINE_MM = 0.1;

type Shift = readonly [alongFirst: number, alongSecond: number];

interface Grip {
  /** On the paper, mm. */
  readonly at: readonly [number, number];
  readonly fitting: Fitting;
  /** One drag is one step of undo. */
  readonly name: string;
}

/** `firstIsRight`: the first axis of the face runs across the view, the second up. */
export function useFittingMoves(form: FormHandle, view: PlacedView, fitting: Fitting, firstIsRight: boolean) {
  const grip = useRef<Grip>(undefined);
  const handle = useRef<SVGGElement>(null);
  const { right, up } = view.view;
  const alongFace = (du: number, dv: number): Shift =>
    firstIsRight ? [du * right.sign, dv * up.sign] : [dv * up.sign, du * right.sign];
  const point = (event: PointerEvent): readonly [number, number] => {
    const box = handle.current?.ownerSVGElement?.getBoundingClientRect();
    return onPaper(view, event.clientX - (box?.left ?? 0), event.clientY - (box?.top ?? 0));
  };
  const letGo = () => {
    grip.current = undefined;
  };
  return {
    handle,
    onPointerDown: (event: PointerEvent<SVGGElement>) => {
      event.currentTarget.setPointerCapture(event.pointerId);
      event.currentTarget.focus();
      grip.current = { at: point(event), fitting, name: `drag ${fitting.path} ${event.timeStamp}` };
    },
    onPointerMove: (event: PointerEvent) => {
      if (!grip.current) return;
      const { at, fitting: start, name } = grip.current;
      const [u, v] = point(event);
      const [a, b] = alongFace(u - at[0], v - at[1]);
      dragTo(form, start, fitting, [snapped(a), snapped(b)], name);
    },
    onPointerUp: letGo,
    onPointerCancel: letGo,
    onKeyDown: (event: KeyboardEvent) => {
      const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
      if (event.key === 'Enter') form.goTo(fitting.moves[0][0]?.path ?? fitting.path);
      if (!way) return;
      event.preventDefault();
      const step = event.shiftKey ? FINE_MM : STEP_MM;
      moveBy(form, fitting, alongFace((way[0] ?? 0) * step, (way[1] ?? 0) * step), `keys ${fitting.path}`);
    },
  };
}

function snapped(shift: number): number {
  return Math.round(shift / DRAG_MM) * DRAG_MM;
}

function moveBy(form: FormHandle, from: Fitting, shift: Shift, name: string): boolean {
  const values = ([0, 1] as const).flatMap((i) =>
    from.moves[i].map(({ path, value }) => ({ path, value: Number((value + shift[i]).toFixed(3)) })),
  );
  return form.tryFill(values, name);
}

/** Where one way is blocked, a drag still slides along the other. */
function dragTo(form: FormHandle, start: Fitting, now: Fitting, [a, b]: Shift, name: string): void {
  const kept = (i: 0 | 1) => (now.moves[i][0]?.value ?? 0) - (start.moves[i][0]?.value ?? 0);
  if (moveBy(form, start, [a, b], name)) return;
  if (!moveBy(form, start, [a, kept(1)], name)) moveBy(form, start, [kept(0), b], name);
}
