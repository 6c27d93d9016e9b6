import type { OrientedBox } from './oriented-box';
import { ROUNDOFF } from './tolerance';

/** Numbers a box takes in `PackedBoxes.shapes`: centre at 0, half extents at 3, rotation (row-major) at 6; 15 is unused. */
export const SHAPE_STRIDE = 16;

/** Numbers a box takes in `PackedBoxes.bounds`: least x, y, z at 0, greatest x, y, z at 3. */
export const BOUNDS_STRIDE = 6;

/**
 * A fixed number of oriented boxes in flat float64 arrays, for loops that must not allocate; all lengths in mm.
 * The world bounds of each box and whether it lies along the world axes are kept up to date by every setter.
 */
export class PackedBoxes {
  readonly count: number;
  readonly shapes: Float64Array;
  readonly bounds: Float64Array;
  /** 1 for a box whose axes are the world's (in any order and sense), else 0. */
  readonly aligned: Uint8Array;

  constructor(count: number) {
    this.count = count;
    this.shapes = new Float64Array(count * SHAPE_STRIDE);
    this.bounds = new Float64Array(count * BOUNDS_STRIDE);
    this.aligned = new Uint8Array(count);
  }

  static from(boxes: readonly OrientedBox[]): PackedBoxes {
    const packed = new PackedBoxes(boxes.length);
    boxes.forEach((box, index) => {
      packed.setBox(index, box);
    });
    return packed;
  }

  setBox(index: number, box: OrientedBox): void {
    const shapes = this.shapes;
    const at = index * SHAPE_STRIDE;
    const { centre, half, rotation } = box;
    shapes[at] = centre[0];
    shapes[at + 1] = centre[1];
    shapes[at + 2] = centre[2];
    shapes[at + 3] = half[0];
    shapes[at + 4] = half[1];
    shapes[at + 5] = half[2];
    shapes[at + 6] = rotation[0];
    shapes[at + 7] = rotation[1];
    shapes[at + 8] = rotation[2];
    shapes[at + 9] = rotation[3];
    shapes[at + 10] = rotation[4];
    shapes[at + 11] = rotation[5];
    shapes[at + 12] = rotation[6];
    shapes[at + 13] = rotation[7];
    shapes[at + 14] = rotation[8];
    this.refreshBounds(index);
  }

  /** Shifts one box by (x, y, z) mm. Bounds shift with it, so many small moves drift by one rounding each. */
  translateBox(index: number, x: number, y: number, z: number): void {
    const shapes = this.shapes;
    const bounds = this.bounds;
    const at = index * SHAPE_STRIDE;
    const b = index * BOUNDS_STRIDE;
    shapes[at] = shapes[at]! + x;
    shapes[at + 1] = shapes[at + 1]! + y;
    shapes[at + 2] = shapes[at + 2]! + z;
    bounds[b] = bounds[b]! + x;
    bounds[b + 1] = bounds[b + 1]! + y;
    bounds[b + 2] = bounds[b + 2]! + z;
    bounds[b + 3] = bounds[b + 3]! + x;
    bounds[b + 4] = bounds[b + 4]! + y;
    bounds[b + 5] = bounds[b + 5]! + z;
  }

  /** The box as an object again. */
  boxAt(index: number): OrientedBox {
    const s = this.shapes;
    const at = index * SHAPE_STRIDE;
    return {
      centre: [s[at]!, s[at + 1]!, s[at + 2]!],
      half: [s[at + 3]!, s[at + 4]!, s[at + 5]!],
      rotation: [
        s[at + 6]!,
        s[at + 7]!,
        s[at + 8]!,
        s[at + 9]!,
        s[at + 10]!,
        s[at + 11]!,
        s[at + 12]!,
        s[at + 13]!,
        s[at + 14]!,
      ],
    };
  }

  private refreshBounds(index: number): void {
    const s = this.shapes;
    const bounds = this.bounds;
    const at = index * SHAPE_STRIDE;
    const b = index * BOUNDS_STRIDE;
    let aligned = 1;
    for (let row = 0; row < 3; row++) {
      let reach = 0;
      for (let column = 0; column < 3; column++) {
        const size = Math.abs(s[at + 6 + 3 * row + column]!);
        if (size > ROUNDOFF && size < 1 - ROUNDOFF) aligned = 0;
        reach += size * s[at + 3 + column]!;
      }
      bounds[b + row] = s[at + row]! - reach;
      bounds[b + 3 + row] = s[at + row]! + reach;
    }
    this.aligned[index] = aligned;
  }
}
