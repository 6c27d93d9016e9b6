import type { Rotation } from '../../../geometry/space/rotation';

/** Unit quaternion (x, y, z, w) of a rotation matrix, by the largest component (S. Shepperd, 1978). */
export function quaternionOf(r: Rotation): readonly [number, number, number, number] {
  const trace = r[0] + r[4] + r[8];
  if (trace >= r[0] && trace >= r[4] && trace >= r[8]) {
    const w = Math.sqrt(1 + trace) / 2;
    return [(r[7] - r[5]) / (4 * w), (r[2] - r[6]) / (4 * w), (r[3] - r[1]) / (4 * w), w];
  }
  if (r[0] >= r[4] && r[0] >= r[8]) {
    const x = Math.sqrt(1 + r[0] - r[4] - r[8]) / 2;
    return [x, (r[1] + r[3]) / (4 * x), (r[2] + r[6]) / (4 * x), (r[7] - r[5]) / (4 * x)];
  }
  if (r[4] >= r[8]) {
    const y = Math.sqrt(1 + r[4] - r[0] - r[8]) / 2;
    return [(r[1] + r[3]) / (4 * y), y, (r[5] + r[7]) / (4 * y), (r[2] - r[6]) / (4 * y)];
  }
  const z = Math.sqrt(1 + r[8] - r[0] - r[4]) / 2;
  return [(r[2] + r[6]) / (4 * z), (r[5] + r[7]) / (4 * z), z, (r[3] - r[1]) / (4 * z)];
}
