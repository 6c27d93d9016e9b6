/** Heat through resistances in a chain: watts, kelvins, kelvins a watt. */

/** Temperature at the hot end: air + P times the sum of the resistances. */
export function temperatureThrough(air: number, watts: number, resistances: readonly number[]): number {
  return air + watts * resistances.reduce((sum, one) => sum + one, 0);
}

/** Largest last resistance that keeps the hot end at a limit. */
export function resistanceAllowed(
  air: number,
  watts: number,
  limit: number,
  others: readonly number[],
): number {
  return (limit - air) / watts - others.reduce((sum, one) => sum + one, 0);
}

/** A layer `metres` thick of a conductivity in W/(m K) over an area in m2: t / (k A). */
export function layerResistance(metres: number, conductivity: number, area: number): number {
  return metres / (conductivity * area);
}

/**
 * Resistance of a finned cooler at a share of its rated flow: a fixed part (base, pipes) and a part at the fins that
 * falls with the flow to a power. Never more than `cap` times the rated one: what convection without a fan gives.
 */
export function finResistance(
  rated: number,
  flowShare: number,
  shape: { fixedShare: number; exponent: number; cap: number },
): number {
  const atFins = flowShare > 0 ? flowShare ** -shape.exponent : Number.POSITIVE_INFINITY;
  return rated * Math.min(shape.fixedShare + (1 - shape.fixedShare) * atFins, shape.cap);
}
