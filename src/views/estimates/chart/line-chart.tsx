/**
 * Lines over two axes, each line named at its end and told by its stroke as well as its colour. Drawn by visx into an
 * SVG whose colours are the page's tokens, so that it follows the sheet and prints as drawn. The numbers stand in a
 * table beside every chart; the drawing itself is one image to a screen reader.
 */
import { AxisBottom, AxisLeft, type TickRendererProps } from '@visx/axis';
import { GridRows } from '@visx/grid';
import { scaleLinear } from '@visx/scale';
import { LinePath } from '@visx/shape';
import { useRef } from 'react';
import { placeLevels } from './place-levels';
import { spreadLabels } from './spread-labels';
import { useWidth } from './use-width';
import './line-chart.css';

export type Stroke = 'first' | 'second' | 'third';

export interface ChartPoint {
  readonly x: number;
  readonly y: number;
}

export interface ChartAxis {
  readonly label: string;
  readonly from: number;
  readonly to: number;
  readonly write?: (value: number) => string;
}

export interface ChartLine {
  readonly id: string;
  readonly label: string;
  readonly stroke: Stroke;
  readonly points: readonly ChartPoint[];
}

interface LineChartProps {
  /** What the drawing shows, for whoever cannot see it. */
  readonly says: string;
  readonly x: ChartAxis;
  readonly y: ChartAxis;
  readonly lines: readonly ChartLine[];
  /** Heights not to be passed: a limit, a wish. */
  readonly levels?: readonly { readonly at: number; readonly label: string }[];
  readonly uprights?: readonly { readonly at: number; readonly label: string }[];
  readonly dots?: readonly (ChartPoint & { readonly label: string })[];
  readonly height?: number;
}

const MARGIN = { top: 22, left: 42, bottom: 40 };
const LABEL_HEIGHT = 15;
/** Room at the right for names of lines, and how narrow the drawing must be to get less of it. */
const NAMES = 112;
const NARROW = 460;

export function LineChart(props: LineChartProps) {
  const { says, x, y, lines, levels = [], uprights = [], dots = [], height = 220 } = props;
  const place = useRef<HTMLDivElement>(null);
  const width = useWidth(place, 640);
  const right = width - (width < NARROW ? 78 : NAMES);
  const bottom = height - MARGIN.bottom;
  const scaleX = scaleLinear({ domain: [x.from, x.to], range: [MARGIN.left, right] });
  const scaleY = scaleLinear({ domain: [y.from, y.to], range: [bottom, MARGIN.top] });
  const names = spreadLabels(
    lines.flatMap(({ id, points }) => {
      const last = points.at(-1);
      return last ? [{ id, at: scaleY(last.y) }] : [];
    }),
    LABEL_HEIGHT,
    { from: MARGIN.top, to: bottom },
  );
  const narrow = width < NARROW;
  const drawn = [
    ...lines.map(({ points }) => points.map((point) => ({ x: scaleX(point.x), y: scaleY(point.y) }))),
    // The names of the uprights count as drawn too.
    ...uprights.map(({ at }, row) => {
      const level = MARGIN.top + 6 + row * LABEL_HEIGHT;
      const away = isRightHalf(scaleX(at), right) ? -70 : 70;
      return [
        { x: scaleX(at) + away, y: level },
        { x: scaleX(at), y: level },
      ].sort((a, b) => a.x - b.x);
    }),
  ];
  return (
    <div ref={place} className="line-chart">
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={says}>
        <GridRows
          scale={scaleY}
          left={MARGIN.left}
          width={right - MARGIN.left}
          numTicks={4}
          className="chart-grid"
          stroke="currentColor"
        />
        <AxisBottom
          scale={scaleX}
          top={bottom}
          numTicks={narrow ? 4 : 7}
          axisClassName="chart-axis"
          tickLength={4}
          tickFormat={(value) => (x.write ?? String)(Number(value))}
          tickComponent={(tick) => <TickText tick={tick} anchor="middle" dy={12} />}
        />
        <AxisLeft
          scale={scaleY}
          left={MARGIN.left}
          numTicks={4}
          axisClassName="chart-axis"
          tickLength={4}
          tickFormat={(value) => (y.write ?? String)(Number(value))}
          tickComponent={(tick) => <TickText tick={tick} anchor="end" dx={-2} dy={4} />}
        />
        <text className="chart-axis-name" x={MARGIN.left - 34} y={12}>
          {y.label}
        </text>
        <text className="chart-axis-name" x={right} y={height - 6} textAnchor="end">
          {x.label}
        </text>
        {placeLevels(
          levels.map(({ at, label }) => ({ y: scaleY(at), label })),
          drawn,
          [MARGIN.left, right],
        ).map(({ y: at, label, leftwards, below }) => (
          <g key={label} className="chart-level">
            <line x1={MARGIN.left} x2={right} y1={at} y2={at} />
            <text
              x={leftwards ? MARGIN.left + 6 : right - 6}
              y={below ? at + 13 : at - 4}
              textAnchor={leftwards ? 'start' : 'end'}
            >
              {label}
            </text>
          </g>
        ))}
        {uprights.map(({ at, label }, i) => (
          <Upright key={label} at={scaleX(at)} label={label} row={i} right={right} bottom={bottom} />
        ))}
        {lines.map(({ id, stroke, points }) => (
          <LinePath
            key={id}
            className={`chart-line ${stroke}`}
            data={[...points]}
            x={(point) => scaleX(point.x)}
            y={(point) => scaleY(point.y)}
          />
        ))}
        {lines.map(({ id, label, stroke }) => (
          <text key={id} className={`chart-name ${stroke}`} x={right + 6} y={(names.get(id) ?? 0) + 4}>
            {label}
          </text>
        ))}
        {dots.map((dot) => (
          <g key={dot.label} className="chart-dot">
            <circle cx={scaleX(dot.x)} cy={scaleY(dot.y)} r={4.5} />
            <text x={scaleX(dot.x)} y={Math.min(scaleY(dot.y) + 20, bottom - 5)} textAnchor="middle">
              {dot.label}
            </text>
          </g>
        ))}
      </svg>
    </div>
  );
}

function isRightHalf(at: number, right: number): boolean {
  return at > (MARGIN.left + right) / 2;
}

interface UprightProps {
  readonly at: number;
  readonly label: string;
  /** Names of several stand under one another. */
  readonly row: number;
  readonly right: number;
  readonly bottom: number;
}

function Upright({ at, label, row, right, bottom }: UprightProps) {
  const leftwards = isRightHalf(at, right);
  return (
    <g className="chart-upright">
      <line x1={at} x2={at} y1={MARGIN.top} y2={bottom} />
      <text
        x={leftwards ? at - 5 : at + 5}
        y={MARGIN.top + 10 + row * LABEL_HEIGHT}
        textAnchor={leftwards ? 'end' : 'start'}
      >
        {label}
      </text>
    </g>
  );
}

interface TickTextProps {
  readonly tick: TickRendererProps;
  readonly anchor: 'middle' | 'end';
  readonly dx?: number;
  readonly dy: number;
}

function TickText({ tick: { x, y, formattedValue }, anchor, dx = 0, dy }: TickTextProps) {
  return (
    <text className="chart-tick" x={x + dx} y={y + (anchor === 'end' ? dy : dy - 4)} textAnchor={anchor}>
      {formattedValue}
    </text>
  );
}
