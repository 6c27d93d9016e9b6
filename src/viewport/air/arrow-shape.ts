/** One arrow as triangles: a shaft and a head turned about its own axis, one long, about its middle. */
import { BufferAttribute, InstancedBufferGeometry } from 'three';

type Rim = readonly [radius: number, along: number];

/** Half outline from the tail to the tip. */
const OUTLINE: readonly Rim[] = [
  [0, -0.5],
  [0.07, -0.5],
  [0.07, 0.08],
  [0.19, 0.08],
  [0, 0.5],
];

const SIDES = 14;

/** The axis is y. Each band of the outline has normals of its own, so that its edges stay sharp. */
export function arrowShape(): InstancedBufferGeometry {
  const positions: number[] = [];
  const normals: number[] = [];
  for (let band = 1; band < OUTLINE.length; band++) {
    const [low, high] = [OUTLINE[band - 1], OUTLINE[band]];
    if (!low || !high) continue;
    for (let side = 0; side < SIDES; side++) addQuad(positions, normals, low, high, side);
  }
  const shape = new InstancedBufferGeometry();
  shape.setAttribute('position', new BufferAttribute(new Float32Array(positions), 3));
  shape.setAttribute('normal', new BufferAttribute(new Float32Array(normals), 3));
  return shape;
}

function addQuad(positions: number[], normals: number[], low: Rim, high: Rim, side: number): void {
  const corners: readonly (readonly [rim: Rim, step: number])[] = [
    [low, 0],
    [high, 0],
    [high, 1],
    [low, 0],
    [high, 1],
    [low, 1],
  ];
  const [outwards, upwards] = bandNormal(low, high);
  for (const [[radius, along], step] of corners) {
    const angle = (2 * Math.PI * (side + step)) / SIDES;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    positions.push(radius * cos, along, radius * sin);
    normals.push(outwards * cos, upwards, outwards * sin);
  }
}

/** Across the outline, away from the axis: a quarter turn of its direction. */
function bandNormal([r0, y0]: Rim, [r1, y1]: Rim): readonly [outwards: number, upwards: number] {
  const length = Math.hypot(r1 - r0, y1 - y0);
  return [(y1 - y0) / length, (r0 - r1) / length];
}
