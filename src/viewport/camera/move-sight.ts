/** What the hand does to the camera: each takes a sight and returns another. Distances in CSS pixels. */
import { add, scale } from '../../../geometry';
import { millimetresPerPixel, type Pixel, pictureAxes, type ScreenSize, type Sight } from './sight';
import { THREE_QUARTER_LENS } from './standard-views';

/** A full turn takes this many pixels: about the width of a laptop screen. */
const PIXELS_PER_TURN = 1200;

/** Opening of the lens for each pixel of turning, degrees: leaving a standard view is smooth, not a jump. */
const LENS_PER_PIXEL = 0.5;

/** Nearest and farthest the eye may go, as the height of the picture; mm. */
const LEAST_HEIGHT_MM = 8;
const GREATEST_HEIGHT_MM = 6000;

/** Turns round the target. A turned view is no longer a standard one, so the picture gains depth. */
export function orbit(sight: Sight, dx: number, dy: number): Sight {
  const perPixel = 360 / PIXELS_PER_TURN;
  const elevation = Math.min(90, Math.max(-90, sight.elevation + dy * perPixel));
  const lens = Math.min(THREE_QUARTER_LENS, sight.lens + Math.hypot(dx, dy) * LENS_PER_PIXEL);
  return { ...sight, azimuth: wrapDegrees(sight.azimuth - dx * perPixel), elevation, lens };
}

/** Moves the picture with the hand. */
export function pan(sight: Sight, screen: ScreenSize, dx: number, dy: number): Sight {
  const axes = pictureAxes(sight);
  const perPixel = millimetresPerPixel(sight, screen);
  const shift = add(scale(axes.right, -dx * perPixel), scale(axes.up, dy * perPixel));
  return { ...sight, target: add(sight.target, shift) };
}

/** Enlarges (factor below 1) or shrinks what is seen, keeping what is under the pixel where it is. */
export function zoomAt(sight: Sight, screen: ScreenSize, at: Pixel, factor: number): Sight {
  const height = Math.min(GREATEST_HEIGHT_MM, Math.max(LEAST_HEIGHT_MM, sight.height * factor));
  const kept = 1 - height / sight.height;
  const towards = pan(sight, screen, (screen.width / 2 - at[0]) * kept, (screen.height / 2 - at[1]) * kept);
  return { ...towards, height };
}

/** Into -180 (excluded) to 180. */
export function wrapDegrees(angle: number): number {
  const turn = ((angle % 360) + 360) % 360;
  return turn > 180 ? turn - 360 : turn;
}
