import {
  bestAxisWithEdges,
  bestFaceAxis,
  PAIR_A,
  PAIR_AXIS,
  PAIR_B,
  PAIR_D,
  PAIR_N,
  PAIR_R,
  pair,
  pairScale,
} from './separating-axes';
import { ROUNDOFF } from './tolerance';

/** Closest points of the loaded pair along the axes of a, from the centre of a: on a at 0, on b at 3. */
export const closest = new Float64Array(6);

/** Rounds after which going to and fro is given up. */
const MOST_ROUNDS = 8;

const edge = new Float64Array(12);

/**
 * Signed distance of the loaded pair, mm: minus the penetration depth with the axis in `pair` when the interiors
 * overlap, else the distance with the closest points in `closest`. Above `limit` any lower bound of the distance will
 * do, without the points.
 */
export function loadedDistance(limit: number): number {
  const apart = bestFaceAxis();
  if (apart > limit) return apart;
  if (apart > 0) {
    const distance = alternatingDistance();
    if (!Number.isNaN(distance)) return distance;
  }
  const bound = bestAxisWithEdges();
  return bound > 0 ? closestDistance(bound) : bound;
}

/**
 * Euclidean distance of a separated pair, mm, with the closest points left in `closest`. `bound` is the largest
 * separation over the 15 axes, a lower bound of the distance. Exact: the closest features are a corner and a
 * whole box, or two crossing edges; the result is accepted only when the slab between the two points holds
 * neither box (which proves that nothing is closer), and otherwise every pair of edges is tried.
 */
function closestDistance(bound: number): number {
  const slack = ROUNDOFF * pairScale();
  const axis = pair[PAIR_AXIS]!;
  if (axis >= 6) {
    const crossing = crossingEdges(Math.floor((axis - 6) / 3), (axis - 6) % 3);
    if (crossing <= bound + slack) return crossing;
  }
  let best = cornersOfB(cornersOfA(Infinity));
  if (best > (bound + slack) * (bound + slack) && !isProvenClosest(Math.sqrt(best), slack)) {
    best = allEdges(best);
  }
  return Math.sqrt(best);
}

/**
 * Euclidean distance of a separated pair by going to and fro: the point of b nearest to a point of a, the point of a
 * nearest to that, until nothing moves. Where that takes long two edges cross, and these are then solved for. NaN
 * when the end is not proven to be the least distance (rare). Leaves the points in `closest`.
 */
function alternatingDistance(): number {
  const dx = pair[PAIR_D]!;
  const dy = pair[PAIR_D + 1]!;
  const dz = pair[PAIR_D + 2]!;
  const ax = pair[PAIR_A]!;
  const ay = pair[PAIR_A + 1]!;
  const az = pair[PAIR_A + 2]!;
  const slack = ROUNDOFF * pairScale();
  let qx = clamp(dx, ax);
  let qy = clamp(dy, ay);
  let qz = clamp(dz, az);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    let px = dx;
    let py = dy;
    let pz = dz;
    let free = 0;
    let edgeOfB = 0;
    for (let j = 0; j < 3; j++) {
      const rx = pair[PAIR_R + j]!;
      const ry = pair[PAIR_R + 3 + j]!;
      const rz = pair[PAIR_R + 6 + j]!;
      const half = pair[PAIR_B + j]!;
      const along = (qx - dx) * rx + (qy - dy) * ry + (qz - dz) * rz;
      const inside = clamp(along, half);
      if (inside === along) {
        free++;
        edgeOfB = j;
      }
      px += rx * inside;
      py += ry * inside;
      pz += rz * inside;
    }
    const nx = clamp(px, ax);
    const ny = clamp(py, ay);
    const nz = clamp(pz, az);
    const moved = Math.abs(nx - qx) + Math.abs(ny - qy) + Math.abs(nz - qz);
    qx = nx;
    qy = ny;
    qz = nz;
    keep(qx, qy, qz, px, py, pz);
    if (moved <= slack) return provenDistance(slack);
    const edgeOfA = round > 0 && free === 1 ? onlyEqual(qx === px, qy === py, qz === pz) : -1;
    if (edgeOfA >= 0) {
      const crossing = crossingThroughClosest(edgeOfA, edgeOfB, slack);
      if (!Number.isNaN(crossing)) return crossing;
    }
  }
  return Number.NaN;
}

/** Which of three is the only one true; -1 for none or several. */
function onlyEqual(x: boolean, y: boolean, z: boolean): number {
  if (x) return y || z ? -1 : 0;
  if (y) return z ? -1 : 1;
  return z ? 2 : -1;
}

/** Distance of the points in `closest` if nothing is closer, else NaN. */
function provenDistance(slack: number): number {
  const x = closest[3]! - closest[0]!;
  const y = closest[4]! - closest[1]!;
  const z = closest[5]! - closest[2]!;
  const size = Math.sqrt(x * x + y * y + z * z);
  return isProvenClosest(size, slack) ? size : Number.NaN;
}

