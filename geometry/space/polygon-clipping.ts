/** The polygon in hand, x, y, z per vertex; a box face cut by six planes has at most ten. */
export const polygon = new Float64Array(48);
const spare = new Float64Array(48);

/**
 * Cuts the first `count` vertices of `polygon` (convex) to the half-space sense * coordinate[axis] + offset >= 0,
 * in place, and returns the new number of vertices (Sutherland and Hodgman 1974).
 */
export function clipPolygon(count: number, axis: number, sense: number, offset: number): number {
  let inside = 0;
  for (let v = 0; v < count; v++) if (sense * polygon[3 * v + axis]! + offset >= 0) inside++;
  if (inside === count) return count;
  if (inside === 0) return 0;
  const kept = clipInto(count, axis, sense, offset);
  for (let k = 0; k < 3 * kept; k++) polygon[k] = spare[k]!;
  return kept;
}

/** The clipped polygon, written to `spare`. */
function clipInto(count: number, axis: number, sense: number, offset: number): number {
  let kept = 0;
  let from = 3 * (count - 1);
  let heightFrom = sense * polygon[from + axis]! + offset;
  for (let v = 0; v < count; v++) {
    const to = 3 * v;
    const heightTo = sense * polygon[to + axis]! + offset;
    if (heightFrom >= 0 !== heightTo >= 0) {
      const t = heightFrom / (heightFrom - heightTo);
      for (let k = 0; k < 3; k++)
        spare[3 * kept + k] = polygon[from + k]! + t * (polygon[to + k]! - polygon[from + k]!);
      kept++;
    }
    if (heightTo >= 0) {
      for (let k = 0; k < 3; k++) spare[3 * kept + k] = polygon[to + k]!;
      kept++;
    }
    from = to;
    heightFrom = heightTo;
  }
  return kept;
}

/** Integral of max(x - floor, 0) over the y-z projection of the polygon, signed by its sense of turning. */
export function integralAbove(count: number, floor: number): number {
  let above = 0;
  for (let v = 0; v < count; v++) if (polygon[3 * v]! > floor) above++;
  if (above === 0) return 0;
  if (above === count) return prism(polygon, count, floor);
  return prism(spare, clipInto(count, 0, 1, -floor), floor);
}

/** Signed volume between the plane x = floor and the polygon, as a fan of triangles. */
function prism(vertices: Float64Array, count: number, floor: number): number {
  const x0 = vertices[0]! - floor;
  const y0 = vertices[1]!;
  const z0 = vertices[2]!;
  let sum = 0;
  for (let v = 1; v + 1 < count; v++) {
    const p = 3 * v;
    const uy = vertices[p + 1]! - y0;
    const uz = vertices[p + 2]! - z0;
    const vy = vertices[p + 4]! - y0;
    const vz = vertices[p + 5]! - z0;
    sum += (uy * vz - uz * vy) * (x0 + vertices[p]! + vertices[p + 3]! - 2 * floor);
  }
  return sum / 6;
}
