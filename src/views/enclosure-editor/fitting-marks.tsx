/** Handles on the drawing: a fitting is dragged where its face is seen true, or moved with the arrow keys. */
import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { EnclosureSpec } from '../../../geometry';
import { onPaper, onSheet, type PlacedView } from '../part-drawing/sheet-layout';
import type { FormHandle } from '../part-form/part-form';
import { axesOfFace, type Fitting, fittingsOf } from './fittings';
import './enclosure-editor.css';

interface FittingMarksProps {
  readonly form: FormHandle;
  readonly spec: EnclosureSpec;
  readonly view: PlacedView;
}

export function FittingMarks({ form, spec, view }: FittingMarksProps) {
  const { right, up } = view.view;
  const shown = fittingsOf(spec).filter(({ face }) => {
    const [, first, second] = axesOfFace(spec, face);
    return (right.axis === first && up.axis === second) || (right.axis === second && up.axis === first);
  });
  return shown.map((fitting) => (
    <FittingMark key={fitting.path} form={form} spec={spec} view={view} fitting={fitting} />
  ));
}

/** Steps of the drag and of the arrow keys, mm. */
const DRAG_MM = 0.5;
const STEP_MM = 1;
const FINE_MM = 0.1;

function FittingMark({ form, spec, view, fitting }: FittingMarksProps & { readonly fitting: Fitting }) {
  const grip = useRef<{
    readonly at: readonly [number, number];
    readonly fitting: Fitting;
    readonly name: string;
  }>(undefined);
  const svg = useRef<SVGGElement>(null);
  const [, first] = axesOfFace(spec, fitting.face);
  const { right, up } = view.view;
  /** Along the face's two axes, from a shift along u and v. */
  const alongFace = (du: number, dv: number): readonly [number, number] => {
    const [a, b] = right.axis === first ? [du * right.sign, dv * up.sign] : [dv * up.sign, du * right.sign];
    return [a, b];
  };
  const moveBy = (from: Fitting, [a, b]: readonly [number, number], name: string): boolean =>
    form.tryFill(
      [a, b].flatMap((shift, i) =>
        (from.moves[i as 0 | 1] ?? []).map(({ path, value }) => ({
          path,
          value: Number((value + shift).toFixed(3)),
        })),
      ),
      name,
    );
  const point = (event: PointerEvent): readonly [number, number] => {
    const box = svg.current?.ownerSVGElement?.getBoundingClientRect();
    return onPaper(view, event.clientX - (box?.left ?? 0), event.clientY - (box?.top ?? 0));
  };
  const onPointerDown = (event: PointerEvent<SVGGElement>) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus();
    grip.current = { at: point(event), fitting, name: `drag ${fitting.path} ${event.timeStamp}` };
  };
  const onPointerMove = (event: PointerEvent) => {
    if (!grip.current) return;
    const [u, v] = point(event);
    const { at, fitting: start, name } = grip.current;
    const [a, b] = alongFace(u - at[0], v - at[1]);
    const snap = (shift: number) => Math.round(shift / DRAG_MM) * DRAG_MM;
    // Along a wall a drag still slides where the other way is blocked.
    if (moveBy(start, [snap(a), snap(b)], name)) return;
    const standing = [fitting, start].map(({ moves }) => [moves[0][0]?.value ?? 0, moves[1][0]?.value ?? 0]);
    const kept = [0, 1].map((i) => (standing[0]?.[i] ?? 0) - (standing[1]?.[i] ?? 0));
    if (!moveBy(start, [snap(a), kept[1] ?? 0], name)) moveBy(start, [kept[0] ?? 0, snap(b)], name);
  };
  const letGo = () => {
    grip.current = undefined;
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    if (event.key === 'Enter') form.goTo(fitting.moves[0][0]?.path ?? fitting.path);
    if (!way) return;
    event.preventDefault();
    const step = event.shiftKey ? FINE_MM : STEP_MM;
    moveBy(fitting, alongFace((way[0] ?? 0) * step, (way[1] ?? 0) * step), `keys ${fitting.path}`);
  };
  const corners = cornersOnSheet(view, fitting, right.axis === first);
  const places = fitting.moves.map(([field]) => field?.value ?? 0);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button of HTML cannot stand in a drawing.
    <g
      ref={svg}
      className="fitting"
      role="button"
      tabIndex={0}
      aria-label={`${fitting.label} at ${places.join(', ')} mm on the ${fitting.face}. Arrow keys move it by 1 mm, with Shift by 0.1; Enter goes to its fields.`}
      data-path={fitting.path}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={letGo}
      onPointerCancel={letGo}
      onKeyDown={onKeyDown}
    >
      <title>{fitting.label}</title>
      <rect x={corners.x} y={corners.y} width={corners.width} height={corners.height} />
      <path
        className="fitting-cross"
        d={`M${corners.x + corners.width / 2 - 4} ${corners.y + corners.height / 2} h8 m-4 -4 v8`}
      />
    </g>
  );
}

function cornersOnSheet(view: PlacedView, { from, to }: Fitting, firstIsRight: boolean) {
  const { right, up } = view.view;
  const place = ([a, b]: readonly [number, number]) => {
    const [u, v] = firstIsRight ? [a * right.sign, b * up.sign] : [b * right.sign, a * up.sign];
    return onSheet(view, u, v);
  };
  const [p, q] = [place(from), place(to)];
  return {
    x: Math.min(p[0], q[0]),
    y: Math.min(p[1], q[1]),
    width: Math.abs(p[0] - q[0]),
    height: Math.abs(p[1] - q[1]),
  };
}