/** Proven distance of the edges (axis i of a, axis j of b) that the points in `closest` lie on, else NaN. */
function crossingThroughClosest(i: number, j: number, slack: number): number {
  const back =
    (closest[3]! - pair[PAIR_D]!) * pair[PAIR_R + j]! +
    (closest[4]! - pair[PAIR_D + 1]!) * pair[PAIR_R + 3 + j]! +
    (closest[5]! - pair[PAIR_D + 2]!) * pair[PAIR_R + 6 + j]!;
  for (let k = 0; k < 3; k++) {
    edge[k] = k === i ? 0 : closest[k]!;
    edge[3 + k] = closest[3 + k]! - pair[PAIR_R + 3 * k + j]! * back;
  }
  segmentDistanceSquared(i, j, Infinity);
  return provenDistance(slack);
}

/** Whether the slab at right angles to the line between the closest points, `size` thick, separates the boxes. */
function isProvenClosest(size: number, slack: number): boolean {
  const nx = (closest[3]! - closest[0]!) / size;
  const ny = (closest[4]! - closest[1]!) / size;
  const nz = (closest[5]! - closest[2]!) / size;
  let bound = nx * pair[PAIR_D]! + ny * pair[PAIR_D + 1]! + nz * pair[PAIR_D + 2]!;
  bound -= Math.abs(nx) * pair[PAIR_A]! + Math.abs(ny) * pair[PAIR_A + 1]! + Math.abs(nz) * pair[PAIR_A + 2]!;
  for (let j = 0; j < 3; j++) {
    const along = nx * pair[PAIR_R + j]! + ny * pair[PAIR_R + 3 + j]! + nz * pair[PAIR_R + 6 + j]!;
    bound -= Math.abs(along) * pair[PAIR_B + j]!;
  }
  return bound >= size - slack;
}

/** Least squared distance from a corner of b to box a, if under `best`. */
function cornersOfB(best: number): number {
  let least = best;
  const ax = pair[PAIR_A]!;
  const ay = pair[PAIR_A + 1]!;
  const az = pair[PAIR_A + 2]!;
  for (let corner = 0; corner < 8; corner++) {
    const u = corner & 1 ? pair[PAIR_B]! : -pair[PAIR_B]!;
    const v = corner & 2 ? pair[PAIR_B + 1]! : -pair[PAIR_B + 1]!;
    const w = corner & 4 ? pair[PAIR_B + 2]! : -pair[PAIR_B + 2]!;
    const x = pair[PAIR_D]! + pair[PAIR_R]! * u + pair[PAIR_R + 1]! * v + pair[PAIR_R + 2]! * w;
    const y = pair[PAIR_D + 1]! + pair[PAIR_R + 3]! * u + pair[PAIR_R + 4]! * v + pair[PAIR_R + 5]! * w;
    const z = pair[PAIR_D + 2]! + pair[PAIR_R + 6]! * u + pair[PAIR_R + 7]! * v + pair[PAIR_R + 8]! * w;
    const px = x > ax ? ax : Math.max(x, -ax);
    const py = y > ay ? ay : Math.max(y, -ay);
    const pz = z > az ? az : Math.max(z, -az);
    const squared = (x - px) * (x - px) + (y - py) * (y - py) + (z - pz) * (z - pz);
    if (squared < least) {
      least = squared;
      keep(px, py, pz, x, y, z);
    }
  }
  return least;
}

/** Least squared distance from a corner of a to box b, if under `best`. */
function cornersOfA(best: number): number {
  let least = best;
  for (let corner = 0; corner < 8; corner++) {
    const ax = corner & 1 ? pair[PAIR_A]! : -pair[PAIR_A]!;
    const ay = corner & 2 ? pair[PAIR_A + 1]! : -pair[PAIR_A + 1]!;
    const az = corner & 4 ? pair[PAIR_A + 2]! : -pair[PAIR_A + 2]!;
    const x = ax - pair[PAIR_D]!;
    const y = ay - pair[PAIR_D + 1]!;
    const z = az - pair[PAIR_D + 2]!;
    let squared = 0;
    let qx = pair[PAIR_D]!;
    let qy = pair[PAIR_D + 1]!;
    let qz = pair[PAIR_D + 2]!;
    for (let j = 0; j < 3; j++) {
      const half = pair[PAIR_B + j]!;
      const along = x * pair[PAIR_R + j]! + y * pair[PAIR_R + 3 + j]! + z * pair[PAIR_R + 6 + j]!;
      const inside = along > half ? half : Math.max(along, -half);
      squared += (along - inside) * (along - inside);
      qx += pair[PAIR_R + j]! * inside;
      qy += pair[PAIR_R + 3 + j]! * inside;
      qz += pair[PAIR_R + 6 + j]! * inside;
    }
    if (squared < least) {
      least = squared;
      keep(ax, ay, az, qx, qy, qz);
    }
  }
  return least;
}

