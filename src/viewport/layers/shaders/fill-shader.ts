/** Faces of parts: flat paper shades by direction, openings darker, sheets with holes, covers one sees through. */
import { sharedFragment, sharedVertex } from './shared-chunk';

export const fillVertex = /* glsl */ `
${sharedVertex}
attribute vec2 corner;
attribute vec3 origin;
attribute vec3 along;
attribute vec3 across;
attribute vec4 style;
attribute float owner;
uniform float sheerPass;
varying vec3 at;
varying vec3 normalOut;
varying vec2 spot;
varying vec2 middleSpot;
varying float kind;
varying vec2 state;

void main() {
  vec4 row = partRow(owner, 3);
  bool sheer = style.x > 4.5;
  gl_Position = vec4(2.0, 2.0, 2.0, 1.0);
  at = origin; normalOut = vec3(0.0); spot = vec2(0.0); middleSpot = vec2(0.0); kind = style.x; state = row.xy;
  if (row.z > 0.5 || sheer != (sheerPass > 0.5)) return;
  Pose pose = poseOf(owner);
  at = placed(origin + along * corner.x + across * corner.y, pose);
  normalOut = normalize(turned(cross(along, across), pose));
  vec2 size = vec2(length(along), length(across));
  spot = (corner - 0.5) * size;
  middleSpot = size * 0.5;
  gl_Position = projectionMatrix * viewMatrix * vec4(at, 1.0);
}
`;

export const fillFragment = /* glsl */ `
${sharedFragment}
uniform float sheerPass;
varying vec3 at;
varying vec3 normalOut;
varying vec2 spot;
varying vec2 middleSpot;
varying float kind;
varying vec2 state;

/** Share of a round hole at this place of a perforated sheet; pitch in mm, paling into grey when too fine. */
float holes(vec2 p) {
  const float pitch = 5.0;
  vec2 cell = vec2(p.x / pitch, p.y / (pitch * 0.8660254));
  float row = floor(cell.y);
  vec2 local = vec2(fract(cell.x + mod(row, 2.0) * 0.5) - 0.5, (fract(cell.y) - 0.5) * 0.8660254);
  float edge = max(fwidth(p.x), fwidth(p.y)) / pitch;
  float hole = 1.0 - smoothstep(0.3 - edge, 0.3 + edge, length(local));
  return mix(hole, 0.33, smoothstep(0.25, 0.6, edge));
}

void main() {
  cutAway(at);
  vec3 n = abs(normalOut);
  float shade = 0.004 * n.y + 0.055 * n.z + 0.11 * n.x;
  vec3 colour = mix(sheet, ink, shade);
  float alpha = 1.0;
  if (kind > 0.5 && kind < 1.5 || kind > 3.5 && kind < 4.5) colour = mix(paper, ink, 0.016 + shade * 0.42);
  if (kind > 1.5 && kind < 3.5) {
    if (kind > 2.5 && length(spot) > middleSpot.x) discard;
    colour = mix(sheet, ink, shade + 0.06);
  }
  if (kind > 3.5 && kind < 4.5) colour = mix(colour, ink, holes(spot) * 0.15);
  if (kind > 4.5) { colour = ink; alpha = 0.045; }
  if (kind > 5.5) alpha = 0.09 * holes(spot);
  colour = mix(colour, selection, state.x > 1.5 ? 0.09 : state.x > 0.5 ? 0.035 : 0.0);
  colour = mix(colour, paper, state.y * 0.6);
  gl_FragColor = vec4(colour, alpha);
}
`;
