/**
 * How the scene is looked at, without any drawing library: the same few numbers give the camera's matrices, the place
 * of a label and the ray under a finger. World frame and millimetres; screen pixels from the top left corner.
 */
import { add, dot, normalise, scale, subtract, type Vector3 } from '../../../geometry';

/** A place on the canvas, CSS pixels from its top left corner. */
export type Pixel = readonly [x: number, y: number];

export interface ScreenSize {
  readonly width: number;
  readonly height: number;
}

export interface Sight {
  /** What stands in the middle of the canvas, mm. */
  readonly target: Vector3;
  /** Where the eye stands round the vertical, degrees: 0 faces the side panel, 90 the front. */
  readonly azimuth: number;
  /** How far above the horizontal the eye stands, degrees, -90 to 90. */
  readonly elevation: number;
  /** Height of what is seen at the target's distance, mm. */
  readonly height: number;
  /** Angle of view from top to bottom, degrees; 0 is parallel projection, true to scale. */
  readonly lens: number;
}

/** Axes of the picture in the world: right and up on the screen, and towards the eye. */
export interface PictureAxes {
  readonly right: Vector3;
  readonly up: Vector3;
  readonly towardsEye: Vector3;
}

export interface Ray {
  readonly origin: Vector3;
  /** Unit direction, away from the eye. */
  readonly direction: Vector3;
}

/** A projected point; `depth` grows away from the eye, and is 0 in the plane of the target. */
export interface ScreenPoint {
  readonly at: Pixel;
  readonly depth: number;
  /** False behind the eye, where `at` means nothing. */
  readonly visible: boolean;
}

/** Where a parallel ray starts, far in front of any machine; mm. */
const PARALLEL_RAY_START_MM = 10_000;

export const toRadians = (degrees: number): number => (degrees * Math.PI) / 180;

export function pictureAxes({ azimuth, elevation }: Sight): PictureAxes {
  const [sinA, cosA] = [Math.sin(toRadians(azimuth)), Math.cos(toRadians(azimuth))];
  const [sinE, cosE] = [Math.sin(toRadians(elevation)), Math.cos(toRadians(elevation))];
  return {
    right: [cosA, 0, -sinA],
    up: [-sinE * sinA, cosE, -sinE * cosA],
    towardsEye: [cosE * sinA, sinE, cosE * cosA],
  };
}

/** From the eye to the target, mm; infinite in parallel projection. */
export function eyeDistance({ height, lens }: Sight): number {
  return lens > 0 ? height / 2 / Math.tan(toRadians(lens) / 2) : Number.POSITIVE_INFINITY;
}

export function millimetresPerPixel(sight: Sight, screen: ScreenSize): number {
  return sight.height / Math.max(1, screen.height);
}

export function projectPoint(sight: Sight, screen: ScreenSize, point: Vector3): ScreenPoint {
  const axes = pictureAxes(sight);
  const from = subtract(point, sight.target);
  const towards = dot(from, axes.towardsEye);
  const distance = eyeDistance(sight);
  const left = distance - towards;
  const enlarged = Number.isFinite(distance) ? distance / left : 1;
  const perMillimetre = enlarged / millimetresPerPixel(sight, screen);
  return {
    at: [
      screen.width / 2 + dot(from, axes.right) * perMillimetre,
      screen.height / 2 - dot(from, axes.up) * perMillimetre,
    ],
    depth: -towards,
    visible: left > 0,
  };
}

/** The ray that ends under a pixel. */
export function rayThrough(sight: Sight, screen: ScreenSize, [x, y]: Pixel): Ray {
  const axes = pictureAxes(sight);
  const perPixel = millimetresPerPixel(sight, screen);
  const across = scale(axes.right, (x - screen.width / 2) * perPixel);
  const upwards = scale(axes.up, (screen.height / 2 - y) * perPixel);
  const onTarget = add(sight.target, add(across, upwards));
  const distance = eyeDistance(sight);
  if (!Number.isFinite(distance)) {
    return {
      origin: add(onTarget, scale(axes.towardsEye, PARALLEL_RAY_START_MM)),
      direction: scale(axes.towardsEye, -1),
    };
  }
  const eye = add(sight.target, scale(axes.towardsEye, distance));
  return { origin: eye, direction: normalise(subtract(onTarget, eye)) };
}
