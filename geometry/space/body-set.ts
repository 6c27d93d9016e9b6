import type { OrientedBox } from './oriented-box';
import { BOUNDS_STRIDE, PackedBoxes } from './packed-boxes';

/**
 * Boxes grouped into bodies (one a part): the boxes of body k are numbers starts[k] to starts[k + 1] - 1 of
 * `packed`, and `bounds` holds one axis-aligned range a body (`BOUNDS_STRIDE` numbers: least x, y, z, greatest
 * x, y, z; mm). A body without boxes has an empty range (least above greatest) and meets nothing.
 */
export class BodySet {
  readonly count: number;
  readonly packed: PackedBoxes;
  readonly starts: Uint32Array;
  readonly bounds: Float64Array;
  /** The body each box belongs to. */
  readonly bodyOfBox: Uint32Array;

  constructor(bodies: readonly (readonly OrientedBox[])[]) {
    this.count = bodies.length;
    this.starts = new Uint32Array(bodies.length + 1);
    bodies.forEach((boxes, body) => {
      this.starts[body + 1] = this.starts[body]! + boxes.length;
    });
    this.packed = new PackedBoxes(this.starts[bodies.length]!);
    this.bounds = new Float64Array(bodies.length * BOUNDS_STRIDE);
    this.bodyOfBox = new Uint32Array(this.packed.count);
    bodies.forEach((boxes, body) => {
      this.bodyOfBox.fill(body, this.starts[body]!, this.starts[body + 1]!);
      this.setBody(body, boxes);
    });
  }

  /** Replaces the boxes of one body. Throws a RangeError when their number changes: make a new set then. */
  setBody(body: number, boxes: readonly OrientedBox[]): void {
    const start = this.starts[body]!;
    if (boxes.length !== this.starts[body + 1]! - start)
      throw new RangeError('a body keeps its number of boxes');
    for (let k = 0; k < boxes.length; k++) this.packed.setBox(start + k, boxes[k]!);
    this.refreshBounds(body);
  }

  /** Shifts one body by (x, y, z) mm; allocates nothing. */
  translateBody(body: number, x: number, y: number, z: number): void {
    for (let box = this.starts[body]!; box < this.starts[body + 1]!; box++)
      this.packed.translateBox(box, x, y, z);
    const b = body * BOUNDS_STRIDE;
    const bounds = this.bounds;
    bounds[b] = bounds[b]! + x;
    bounds[b + 1] = bounds[b + 1]! + y;
    bounds[b + 2] = bounds[b + 2]! + z;
    bounds[b + 3] = bounds[b + 3]! + x;
    bounds[b + 4] = bounds[b + 4]! + y;
    bounds[b + 5] = bounds[b + 5]! + z;
  }

  private refreshBounds(body: number): void {
    const at = body * BOUNDS_STRIDE;
    const boxes = this.packed.bounds;
    for (let axis = 0; axis < 3; axis++) {
      let least = Infinity;
      let greatest = -Infinity;
      for (let box = this.starts[body]!; box < this.starts[body + 1]!; box++) {
        least = Math.min(least, boxes[box * BOUNDS_STRIDE + axis]!);
        greatest = Math.max(greatest, boxes[box * BOUNDS_STRIDE + 3 + axis]!);
      }
      this.bounds[at + axis] = least;
      this.bounds[at + 3 + axis] = greatest;
    }
  }
}
