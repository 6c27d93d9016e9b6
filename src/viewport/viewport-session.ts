/**
 * What lives as long as the canvas: the camera, the size, and who wants to know when a frame was drawn. One at a time;
 * the shelf and the keyboard find it here, without React.
 */
import type { Bounds, Vector3 } from '../../geometry';
import type { StandardView } from '../store/view-store';
import { fitSight, type Insets } from './camera/fit-sight';
import { GLIDE_MS, glide } from './camera/glide';
import type { Pixel, ScreenSize, Sight } from './camera/sight';
import { standardViews } from './camera/standard-views';
import type { Ghosts } from './layers/ghost-layer';

const noBounds: Bounds = { min: [-200, -200, -100], max: [200, 200, 100] };

export class ViewportSession {
  readonly canvas: HTMLCanvasElement;
  /** Asks for a frame; set by the drawing root. */
  invalidate: () => void = () => undefined;
  /** Says that the camera is under way, so that frames may be coarser for a moment; set by the drawing root. */
  moving: () => void = () => undefined;
  screen: ScreenSize = { width: 1, height: 1 };
  insets: Insets = { top: 24, right: 24, bottom: 24, left: 24 };
  bounds: Bounds = noBounds;
  ghosts: Ghosts | undefined;
  private seen: Sight = { ...standardViews['three-quarter'], target: [0, 0, 0], height: 600 };
  private move: { from: Sight; to: Sight; start: number } | undefined;
  private readonly watchers = new Set<() => void>();

  constructor(canvas: HTMLCanvasElement) {
    this.canvas = canvas;
  }

  get sight(): Sight {
    return this.seen;
  }

  /** Puts the camera where the hand wants it; a glide under way ends. */
  setSight(sight: Sight): void {
    this.fitted = undefined;
    this.move = undefined;
    this.seen = sight;
    this.moving();
    this.invalidate();
  }

  /** Whether the machine is still seen as it was fitted: then it is fitted again when the canvas changes its size. */
  private fitted: (() => void) | undefined;

  /** Glides to a standard view of the whole machine; at once for those who want less motion. */
  lookFrom(view: StandardView, atOnce = false): void {
    const to = fitSight(standardViews[view], this.bounds, this.screen, this.insets);
    if (atOnce || matchMedia('(prefers-reduced-motion: reduce)').matches) this.setSight(to);
    else {
      this.move = { from: this.seen, to, start: performance.now() };
      this.invalidate();
    }
    this.fitted = () => this.lookFrom(view, true);
  }

  /** Brings all of the machine into view without turning. */
  fit(): void {
    this.setSight(fitSight(this.seen, this.bounds, this.screen, this.insets));
    this.fitted = () => this.fit();
  }

  setScreen(screen: ScreenSize, insets = this.insets): void {
    this.screen = screen;
    this.insets = insets;
    this.fitted?.();
    this.invalidate();
  }

  /** Moves a glide on to the present; asks for the next frame while it lasts. */
  advance(now: number): void {
    if (!this.move) return;
    const fraction = (now - this.move.start) / GLIDE_MS;
    this.seen = glide(this.move.from, this.move.to, fraction);
    if (fraction >= 1) this.move = undefined;
    else this.invalidate();
  }

  showGhosts(ghosts: Ghosts | undefined): void {
    if (ghosts === this.ghosts) return;
    this.ghosts = ghosts;
    this.invalidate();
  }

  /** Calls after every frame, to bring labels along. */
  onFrame(watcher: () => void): () => void {
    this.watchers.add(watcher);
    return () => this.watchers.delete(watcher);
  }

  frameDrawn(): void {
    for (const watcher of this.watchers) watcher();
  }

  /** Place on the canvas of a point in the window, CSS pixels; undefined beside the canvas. */
  pixelAt(clientX: number, clientY: number): Pixel | undefined {
    const { left, top, right, bottom } = this.canvas.getBoundingClientRect();
    if (clientX < left || clientX >= right || clientY < top || clientY >= bottom) return undefined;
    return [clientX - left, clientY - top];
  }

  middle(): Vector3 {
    const { min, max } = this.bounds;
    return [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2];
  }
}

let current: ViewportSession | undefined;

export function openViewportSession(session: ViewportSession): () => void {
  current = session;
  return () => {
    if (current === session) current = undefined;
  };
}

export function currentViewport(): ViewportSession | undefined {
  return current;
}
