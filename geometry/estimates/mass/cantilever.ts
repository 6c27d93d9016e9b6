/** A beam built in at one end, evenly loaded: newtons, millimetres, newtons a square millimetre. */

/** Second moment of area of a strip bent across its thickness, mm4. */
export function stripMoment(width: number, thickness: number): number {
  return (width * thickness ** 3) / 12;
}

/** How far the free end sinks: w L^3 / (8 EI), w the whole load. */
export function cantileverDroop(load: number, length: number, stiffness: number): number {
  return (load * length ** 3) / (8 * stiffness);
}

/** Share of the load that a prop under the free end takes. */
export const PROP_SHARE = 3 / 8;

/** Largest sag of the same beam once its free end is propped: w L^3 / (185 EI). */
export function proppedSag(load: number, length: number, stiffness: number): number {
  return (load * length ** 3) / (185 * stiffness);
}
