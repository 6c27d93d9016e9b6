/** Buffers of instanced rectangles: one small mesh, drawn once for each stroke or fill. */
import {
  BufferAttribute,
  InstancedBufferAttribute,
  InstancedBufferGeometry,
  InstancedInterleavedBuffer,
  InterleavedBufferAttribute,
} from 'three';
import {
  FILL_FRAME,
  FILL_STYLE,
  type Fills,
  STROKE_ENDS,
  STROKE_FACES,
  STROKE_STYLE,
  type Strokes,
} from '../drawing/stroke-list';

/** Strokes or fills of one part, with the row of the part table they move with. */
export interface Owned<T> {
  readonly drawing: T;
  readonly row: number;
}

function unitQuad(across: readonly [number, number]): InstancedBufferGeometry {
  const geometry = new InstancedBufferGeometry();
  const [low, high] = across;
  geometry.setAttribute(
    'corner',
    new BufferAttribute(new Float32Array([0, low, 1, low, 1, high, 0, high]), 2),
  );
  geometry.setIndex([0, 1, 2, 0, 2, 3]);
  geometry.instanceCount = 0;
  return geometry;
}

/** Corner runs 0 to 1 along a stroke and -1 to 1 across it. */
export const strokeQuad = (): InstancedBufferGeometry => unitQuad([-1, 1]);
/** Corner runs 0 to 1 along both edges of a fill. */
export const fillQuad = (): InstancedBufferGeometry => unitQuad([0, 1]);

function single(
  geometry: InstancedBufferGeometry,
  name: string,
  array: Float32Array | Uint8Array,
  size: number,
): void {
  geometry.setAttribute(name, new InstancedBufferAttribute(array, size));
}

/** Several attributes of equal size that lie side by side in one array. */
function interleave(
  geometry: InstancedBufferGeometry,
  array: Float32Array | Int8Array,
  names: readonly string[],
  size: number,
): void {
  const buffer = new InstancedInterleavedBuffer(array, names.length * size);
  for (const [index, name] of names.entries()) {
    const normalised = array instanceof Int8Array;
    geometry.setAttribute(name, new InterleavedBufferAttribute(buffer, size, index * size, normalised));
  }
}

/** Exchanges the strokes of a geometry. */
export function setStrokes(geometry: InstancedBufferGeometry, owned: readonly Owned<Strokes>[]): void {
  const count = owned.reduce((sum, { drawing }) => sum + drawing.count, 0);
  const ends = new Float32Array(count * STROKE_ENDS);
  const faces = new Int8Array(count * STROKE_FACES);
  const style = new Uint8Array(count * STROKE_STYLE);
  const owners = new Float32Array(count);
  let at = 0;
  for (const { drawing, row } of owned) {
    ends.set(drawing.ends, at * STROKE_ENDS);
    faces.set(drawing.faces, at * STROKE_FACES);
    style.set(drawing.style, at * STROKE_STYLE);
    owners.fill(row, at, at + drawing.count);
    at += drawing.count;
  }
  geometry.dispose();
  interleave(geometry, ends, ['from', 'to'], 3);
  interleave(geometry, faces, ['faceA', 'faceB'], 4);
  single(geometry, 'style', style, STROKE_STYLE);
  single(geometry, 'owner', owners, 1);
  geometry.instanceCount = count;
}

/** Exchanges the fills of a geometry. */
export function setFills(geometry: InstancedBufferGeometry, owned: readonly Owned<Fills>[]): void {
  const count = owned.reduce((sum, { drawing }) => sum + drawing.count, 0);
  const frames = new Float32Array(count * FILL_FRAME);
  const style = new Uint8Array(count * FILL_STYLE);
  const owners = new Float32Array(count);
  let at = 0;
  for (const { drawing, row } of owned) {
    frames.set(drawing.frames, at * FILL_FRAME);
    style.set(drawing.style, at * FILL_STYLE);
    owners.fill(row, at, at + drawing.count);
    at += drawing.count;
  }
  geometry.dispose();
  interleave(geometry, frames, ['origin', 'along', 'across'], 3);
  single(geometry, 'style', style, FILL_STYLE);
  single(geometry, 'owner', owners, 1);
  geometry.instanceCount = count;
}
