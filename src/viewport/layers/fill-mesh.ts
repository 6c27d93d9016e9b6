import { type InstancedBufferGeometry, Mesh, ShaderMaterial } from 'three';
import { fillFragment, fillVertex } from './shaders/fill-shader';
import type { SheetUniforms } from './sheet-uniforms';

/** All opaque faces of the scene, or all those one sees through, in one draw call. */
export class FillMesh extends Mesh<InstancedBufferGeometry, ShaderMaterial> {
  constructor(geometry: InstancedBufferGeometry, shared: SheetUniforms, sheer: boolean, order: number) {
    const material = new ShaderMaterial({
      vertexShader: fillVertex,
      fragmentShader: fillFragment,
      uniforms: { ...shared.values, sheerPass: { value: sheer ? 1 : 0 } },
      transparent: sheer,
      depthWrite: !sheer,
      // Pushed back, so that the strokes on a face win against it.
      polygonOffset: true,
      polygonOffsetFactor: 1.5,
      polygonOffsetUnits: 48,
    });
    super(geometry, material);
    this.frustumCulled = false;
    this.matrixAutoUpdate = false;
    this.renderOrder = order;
  }

  /** In an x-ray faces still hide, so that hidden lines stay dashed, but leave no colour. */
  setXray(xray: boolean): void {
    this.material.colorWrite = !xray;
  }
}
