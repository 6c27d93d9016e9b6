import {
  GreaterDepth,
  type InstancedBufferGeometry,
  LessEqualDepth,
  Mesh,
  ShaderMaterial,
  Vector2,
  Vector3,
} from 'three';
import type { Rgb } from '../palette';
import { strokeFragment, strokeVertex } from './shaders/stroke-shader';
import type { SheetUniforms } from './sheet-uniforms';

export interface StrokeMeshOptions {
  /** In front of what hides it, behind it, or wherever it is. */
  readonly depth: 'visible' | 'hidden' | 'always';
  readonly order: number;
  /** Dash and gap in CSS pixels; solid when absent. */
  readonly dash?: readonly [number, number];
  readonly opacity?: number;
  readonly widthScale?: number;
  /** Added to every width, CSS pixels. */
  readonly extraWidth?: number;
}

/** A batch of strokes drawn in one call. */
export class StrokeMesh extends Mesh<InstancedBufferGeometry, ShaderMaterial> {
  constructor(geometry: InstancedBufferGeometry, shared: SheetUniforms, options: StrokeMeshOptions) {
    const material = new ShaderMaterial({
      vertexShader: strokeVertex,
      fragmentShader: strokeFragment,
      uniforms: {
        ...shared.values,
        hiddenPass: { value: options.depth === 'hidden' ? 1 : 0 },
        widthScale: { value: options.widthScale ?? 1 },
        extraWidth: { value: options.extraWidth ?? 0 },
        opacity: { value: options.opacity ?? 1 },
        tint: { value: new Vector3() },
        tinted: { value: 0 },
        dash: { value: new Vector2(...(options.dash ?? [0, 0])) },
      },
      transparent: true,
      depthWrite: false,
      depthTest: options.depth !== 'always',
      depthFunc: options.depth === 'hidden' ? GreaterDepth : LessEqualDepth,
    });
    super(geometry, material);
    this.frustumCulled = false;
    this.matrixAutoUpdate = false;
    this.renderOrder = options.order;
  }

  /** Draws all strokes in one colour instead of ink. */
  setTint(colour: Rgb): void {
    this.material.uniforms.tint?.value.set(...colour);
    const tinted = this.material.uniforms.tinted;
    if (tinted) tinted.value = 1;
  }
}
