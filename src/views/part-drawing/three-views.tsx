/** The three views of a part with their dimensions. */
import { type ReactNode, useMemo } from 'react';
import { lineDrawing, type PaperLine, type PartModel } from '../../../geometry';
import { DimensionMark } from './dimension-mark';
import { boxesInView } from './drawn-boxes';
import { onSheet, type PlacedView, type SheetLayout } from './sheet-layout';

interface ThreeViewsProps {
  readonly model: PartModel;
  readonly layout: SheetLayout;
  readonly activePath: string | undefined;
  /** Boxes that the field in hand moves. */
  readonly moving: ReadonlySet<string>;
  readonly onPick: (path: string) => void;
  /** Drawn over each view. */
  readonly overlay?: ((view: PlacedView) => ReactNode) | undefined;
}

/** Hidden outlines shorter than this share of the view only blacken the paper. */
const SHORTEST_HIDDEN = 0.05;

export function ThreeViews({ model, layout, activePath, moving, onPick, overlay }: ThreeViewsProps) {
  return (
    <>
      {layout.views.map((view) => (
        <g key={view.view.name}>
          <ViewLines model={model} view={view} moving={moving} />
          {overlay?.(view)}
        </g>
      ))}
      {layout.dimensions.map((placed) => (
        <DimensionMark
          key={placed.dimension.path}
          placed={placed}
          active={placed.dimension.path === activePath}
          onPick={onPick}
        />
      ))}
    </>
  );
}

interface ViewLinesProps {
  readonly model: PartModel;
  readonly view: PlacedView;
  readonly moving: ReadonlySet<string>;
}

function ViewLines({ model, view, moving }: ViewLinesProps) {
  const { view: seen } = view;
  const lines = useMemo(() => {
    const { solid, reserved } = boxesInView(model, seen);
    return {
      body: lineDrawing(solid, seen),
      reserved: lineDrawing(reserved, seen),
      moving: lineDrawing(
        [...solid, ...reserved].filter(({ name }) => moving.has(name)),
        seen,
      ),
    };
  }, [model, seen, moving]);
  const shortest = SHORTEST_HIDDEN * Math.max(view.u[1] - view.u[0], view.v[1] - view.v[0]);
  const hidden = lines.body.hidden.filter(({ from, to }) => to - from > shortest);
  return (
    <g className="view-lines">
      <path className="line hidden-line" d={pathOf(view, hidden)} />
      <path className="line phantom-line" d={pathOf(view, lines.reserved.visible)} />
      <path className="line visible-line" d={pathOf(view, lines.body.visible)} />
      {moving.size > 0 && <path className="line moving-line" d={pathOf(view, lines.moving.visible)} />}
    </g>
  );
}

function pathOf(view: PlacedView, lines: readonly PaperLine[]): string {
  return lines
    .map(({ along, at, from, to }) => {
      const [a, b] =
        along === 'u'
          ? [onSheet(view, from, at), onSheet(view, to, at)]
          : [onSheet(view, at, from), onSheet(view, at, to)];
      return `M${round(a)} L${round(b)}`;
    })
    .join(' ');
}

function round([x, y]: readonly [number, number]): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}
