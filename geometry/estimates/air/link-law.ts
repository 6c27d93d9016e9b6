/**
 * What one way through air takes from the pressure. Pressures in Pa, flows in m3/s, positive from the first node to
 * the second:
 * pressure before - pressure after + lift = linear Q + quadratic Q sqrt(Q^2 + laminar^2) - fan(Q).
 */
import type { FanCurve } from './fan-curve';

export interface AirLink {
  readonly from: number;
  readonly to: number;
  /** Pa s/m3: laminar part. */
  readonly linear: number;
  /** Pa s2/m6: turbulent part, rho / (2 A^2) of an effective area A. */
  readonly quadratic: number;
  /** Flow about which the turbulent part turns into one in proportion to the flow, m3/s; 0 when absent. */
  readonly laminarFlow?: number;
  readonly fan?: FanCurve;
  /** Buoyancy that drives the flow from the first node to the second, Pa. */
  readonly lift?: number;
}

/**
 * Velocity about which air in an opening turns laminar, m/s: a Reynolds number of some 300 in a hole of 100 mm. At
 * 1 m/s it adds 0.1 % to the loss; it keeps the slope of the law finite where nothing flows.
 */
const LAMINAR_BELOW = 0.05;

const SMALLEST_SLOPE = 1e-9;

/** The law of an opening of effective area `area` in m2 at a density. */
export function openingLaw(
  area: number,
  density: number,
): { linear: number; quadratic: number; laminarFlow: number } {
  return { linear: 0, quadratic: density / (2 * area * area), laminarFlow: LAMINAR_BELOW * area };
}

/** Pressure difference a link needs for a flow, Pa. */
export function differenceAt(link: AirLink, flow: number): number {
  const { linear, quadratic, laminarFlow = 0, fan, lift = 0 } = link;
  const piece = fan && pieceAt(fan, flow);
  const driven = piece ? piece.start - piece.slope * flow : 0;
  return (
    linear * flow + quadratic * flow * Math.sqrt(flow * flow + laminarFlow * laminarFlow) - driven - lift
  );
}

/** Slope of that difference against the flow, Pa s/m3; always positive. */
export function slopeAt(link: AirLink, flow: number): number {
  const { linear, quadratic, laminarFlow = 0, fan } = link;
  const piece = fan && pieceAt(fan, flow);
  const speed = Math.sqrt(flow * flow + laminarFlow * laminarFlow);
  const turbulent = speed > 0 ? quadratic * (speed + (flow * flow) / speed) : 0;
  return Math.max(linear + turbulent + (piece?.slope ?? 0), SMALLEST_SLOPE);
}

/** Integral of that difference from no flow to this one: what the balance of a network makes least. */
export function contentAt(link: AirLink, flow: number): number {
  const { linear, quadratic, laminarFlow = 0, fan, lift = 0 } = link;
  const square = flow * flow + laminarFlow * laminarFlow;
  const turbulent = (quadratic * (square * Math.sqrt(square) - laminarFlow * laminarFlow * laminarFlow)) / 3;
  return (linear * flow * flow) / 2 + turbulent - (fan ? fanWork(fan, flow) : 0) - lift * flow;
}

/** Flow of a link alone at a pressure difference: the only root of a rising function. */
export function flowAt(link: AirLink, difference: number): number {
  let reach = 1e-6;
  while (differenceAt(link, reach) < difference || differenceAt(link, -reach) > difference) reach *= 2;
  let [low, high] = [-reach, reach];
  let flow = 0;
  for (let step = 0; step < 200 && high - low > 1e-15 * reach; step++) {
    const excess = differenceAt(link, flow) - difference;
    if (excess === 0) break;
    if (excess > 0) high = flow;
    else low = flow;
    const newton = flow - excess / slopeAt(link, flow);
    flow = newton > low && newton < high ? newton : (low + high) / 2;
  }
  return flow;
}

function pieceAt(fan: FanCurve, flow: number) {
  for (let i = fan.length - 1; i > 0; i--) {
    const piece = fan[i];
    if (piece && piece.fromFlow <= flow) return piece;
  }
  return fan[0];
}

/** Integral of the fan's pressure from no flow to this flow. */
function fanWork(fan: FanCurve, flow: number): number {
  let work = 0;
  const [low, high] = flow < 0 ? [flow, 0] : [0, flow];
  for (let i = 0; i < fan.length; i++) {
    const piece = fan[i];
    if (piece === undefined) continue;
    const from = Math.max(low, piece.fromFlow);
    const to = Math.min(high, fan[i + 1]?.fromFlow ?? Number.POSITIVE_INFINITY);
    if (to > from) work += piece.start * (to - from) - (piece.slope * (to * to - from * from)) / 2;
  }
  return flow < 0 ? -work : work;
}
