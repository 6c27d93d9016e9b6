/** What a part is drawn with: strokes and fills in its own frame, in the flat arrays the graphics card takes. */
import type { Vector3 } from '../../../geometry';

/** Which of a stroke's neighbouring faces must be seen for it to be drawn. */
export const strokeKinds = {
  /** Edge standing out: one of the two faces. Heavy where only one is seen, for there the part ends. */
  outer: 0,
  /** Edge in a recess: both faces. */
  inner: 1,
  /** Drawn on one face. */
  detail: 2,
  /** Always. */
  plain: 3,
} as const;
type StrokeKind = keyof typeof strokeKinds;

export interface StrokeLook {
  readonly kind: StrokeKind;
  /** Width in tenths of a CSS pixel, before the outline is made heavier. */
  readonly weight: number;
  /** How strongly the stroke shows through what hides it, 0 to 100. */
  readonly hidden?: number;
  /** 0 ink, 100 quiet. */
  readonly quiet?: number;
}

/** Numbers a stroke takes in each array. */
export const STROKE_ENDS = 6;
export const STROKE_FACES = 8;
export const STROKE_STYLE = 4;

/** Only the strokes that show through what hides them: outlines, not the detail drawn on faces. */
export function hiddenStrokes({ count, ends, faces, style }: Strokes): Strokes {
  const kept: number[] = [];
  for (let stroke = 0; stroke < count; stroke++)
    if ((style[stroke * STROKE_STYLE + 2] ?? 0) > 0) kept.push(stroke);
  const some: Strokes = {
    count: kept.length,
    ends: new Float32Array(kept.length * STROKE_ENDS),
    faces: new Int8Array(kept.length * STROKE_FACES),
    style: new Uint8Array(kept.length * STROKE_STYLE),
  };
  for (const [to, from] of kept.entries()) {
    some.ends.set(ends.subarray(from * STROKE_ENDS, (from + 1) * STROKE_ENDS), to * STROKE_ENDS);
    some.faces.set(faces.subarray(from * STROKE_FACES, (from + 1) * STROKE_FACES), to * STROKE_FACES);
    some.style.set(style.subarray(from * STROKE_STYLE, (from + 1) * STROKE_STYLE), to * STROKE_STYLE);
  }
  return some;
}

/** Numbers a fill takes in each array. */
export const FILL_FRAME = 9;
export const FILL_STYLE = 4;

export interface Strokes {
  readonly count: number;
  /** From and to of each stroke. */
  readonly ends: Float32Array;
  /** Outward normals of its two faces, four numbers each, 127 is 1. */
  readonly faces: Int8Array;
  /** Kind, weight, hidden, quiet. */
  readonly style: Uint8Array;
}

/** What fills are made of. */
export const fillKinds = {
  /** A face of a part. */
  body: 0,
  /** The inside of the enclosure's walls, paler than parts. */
  ground: 1,
  /** Darker, where one looks into an opening. */
  opening: 2,
  /** A round opening: the circle within the rectangle. */
  disc: 3,
  /** Holes in a sheet, ground between them. */
  mesh: 4,
  /** Seen through: near covers, glass. */
  sheer: 5,
  /** Holes of a near sheet, nothing between them. */
  'sheer mesh': 6,
} as const;
export type FillKind = keyof typeof fillKinds;

export interface Fills {
  readonly count: number;
  /** Corner and two edges of each rectangle; its normal is their cross product. */
  readonly frames: Float32Array;
  /** Kind, and three numbers in reserve to keep the stride. */
  readonly style: Uint8Array;
}

export class StrokeList {
  private readonly ends: number[] = [];
  private readonly faces: number[] = [];
  private readonly style: number[] = [];

  /** `first` and `second` are the outward normals of the faces it lies on; a detail has only the first. */
  add(
    from: Vector3,
    to: Vector3,
    look: StrokeLook,
    first: Vector3 = [0, 0, 0],
    second: Vector3 = first,
  ): void {
    this.ends.push(...from, ...to);
    for (const [x, y, z] of [first, second])
      this.faces.push(Math.round(x * 127), Math.round(y * 127), Math.round(z * 127), 0);
    this.style.push(strokeKinds[look.kind], look.weight, look.hidden ?? 0, look.quiet ?? 0);
  }

  finish(): Strokes {
    return {
      count: this.ends.length / STROKE_ENDS,
      ends: Float32Array.from(this.ends),
      faces: Int8Array.from(this.faces),
      style: Uint8Array.from(this.style),
    };
  }
}

export class FillList {
  private readonly frames: number[] = [];
  private readonly style: number[] = [];

  add(corner: Vector3, along: Vector3, across: Vector3, kind: FillKind): void {
    this.frames.push(...corner, ...along, ...across);
    this.style.push(fillKinds[kind], 0, 0, 0);
  }

  finish(): Fills {
    return {
      count: this.frames.length / FILL_FRAME,
      frames: Float32Array.from(this.frames),
      style: Uint8Array.from(this.style),
    };
  }
}
