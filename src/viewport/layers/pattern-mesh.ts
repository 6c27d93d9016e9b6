import { BufferAttribute, BufferGeometry, DoubleSide, Mesh, ShaderMaterial, Vector3 } from 'three';
import type { Vector3 as Point } from '../../../geometry';
import type { Rgb } from '../palette';
import { patternFragment, patternVertex } from './shaders/pattern-shader';
import type { SheetUniforms } from './sheet-uniforms';

export const patterns = {
  solid: 0,
  hatch: 1,
  'hatch back': 2,
  cross: 3,
  dots: 4,
  dashes: 5,
  plain: 6,
} as const;
export type Pattern = keyof typeof patterns;

/** A convex polygon in the world, mm. */
export interface Area {
  readonly polygon: readonly Point[];
  readonly pattern: Pattern;
}

export interface PatternOptions {
  readonly order: number;
  /** In front of what hides it only, or through everything. */
  readonly depth: 'visible' | 'always';
  /** Strength of the tint between and on the lines of the pattern, 0 to 1. */
  readonly fill: number;
  readonly line: number;
  /** CSS pixels. */
  readonly pitch: number;
  readonly width: number;
  /** Covers what is behind it with paper. */
  readonly opaque?: boolean;
}

/** Flat areas of one colour in one draw call. */
export class PatternMesh extends Mesh<BufferGeometry, ShaderMaterial> {
  constructor(shared: SheetUniforms, options: PatternOptions) {
    const material = new ShaderMaterial({
      vertexShader: patternVertex,
      fragmentShader: patternFragment,
      uniforms: {
        ...shared.values,
        tint: { value: new Vector3() },
        ground: { value: new Vector3() },
        groundAlpha: { value: options.opaque ? 1 : 0 },
        fillAlpha: { value: options.fill },
        lineAlpha: { value: options.line },
        pitch: { value: options.pitch },
        lineWidth: { value: options.width },
      },
      transparent: true,
      side: DoubleSide,
      depthTest: options.depth === 'visible',
      depthWrite: options.opaque === true,
      // Drawn on faces of parts, so it must win against them, as strokes do.
      polygonOffset: true,
      polygonOffsetFactor: options.opaque ? 1 : -0.5,
      polygonOffsetUnits: options.opaque ? 1 : -2,
    });
    super(new BufferGeometry(), material);
    this.frustumCulled = false;
    this.matrixAutoUpdate = false;
    this.renderOrder = options.order;
    this.visible = false;
  }

  setColours(tint: Rgb, ground: Rgb): void {
    this.material.uniforms.tint?.value.set(...tint);
    this.material.uniforms.ground?.value.set(...ground);
  }

  /** Strength of the tint, 0 to 1, between the lines of the pattern and on them alike. */
  setStrength(strength: number): void {
    const { fillAlpha, lineAlpha } = this.material.uniforms;
    if (fillAlpha) fillAlpha.value = strength;
    if (lineAlpha) lineAlpha.value = strength;
  }

  setAreas(areas: readonly Area[]): void {
    const positions: number[] = [];
    const kinds: number[] = [];
    for (const { polygon, pattern } of areas) {
      for (let corner = 2; corner < polygon.length; corner++) {
        for (const point of [polygon[0], polygon[corner - 1], polygon[corner]])
          if (point) positions.push(...point);
        kinds.push(patterns[pattern], patterns[pattern], patterns[pattern]);
      }
    }
    this.geometry.dispose();
    this.geometry = new BufferGeometry();
    this.geometry.setAttribute('position', new BufferAttribute(new Float32Array(positions), 3));
    this.geometry.setAttribute('pattern', new BufferAttribute(new Float32Array(kinds), 1));
    this.visible = kinds.length > 0;
  }
}
