/** One dimension after ISO 129-1: extension lines, a dimension line with filled arrowheads, the value along it. */
import type { KeyboardEvent } from 'react';
import type { PlacedDimension } from './sheet-layout';

interface DimensionMarkProps {
  readonly placed: PlacedDimension;
  readonly active: boolean;
  readonly onPick: (path: string) => void;
}

/** Past the dimension line, and off the outline, pixels. */
const OVERSHOOT = 3;
const GAP = 2;
const ARROW = 8;
/** Arrows turn outward where there is less room than this. */
const NARROW = 3 * ARROW;

export function DimensionMark({ placed, active, onPick }: DimensionMarkProps) {
  const { dimension, along, from, to, at, starts, text } = placed;
  const point = (a: number, b: number) => (along === 'u' ? `${a} ${b}` : `${b} ${a}`);
  const narrow = to - from < NARROW;
  const [first, last] = narrow ? [from - 2 * ARROW, to + 2 * ARROW] : [from, to];
  const arrow = (tip: number, way: 1 | -1) =>
    `M${point(tip, at)} L${point(tip + way * ARROW, at - 1.6)} L${point(tip + way * ARROW, at + 1.6)} Z`;
  const extension = (end: number, start: number) => {
    const way = Math.sign(at - start) || 1;
    return `M${point(end, start + way * GAP)} L${point(end, at + way * OVERSHOOT)}`;
  };
  const middle = (from + to) / 2;
  const [x, y] = along === 'u' ? [middle, at - 4] : [at - 4, middle];
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    onPick(dimension.path);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button of HTML cannot stand in a drawing.
    <g
      className="dimension"
      data-active={active}
      role="button"
      tabIndex={0}
      aria-label={`${dimension.title}, ${text} mm: go to its field`}
      onClick={() => onPick(dimension.path)}
      onKeyDown={onKeyDown}
    >
      <path className="dimension-hit" d={`M${point(first, at)} L${point(last, at)}`} />
      <path
        className="dimension-line"
        d={`${extension(from, starts[0])} ${extension(to, starts[1])} M${point(first, at)} L${point(last, at)}`}
      />
      <path className="dimension-arrow" d={`${arrow(from, narrow ? -1 : 1)} ${arrow(to, narrow ? 1 : -1)}`} />
      <text x={x} y={y} textAnchor="middle" transform={along === 'u' ? undefined : `rotate(-90 ${x} ${y})`}>
        {text}
      </text>
    </g>
  );
}
