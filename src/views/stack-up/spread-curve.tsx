/**
 * How the gap of many builds would be spread: a normal curve with zero and the wanted gap marked, the worst case as a
 * line with two ends beneath. What it shows is also said in words, so it is one picture to a screen reader.
 */
import { normalDensity, type StackUp } from '../../../geometry';
import { formatMillimetres } from '../../ui/numbers';
import { type CurveScale, curveScale } from './curve-scale';

const WIDTH = 312;
const HEIGHT = 92;
/** Of the labels above, the axis, and the worst case below it. */
const TOP = 16;
const AXIS = 66;
const WORST = 76;
const POINTS = 96;

export function SpreadCurve({ stackUp }: { readonly stackUp: StackUp }) {
  const { nominal, sigma, wanted, worstCase } = stackUp;
  const scale = curveScale(stackUp);
  const x = (millimetres: number) => scale.place(millimetres) * WIDTH;
  const regions = [
    { name: 'interference', from: scale.from, to: Math.min(0, scale.to) },
    { name: 'transition', from: Math.max(scale.from, 0), to: Math.min(wanted, scale.to) },
    { name: 'clearance', from: Math.max(scale.from, wanted), to: scale.to },
  ].filter(({ from, to }) => to > from);
  const [least, most] = [Math.max(worstCase[0], scale.from), Math.min(worstCase[1], scale.to)];
  const words = `Spread of the gap: ${formatMillimetres(nominal)} mm, standard deviation ${sigma.toFixed(2)} mm`;
  return (
    <svg className="spread-curve" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words}>
      {regions.map(({ name, from, to }) => (
        <path key={name} className={`area ${name}`} d={areaPath(from, to, stackUp, x)} />
      ))}
      <path className="curve" d={curvePath(scale, stackUp, x)} />
      <line className="axis" x1="0" x2={WIDTH} y1={AXIS} y2={AXIS} />
      <path
        className="worst"
        d={`M${x(least)} ${WORST - 3}v6M${x(least)} ${WORST}H${x(most)}M${x(most)} ${WORST - 3}v6`}
      />
      <text x={x((least + most) / 2)} y={HEIGHT - 2} textAnchor="middle">
        worst case
      </text>
      <Marks scale={scale} wanted={wanted} />
    </svg>
  );
}

function Marks({ scale, wanted }: { readonly scale: CurveScale; readonly wanted: number }) {
  const zero = scale.isShown(0) ? scale.place(0) * WIDTH : undefined;
  const want = wanted > 0 && scale.isShown(wanted) ? scale.place(wanted) * WIDTH : undefined;
  const tight = zero !== undefined && want !== undefined && want - zero < 84;
  return (
    <>
      {zero !== undefined && (
        <>
          <line className="zero" x1={zero} x2={zero} y1={TOP} y2={AXIS + 4} />
          <Label x={zero} side={tight ? 'end' : 'middle'}>
            0
          </Label>
        </>
      )}
      {want !== undefined && (
        <>
          <line className="wanted" x1={want} x2={want} y1={TOP} y2={AXIS + 4} />
          <Label x={want} side={tight ? 'start' : 'middle'}>
            wanted {formatMillimetres(wanted)}
          </Label>
        </>
      )}
      {zero === undefined && want === undefined && (
        <text x="0" y="11">
          ← 0{wanted > 0 ? ` and wanted ${formatMillimetres(wanted)}` : ''}
        </text>
      )}
    </>
  );
}

interface LabelProps {
  readonly x: number;
  readonly side: 'start' | 'middle' | 'end';
  readonly children: React.ReactNode;
}

/** Kept within the picture. */
function Label({ x, side, children }: LabelProps) {
  const anchor = x < 40 && side !== 'end' ? 'start' : x > WIDTH - 40 && side !== 'start' ? 'end' : side;
  const away = anchor === 'start' ? 3 : anchor === 'end' ? -3 : 0;
  return (
    <text x={x + (side === 'middle' ? 0 : away)} y="11" textAnchor={anchor}>
      {children}
    </text>
  );
}

type Across = (millimetres: number) => number;

function height(millimetres: number, { nominal, sigma }: StackUp): number {
  const share = normalDensity(millimetres, nominal, sigma) / normalDensity(nominal, nominal, sigma);
  return AXIS - share * (AXIS - TOP - 4);
}

function points(from: number, to: number, stackUp: StackUp, x: Across): string {
  return Array.from({ length: POINTS + 1 }, (_, index) => {
    const at = from + ((to - from) * index) / POINTS;
    return `${x(at).toFixed(1)} ${height(at, stackUp).toFixed(1)}`;
  }).join('L');
}

function curvePath({ from, to }: CurveScale, stackUp: StackUp, x: Across): string {
  return `M${points(from, to, stackUp, x)}`;
}

function areaPath(from: number, to: number, stackUp: StackUp, x: Across): string {
  return `M${x(from).toFixed(1)} ${AXIS}L${points(from, to, stackUp, x)}L${x(to).toFixed(1)} ${AXIS}Z`;
}
