/**
 * Pressure a fan gives over its flow, as straight pieces; SI units. Beyond the ends the end pieces go on: a fan that is
 * blown through backwards resists, one that is pulled through faster than free flow brakes.
 */

/** From this flow upwards the pressure is `start - slope * flow`, until the next piece. */
export interface CurvePiece {
  readonly fromFlow: number;
  readonly start: number;
  readonly slope: number;
}

export type FanCurve = readonly CurvePiece[];

/** A point of a curve: m3/s, Pa. */
export interface CurvePoint {
  readonly flow: number;
  readonly pressure: number;
}

/** Curve through points of rising flow and falling pressure. Throws a RangeError for anything else. */
export function curveThrough(points: readonly CurvePoint[]): FanCurve {
  const pieces: CurvePiece[] = [];
  for (let i = 1; i < points.length; i++) {
    const [left, right] = [points[i - 1], points[i]];
    if (!left || !right) continue;
    const slope = (left.pressure - right.pressure) / (right.flow - left.flow);
    if (!(right.flow > left.flow) || !(slope >= 0) || !Number.isFinite(slope))
      throw new RangeError('the pressure of a fan must fall while its flow rises');
    pieces.push({
      fromFlow: i === 1 ? Number.NEGATIVE_INFINITY : left.flow,
      start: left.pressure + slope * left.flow,
      slope,
    });
  }
  if (pieces.length === 0) throw new RangeError('a fan curve needs two points');
  return pieces;
}

/** The straight line between shut-off pressure and free flow. */
export function straightCurve(freeFlow: number, shutOff: number): FanCurve {
  return curveThrough([
    { flow: 0, pressure: shutOff },
    { flow: freeFlow, pressure: 0 },
  ]);
}

/** The curve at a share of the speed and of the density it was stated for: flow as n, pressure as n^2 and density. */
export function curveAtSpeed(curve: FanCurve, share: number, densityRatio = 1): FanCurve {
  return curve.map(({ fromFlow, start, slope }) => ({
    fromFlow: fromFlow * share,
    start: start * share * share * densityRatio,
    slope: slope * share * densityRatio,
  }));
}

/** Curve of fans one behind the other: pressures add at the same flow. */
export function curvesInSeries(curves: readonly FanCurve[]): FanCurve {
  const starts = [...new Set(curves.flatMap((curve) => curve.map((piece) => piece.fromFlow)))].sort(
    (a, b) => a - b,
  );
  return starts.map((fromFlow) => {
    const pieces = curves.map((curve) => curve.findLast((piece) => piece.fromFlow <= fromFlow));
    return {
      fromFlow,
      start: pieces.reduce((sum, piece) => sum + (piece?.start ?? 0), 0),
      slope: pieces.reduce((sum, piece) => sum + (piece?.slope ?? 0), 0),
    };
  });
}

/** Pressure at a flow. */
export function pressureAt(curve: FanCurve, flow: number): number {
  const piece = curve.findLast((one) => one.fromFlow <= flow) ?? curve[0];
  return piece ? piece.start - piece.slope * flow : 0;
}
