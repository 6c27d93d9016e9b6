/**
 * The air as arrows: one shape, instanced, drawn three times: pale where something stands in front, an outline in ink,
 * and its face. Three draw calls however many arrows.
 */
import {
  BackSide,
  FrontSide,
  GreaterDepth,
  InstancedBufferAttribute,
  type InstancedBufferGeometry,
  LessEqualDepth,
  Mesh,
  ShaderMaterial,
  type Side,
  Vector3,
} from 'three';
import type { AirArrow, AirPicture } from '../../../geometry';
import type { Section } from '../../store/view-store';
import type { Palette, Rgb } from '../palette';
import { arrowShape } from './arrow-shape';
import { arrowLength, colourOfWarmth, type WarmthColours, warmth } from './arrow-sizes';

/** Most arrows drawn: those of the largest flow. A machine of two hundred parts has fewer. */
const MOST = 256;

const vertex = /* glsl */ `
attribute vec3 place;
attribute vec3 along;
attribute float size;
attribute vec3 tint;
uniform float grow;
varying vec3 colour;
varying vec3 seen;

void main() {
  colour = tint;
  vec3 beside = normalize(cross(along, abs(along.y) < 0.9 ? vec3(0.0, 1.0, 0.0) : vec3(1.0, 0.0, 0.0)));
  mat3 turn = mat3(beside, along, cross(beside, along));
  vec3 outwards = turn * normal;
  seen = mat3(viewMatrix) * outwards;
  gl_Position = projectionMatrix * viewMatrix * vec4(place + turn * position * size + outwards * grow, 1.0);
}
`;

const fragment = /* glsl */ `
uniform vec3 ink;
uniform float inked;
uniform float opacity;
varying vec3 colour;
varying vec3 seen;

void main() {
  vec3 face = colour * (0.86 + 0.14 * abs(normalize(seen).z));
  gl_FragColor = vec4(mix(face, ink, inked), opacity);
}
`;

interface Pass {
  readonly order: number;
  readonly side: Side;
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

export class ArrowLayer {
  readonly meshes: readonly Mesh<InstancedBufferGeometry, ShaderMaterial>[];
  private readonly shape = arrowShape();
  private readonly places = new InstancedBufferAttribute(new Float32Array(MOST * 3), 3);
  private readonly ways = new InstancedBufferAttribute(new Float32Array(MOST * 3), 3);
  private readonly sizes = new InstancedBufferAttribute(new Float32Array(MOST), 1);
  private readonly tints = new InstancedBufferAttribute(new Float32Array(MOST * 3), 3);
  private colours: WarmthColours = { cold: [0, 0, 1], middle: [1, 1, 1], warm: [1, 0, 0] };

  constructor() {
    this.shape.setAttribute('place', this.places);
    this.shape.setAttribute('along', this.ways);
    this.shape.setAttribute('size', this.sizes);
    this.shape.setAttribute('tint', this.tints);
    this.meshes = PASSES.map((pass) => meshOf(this.shape, pass));
  }

  update(picture: AirPicture | undefined, section: Section | undefined): void {
    const arrows = picture ? shownArrows(picture, section) : [];
    arrows.forEach((arrow, i) => {
      this.places.setXYZ(i, ...arrow.at);
      this.ways.setXYZ(i, ...arrow.along);
      this.sizes.setX(i, arrowLength(arrow, picture?.largestFlow ?? 0));
      this.tints.setXYZ(i, ...colourOfWarmth(picture ? warmth(arrow.celsius, picture) : 0, this.colours));
    });
    for (const attribute of [this.places, this.ways, this.sizes, this.tints]) attribute.needsUpdate = true;
    this.shape.instanceCount = arrows.length;
    for (const mesh of this.meshes) mesh.visible = arrows.length > 0;
  }

  setPalette({ selection, interference, paper, ink }: Palette): void {
    this.colours = { cold: selection, middle: paleBetween(paper, ink), warm: interference };
    for (const { material } of this.meshes) material.uniforms.ink?.value.set(...ink);
  }

  dispose(): void {
    this.shape.dispose();
    for (const { material } of this.meshes) material.dispose();
  }
}

function meshOf(
  shape: InstancedBufferGeometry,
  { order, side, behind, inked }: Pass,
): Mesh<InstancedBufferGeometry, ShaderMaterial> {
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
  const mesh = new Mesh(shape, material);
  mesh.frustumCulled = false;
  mesh.matrixAutoUpdate = false;
  mesh.renderOrder = order;
  return mesh;
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