function keep(px: number, py: number, pz: number, qx: number, qy: number, qz: number): void {
  closest[0] = px;
  closest[1] = py;
  closest[2] = pz;
  closest[3] = qx;
  closest[4] = qy;
  closest[5] = qz;
}

/** Distance of the two edges (i of a, j of b) that face each other along the normal in `pair`. */
export function crossingEdges(i: number, j: number): number {
  for (let k = 0; k < 3; k++) {
    edge[k] = k === i ? 0 : pair[PAIR_N + k]! < 0 ? -pair[PAIR_A + k]! : pair[PAIR_A + k]!;
    edge[3 + k] = pair[PAIR_D + k]!;
  }
  for (let k = 0; k < 3; k++) {
    if (k === j) continue;
    const facing =
      pair[PAIR_N]! * pair[PAIR_R + k]! +
      pair[PAIR_N + 1]! * pair[PAIR_R + 3 + k]! +
      pair[PAIR_N + 2]! * pair[PAIR_R + 6 + k]!;
    moveAlongB(k, facing < 0 ? pair[PAIR_B + k]! : -pair[PAIR_B + k]!);
  }
  const squared = segmentDistanceSquared(i, j, Infinity);
  return Math.sqrt(squared);
}

/** Least squared distance over all pairs of edges, if under `best`. */
function allEdges(best: number): number {
  let least = best;
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      for (let sides = 0; sides < 16; sides++) {
        for (let k = 0; k < 3; k++) edge[3 + k] = pair[PAIR_D + k]!;
        edge[i] = 0;
        edge[(i + 1) % 3] = sides & 1 ? pair[PAIR_A + ((i + 1) % 3)]! : -pair[PAIR_A + ((i + 1) % 3)]!;
        edge[(i + 2) % 3] = sides & 2 ? pair[PAIR_A + ((i + 2) % 3)]! : -pair[PAIR_A + ((i + 2) % 3)]!;
        const j1 = (j + 1) % 3;
        const j2 = (j + 2) % 3;
        moveAlongB(j1, sides & 4 ? pair[PAIR_B + j1]! : -pair[PAIR_B + j1]!);
        moveAlongB(j2, sides & 8 ? pair[PAIR_B + j2]! : -pair[PAIR_B + j2]!);
        least = segmentDistanceSquared(i, j, least);
      }
    }
  }
  return least;
}

function moveAlongB(k: number, by: number): void {
  edge[3] = edge[3]! + pair[PAIR_R + k]! * by;
  edge[4] = edge[4]! + pair[PAIR_R + 3 + k]! * by;
  edge[5] = edge[5]! + pair[PAIR_R + 6 + k]! * by;
}

/**
 * Squared distance of the segments through the midpoints in `edge`, along axis i of a and axis j of b, each
 * clamped to its ends (Ericson, Real-Time Collision Detection, 2005, section 5.1.9). Keeps the points when the
 * result is under `best` and returns the lesser of the two.
 */
function segmentDistanceSquared(i: number, j: number, best: number): number {
  const bx = pair[PAIR_R + j]!;
  const by = pair[PAIR_R + 3 + j]!;
  const bz = pair[PAIR_R + 6 + j]!;
  const cosine = pair[PAIR_R + 3 * i + j]!;
  const wx = edge[3]! - edge[0]!;
  const wy = edge[4]! - edge[1]!;
  const wz = edge[5]! - edge[2]!;
  const alongA = i === 0 ? wx : i === 1 ? wy : wz;
  const alongB = wx * bx + wy * by + wz * bz;
  const halfA = pair[PAIR_A + i]!;
  const halfB = pair[PAIR_B + j]!;
  const sineSquared = 1 - cosine * cosine;
  let s = sineSquared > 1e-12 ? clamp((alongA - cosine * alongB) / sineSquared, halfA) : clamp(alongA, halfA);
  const t = clamp(cosine * s - alongB, halfB);
  s = clamp(alongA + cosine * t, halfA);
  const px = edge[0]! + (i === 0 ? s : 0);
  const py = edge[1]! + (i === 1 ? s : 0);
  const pz = edge[2]! + (i === 2 ? s : 0);
  const qx = edge[3]! + bx * t;
  const qy = edge[4]! + by * t;
  const qz = edge[5]! + bz * t;
  const squared = (qx - px) * (qx - px) + (qy - py) * (qy - py) + (qz - pz) * (qz - pz);
  if (squared >= best) return best;
  keep(px, py, pz, qx, qy, qz);
  return squared;
}

function clamp(value: number, half: number): number {
  return value > half ? half : Math.max(value, -half);
}
