import { DataTexture, FloatType, NearestFilter, RGBAFormat } from 'three';
import type { RigidTransform } from '../../../geometry';

/** Rows of the table: the world itself, the part under the hand, then the parts of the scene. */
export const WORLD_ROW = 0;
export const HAND_ROW = 1;
export const FIRST_PART_ROW = 2;

const TEXELS = 4;
const NUMBERS = TEXELS * 4;

export interface PartLook {
  /** 0 as it is, 1 pointed at, 2 selected. */
  readonly emphasis: number;
  /** How far it steps back so that others are seen, 0 to 1. */
  readonly faded: number;
  /** Not drawn at all. */
  readonly hidden: boolean;
}

/**
 * Pose and look of every part, in a small texture that all shaders read. Moving a part writes sixteen numbers; no
 * stroke is touched.
 */
export class PartTable {
  private numbers = new Float32Array(0);
  texture = new DataTexture(this.numbers, 0, 0);

  /** Makes room for so many parts. The texture is exchanged when it must grow. */
  reserve(parts: number): void {
    const rows = 32 * Math.ceil((parts + FIRST_PART_ROW) / 32);
    if (this.numbers.length >= rows * NUMBERS) return;
    this.numbers = new Float32Array(rows * NUMBERS);
    this.texture.dispose();
    this.texture = new DataTexture(this.numbers, TEXELS, rows, RGBAFormat, FloatType, undefined);
    this.texture.magFilter = NearestFilter;
    this.texture.minFilter = NearestFilter;
    this.numbers.set([1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0]);
    this.texture.needsUpdate = true;
  }

  /** Returns whether anything changed. */
  set(row: number, { rotation: r, translation: t }: RigidTransform, look: PartLook): boolean {
    const pose = [r[0], r[1], r[2], t[0], r[3], r[4], r[5], t[1], r[6], r[7], r[8], t[2]];
    const values = [...pose, look.emphasis, look.faded, look.hidden ? 1 : 0, 0];
    let changed = false;
    for (const [index, value] of values.entries()) {
      const at = row * NUMBERS + index;
      if (this.numbers[at] === Math.fround(value)) continue;
      this.numbers[at] = value;
      changed = true;
    }
    if (changed) this.texture.needsUpdate = true;
    return changed;
  }
}
