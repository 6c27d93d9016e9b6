/**
 * Strokes of constant width on the screen, as rectangles of two triangles. The vertex shader decides from the two
 * faces of an edge whether it is an outline (heavier), an inner edge or turned away, so weights follow the camera
 * without any work on the main thread.
 */
import { sharedFragment, sharedVertex } from './shared-chunk';

export const strokeVertex = /* glsl */ `
${sharedVertex}
attribute vec2 corner;
attribute vec3 from;
attribute vec3 to;
attribute vec4 faceA;
attribute vec4 faceB;
attribute vec4 style;
attribute float owner;
uniform float hiddenPass;
uniform float widthScale;
uniform float extraWidth;
varying vec3 at;
varying float sidePixels;
varying float halfWidth;
varying vec2 alongAndDepth;
varying float strokeLength;
varying vec4 look;
varying float strength;

const vec4 NOWHERE = vec4(2.0, 2.0, 2.0, 1.0);

void main() {
  vec4 state = partRow(owner, 3);
  Pose pose = poseOf(owner);
  vec3 start = placed(from, pose);
  vec3 end = placed(to, pose);
  vec3 middle = 0.5 * (start + end);
  bool frontA = facesEye(turned(faceA.xyz, pose), middle);
  bool frontB = facesEye(turned(faceB.xyz, pose), middle);
  bool outline = style.x < 0.5 && frontA != frontB;
  bool seen = style.x < 0.5 ? (frontA || frontB) : style.x < 1.5 ? (frontA && frontB) : style.x < 2.5 ? frontA : true;
  bool wanted = hiddenPass > 0.5 ? style.z > 0.5 && style.x < 1.5 : seen;
  gl_Position = NOWHERE;
  look = vec4(0.0); strength = 0.0; at = middle; sidePixels = 0.0; halfWidth = 1.0;
  alongAndDepth = vec2(0.0); strokeLength = 1.0;
  if (!wanted || state.z > 0.5) return;

  vec4 a = projectionMatrix * viewMatrix * vec4(start, 1.0);
  vec4 b = projectionMatrix * viewMatrix * vec4(end, 1.0);
  float beforeA = a.z + a.w;
  float beforeB = b.z + b.w;
  if (beforeA <= 0.0 && beforeB <= 0.0) return;
  if (beforeA <= 0.0) a = mix(a, b, (0.001 - beforeA) / (beforeB - beforeA));
  if (beforeB <= 0.0) b = mix(b, a, (0.001 - beforeB) / (beforeA - beforeB));

  vec2 pixelA = a.xy / a.w * canvasSize * 0.5;
  vec2 pixelB = b.xy / b.w * canvasSize * 0.5;
  vec2 run = pixelB - pixelA;
  float lengthPixels = length(run);
  vec2 direction = lengthPixels > 1e-4 ? run / lengthPixels : vec2(1.0, 0.0);
  float emphasis = state.x;
  float width = style.y * 0.1 * (outline ? 1.3 : style.x < 1.5 ? 0.72 : 1.0) * widthScale;
  width += (style.x < 1.5 && hiddenPass < 0.5 ? (emphasis > 1.5 ? 0.9 : emphasis > 0.5 ? 0.7 : 0.0) : 0.0) + extraWidth;
  float pixels = width * pixelRatio;
  halfWidth = 0.5 * max(pixels, 1.0);
  strength = min(1.0, pixels);
  float reach = halfWidth + 0.75;
  vec2 offset = vec2(-direction.y, direction.x) * corner.y * reach + direction * (corner.x * 2.0 - 1.0) * halfWidth;
  vec4 clip = corner.x < 0.5 ? a : b;
  gl_Position = vec4(clip.xy + offset / (canvasSize * 0.5) * clip.w, clip.z, clip.w);

  at = corner.x < 0.5 ? start : end;
  sidePixels = corner.y * reach;
  alongAndDepth = vec2(corner.x * lengthPixels, 1.0) * clip.w;
  strokeLength = lengthPixels;
  look = vec4(style.w * 0.01, style.z * 0.01, emphasis, state.y);
}
`;

export const strokeFragment = /* glsl */ `
${sharedFragment}
uniform float hiddenPass;
uniform float opacity;
uniform vec3 tint;
uniform float tinted;
uniform vec2 dash;
varying vec3 at;
varying float sidePixels;
varying float halfWidth;
varying vec2 alongAndDepth;
varying float strokeLength;
varying vec4 look;
varying float strength;

void main() {
  cutAway(at);
  float alpha = clamp(halfWidth + 0.5 - abs(sidePixels), 0.0, 1.0) * strength * opacity;
  if (dash.x > 0.0) {
    // Whole periods fit in the stroke, and a dash stands at both ends, so that corners are closed.
    float period = (dash.x + dash.y) * pixelRatio;
    float share = dash.x / (dash.x + dash.y);
    float periods = max(1.0, floor(strokeLength / period + 0.5));
    float phase = fract(alongAndDepth.x / alongAndDepth.y / max(strokeLength, 1.0) * periods + share * 0.5);
    if (strokeLength > period * 0.7 && phase > share) discard;
  }
  vec3 colour = mix(ink, quietInk, look.x);
  float pale = farness(at) * 0.2 + look.w * 0.55;
  if (hiddenPass > 0.5) {
    float selected = step(1.5, look.z);
    alpha *= mix(look.y * mix(0.5, 0.9, xray), max(look.y * 0.8, 0.35), selected);
  } else alpha *= mix(1.0, 0.66, look.x);
  colour = mix(colour, paper, pale);
  colour = mix(colour, selection, step(1.5, look.z) * (1.0 - look.x * 0.5));
  colour = mix(colour, tint, tinted);
  if (alpha < 0.01) discard;
  gl_FragColor = vec4(colour, alpha);
}
`;
