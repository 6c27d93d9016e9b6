/** GLSL that every layer's vertex and fragment shader begins with. */
export const sharedVertex = /* glsl */ `
precision highp float;
precision highp sampler2D;
uniform sampler2D partTable;
uniform vec2 canvasSize;
uniform float pixelRatio;
uniform vec4 eye;

vec4 partRow(float owner, int column) { return texelFetch(partTable, ivec2(column, int(owner + 0.5)), 0); }

/** Pose of a part: its rows are fetched once for each vertex. */
struct Pose { vec4 x; vec4 y; vec4 z; };

Pose poseOf(float owner) { return Pose(partRow(owner, 0), partRow(owner, 1), partRow(owner, 2)); }

vec3 placed(vec3 p, Pose pose) {
  vec4 q = vec4(p, 1.0);
  return vec3(dot(pose.x, q), dot(pose.y, q), dot(pose.z, q));
}

vec3 turned(vec3 d, Pose pose) { return vec3(dot(pose.x.xyz, d), dot(pose.y.xyz, d), dot(pose.z.xyz, d)); }

bool facesEye(vec3 normal, vec3 at) { return dot(normal, eye.w > 0.5 ? eye.xyz - at : eye.xyz) > 1e-4; }
`;

export const sharedFragment = /* glsl */ `
precision highp float;
uniform vec2 canvasSize;
uniform float pixelRatio;
uniform vec4 section;
uniform vec3 cueDirection;
uniform vec2 cueRange;
uniform vec3 paper;
uniform vec3 sheet;
uniform vec3 ink;
uniform vec3 quietInk;
uniform vec3 selection;
uniform vec3 reserved;
uniform vec3 interference;
uniform float xray;

void cutAway(vec3 at) { if (dot(at, section.xyz) > section.w + 0.01) discard; }

/** 0 at the near end of the scene, 1 at the far end. */
float farness(vec3 at) {
  return clamp((dot(at, cueDirection) - cueRange.x) / max(1.0, cueRange.y - cueRange.x), 0.0, 1.0);
}

/** Share of a 45 degree hatch line at this pixel; pitch and width in CSS pixels, sense 1 or -1. */
float hatchLine(float pitch, float width, float sense) {
  float across = (gl_FragCoord.x + sense * gl_FragCoord.y) * 0.70710678 / pixelRatio;
  float away = abs(mod(across, pitch) - pitch * 0.5);
  return 1.0 - smoothstep(width * 0.5 - 0.5 / pixelRatio, width * 0.5 + 0.5 / pixelRatio, away);
}
`;
