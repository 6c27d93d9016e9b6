/**
 * The air as arrows: one shape, instanced, drawn three times: pale where something stands in front, an outline in ink,
 * and its face. Three draw calls however many arrows.
 */
import {
  BackSide,
  type DoubleSide,
  FrontSide,
  GreaterDepth,
  InstancedBufferAttribute,
  InstancedMesh,
  LatheGeometry,
  LessEqualDepth,
  Matrix4,
  Quaternion,
  ShaderMaterial,
  Vector2,
  Vector3,
} from 'three';
import type { AirArrow, AirPicture } from '../../../geometry';
import type { Section } from '../../store/view-store';
import type { Palette, Rgb } from '../palette';
import { arrowLength, colourOfWarmth, type WarmthColours, warmth } from './arrow-sizes';

/** Most arrows drawn: those of the largest flow. A machine of two hundred parts has fewer. */
const MOST = 256;

const vertex = /* glsl */ `
attribute vec3 tint;
uniform float grow;
varying vec3 colour;
varying vec3 seen;

void main() {
  colour = tint;
  vec3 scaled = vec3(length(instanceMatrix[0].xyz), length(instanceMatrix[1].xyz), length(instanceMatrix[2].xyz));
  vec3 turned = normalize(mat3(instanceMatrix) * (normal / (scaled * scaled)));
  seen = normalize(mat3(viewMatrix) * turned);
  vec4 at = instanceMatrix * vec4(position, 1.0);
  at.xyz += turned * grow;
  gl_Position = projectionMatrix * viewMatrix * at;
}
`;

const fragment = /* glsl */ `
uniform vec3 ink;
uniform float inked;
uniform float opacity;
varying vec3 colour;
varying vec3 seen;

void main() {
  vec3 face = colour * (0.86 + 0.14 * abs(seen.z));
  gl_FragColor = vec4(mix(face, ink, inked), opacity);
}
`;

interface Pass {
  readonly order: number;
  readonly side: typeof FrontSide | typeof BackSide | typeof DoubleSide;
  readonly behind?: true;
  readonly inked?: true;
}

const PASSES: readonly Pass[] = [
  { order: 43, side: FrontSide, behind: true },
  { order: 44, side: BackSide, inked: true },
  { order: 45, side: FrontSide },
];

/** How far the outline stands off the face, mm. */
const OUTLINE = 0.8;

/** How much is left of an arrow behind something. */
const BEHIND_OPACITY = 0.42;

/** Half widths and lengths of shaft and head for an arrow one long, about its middle. */
function arrowShape(): LatheGeometry {
  const profile: readonly (readonly [radius: number, along: number])[] = [
    [0, -0.5],
    [0.07, -0.5],
    [0.07, 0.08],
    [0.19, 0.08],
    [0, 0.5],
  ];
  return new LatheGeometry(
    profile.map(([radius, along]) => new Vector2(radius, along)),
    14,
  );
}

export class ArrowLayer {
  readonly meshes: readonly InstancedMesh<LatheGeometry, ShaderMaterial>[];
  private readonly shape = arrowShape();
  private readonly tints = new InstancedBufferAttribute(new Float32Array(MOST * 3), 3);
  private colours: WarmthColours = { cold: [0, 0, 1], middle: [1, 1, 1], warm: [1, 0, 0] };

  constructor() {
    this.shape.setAttribute('tint', this.tints);
    this.meshes = PASSES.map((pass) => this.meshOf(pass));
  }

  private meshOf({ order, side, behind, inked }: Pass): InstancedMesh<LatheGeometry, ShaderMaterial> {
    const material = new ShaderMaterial({
      vertexShader: vertex,
      fragmentShader: fragment,
      uniforms: {
        grow: { value: inked ? OUTLINE : 0 },
        ink: { value: new Vector3() },
        inked: { value: inked ? 1 : 0 },
        opacity: { value: behind ? BEHIND_OPACITY : 1 },
      },
      transparent: true,
      side,
      depthWrite: !behind && !inked,
      depthFunc: behind ? GreaterDepth : LessEqualDepth,
    });
    const mesh = new InstancedMesh(this.shape, material, MOST);
    mesh.count = 0;
    mesh.frustumCulled = false;
    mesh.renderOrder = order;
    return mesh;
  }

  update(picture: AirPicture | undefined, section: Section | undefined): void {
    const arrows = picture ? shownArrows(picture, section) : [];
    arrows.forEach((arrow, i) => {
      const matrix = matrixOf(arrow, picture?.largestFlow ?? 0);
      for (const mesh of this.meshes) mesh.setMatrixAt(i, matrix);
      const share = picture ? warmth(arrow.celsius, picture) : 0;
      this.tints.setXYZ(i, ...colourOfWarmth(share, this.colours));
    });
    this.tints.needsUpdate = true;
    for (const mesh of this.meshes) {
      mesh.count = arrows.length;
      mesh.visible = arrows.length > 0;
      mesh.instanceMatrix.needsUpdate = true;
    }
  }

  setPalette({ selection, interference, paper, ink }: Palette): void {
    this.colours = { cold: selection, middle: paleBetween(paper, ink), warm: interference };
    for (const { material } of this.meshes) material.uniforms.ink?.value.set(...ink);
  }

  dispose(): void {
    this.shape.dispose();
    for (const mesh of this.meshes) {
      mesh.material.dispose();
      mesh.dispose();
    }
  }
}

/** A grey that stands off the ground on both sheets. */
function paleBetween(paper: Rgb, ink: Rgb): Rgb {
  const light = paper[0] > 0.5;
  const by = light ? 0.1 : 0.75;
  return [0, 1, 2].map((i) => (paper[i] ?? 0) + ((ink[i] ?? 0) - (paper[i] ?? 0)) * by) as unknown as Rgb;
}

/** Those on the side of the cut that is kept, the largest flows first. */
export function shownArrows({ arrows }: AirPicture, section: Section | undefined): readonly AirArrow[] {
  const index = section ? { x: 0, y: 1, z: 2 }[section.axis] : 0;
  const kept = section
    ? arrows.filter(({ at }) => (at[index] ?? 0) <= section.at !== section.flipped)
    : arrows;
  return [...kept].sort((a, b) => b.flow - a.flow).slice(0, MOST);
}

const UP = new Vector3(0, 1, 0);

function matrixOf(arrow: AirArrow, largestFlow: number): Matrix4 {
  const length = arrowLength(arrow, largestFlow);
  const turn = new Quaternion().setFromUnitVectors(UP, new Vector3(...arrow.along));
  return new Matrix4().compose(new Vector3(...arrow.at), turn, new Vector3(length, length, length));
}
