/** Flat areas with a pattern laid over them in screen space, so that hatching keeps its pitch at every zoom. */
import { sharedFragment, sharedVertex } from './shared-chunk';

export const patternVertex = /* glsl */ `
${sharedVertex}
attribute float pattern;
varying vec3 at;
varying float kind;
void main() {
  at = position;
  kind = pattern;
  gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.0);
}
`;

export const patternFragment = /* glsl */ `
${sharedFragment}
uniform vec3 tint;
uniform vec3 ground;
uniform float groundAlpha;
uniform float fillAlpha;
uniform float lineAlpha;
uniform float pitch;
uniform float lineWidth;
varying vec3 at;
varying float kind;

float dots(float spacing, float radius) {
  vec2 p = gl_FragCoord.xy / pixelRatio / spacing;
  p.x += mod(floor(p.y), 2.0) * 0.5;
  float away = length(fract(p) - 0.5) * spacing;
  return 1.0 - smoothstep(radius - 0.5, radius + 0.5, away);
}

float dashes(float spacing) {
  vec2 p = gl_FragCoord.xy / pixelRatio;
  float row = floor(p.y / spacing);
  float line = 1.0 - smoothstep(0.2, 1.0, abs(fract(p.y / spacing) - 0.5) * spacing);
  return line * step(fract(p.x / (spacing * 2.4) + mod(row, 2.0) * 0.5), 0.55);
}

void main() {
  cutAway(at);
  float line = 0.0;
  if (kind > 5.5) line = 0.0;
  else if (kind > 4.5) line = dashes(pitch);
  else if (kind > 3.5) line = dots(pitch, 0.8);
  else if (kind > 2.5) line = max(hatchLine(pitch * 1.4, lineWidth, 1.0), hatchLine(pitch * 1.4, lineWidth, -1.0));
  else if (kind > 1.5) line = hatchLine(pitch, lineWidth, -1.0);
  else if (kind > 0.5) line = hatchLine(pitch, lineWidth, 1.0);
  float inked = kind < 0.5 ? 1.0 : mix(fillAlpha, lineAlpha, line);
  float alpha = inked + groundAlpha * (1.0 - inked);
  if (alpha < 0.004) discard;
  gl_FragColor = vec4(mix(ground, tint, inked / alpha), alpha);
}
`;
