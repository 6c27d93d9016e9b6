/** Handles on the drawing: a fitting is dragged where its face is seen true, or moved with the arrow keys. */
import type { EnclosureSpec } from '../../../geometry';
import { onSheet, type PlacedView } from '../part-drawing/sheet-layout';
import type { FormHandle } from '../part-form/part-form';
import { axesOfFace, type Fitting, fittingsOf } from './fittings';
import { useFittingMoves } from './use-fitting-moves';
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

function FittingMark({ form, spec, view, fitting }: FittingMarksProps & { readonly fitting: Fitting }) {
  const [, first] = axesOfFace(spec, fitting.face);
  const firstIsRight = view.view.right.axis === first;
  const { handle, onKeyDown, ...drag } = useFittingMoves(form, view, fitting, firstIsRight);
  const corners = cornersOnSheet(view, fitting, firstIsRight);
  const places = fitting.moves.map(([field]) => field?.value ?? 0);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button of HTML cannot stand in a drawing.
    <g
      ref={handle}
      className="fitting"
      role="button"
      tabIndex={0}
      aria-label={`${fitting.label} at ${places.join(', ')} mm on the ${fitting.face}. Arrow keys move it by 1 mm, with Shift by 0.1; Enter goes to its fields.`}
      data-path={fitting.path}
      onKeyDown={onKeyDown}
      {...drag}
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
