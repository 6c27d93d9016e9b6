/**
 * A signed gap as a bar from a zero line: to the right is room, to the left is overlap. The short tick is the wanted
 * gap; the thin line with its two ends is the band in which the gap lies whatever pieces one gets. Decoration beside
 * the number, so it is hidden from screen readers.
 */
import type { Tone } from './fit-mark';
import './gap-bar.css';

const WIDTH = 84;
const HEIGHT = 16;
const ZERO = 26;
/** Picture units a millimetre: the bar is full at 40 mm of room, or 18 mm of overlap. */
const SCALE = 1.4;

interface GapBarProps {
  readonly millimetres: number;
  readonly wanted: number;
  readonly tone: Tone;
  readonly band?: readonly [least: number, most: number] | undefined;
}

export function GapBar({ millimetres, wanted, tone, band }: GapBarProps) {
  const end = Math.min(WIDTH - 1, Math.max(1, ZERO + millimetres * SCALE));
  const cut = end !== ZERO + millimetres * SCALE;
  const tick = Math.min(WIDTH - 1, ZERO + wanted * SCALE);
  return (
    <svg
      className={`gap-bar ${tone}`}
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <rect className="bar" x={Math.min(ZERO, end)} y="5" width={Math.abs(end - ZERO)} height="6" />
      {band && !cut && <path className="whisker" d={whisker(band)} />}
      {cut && <path className="cut" d={`M${end < ZERO ? 5 : WIDTH - 8} 3l3 10`} />}
      <line className="tick" x1={tick} x2={tick} y1="3" y2="13" />
      <line className="zero" x1={ZERO} x2={ZERO} y1="0" y2={HEIGHT} />
    </svg>
  );
}

function whisker(band: readonly [number, number]): string {
  const [from, to] = band.map((end) => Math.min(WIDTH - 1, Math.max(1, ZERO + end * SCALE)));
  return `M${from} 5.5v5M${from} 8H${to}M${to} 5.5v5`;
}
