/**
 * What the pointer does on the canvas. One gesture at a time: a press is a click until it moves, then it is either
 * a part drag or a camera move to its end, so neither ever has to be switched off for the other. Every gesture ends on
 * release, cancel, lost capture, Escape, blur of the window and unmounting.
 */
import type { Pixel } from '../camera/sight';
import { isDragged } from './drag-plane';

/** A gesture under way. */
export interface Gesture {
  move(pixel: Pixel, event: PointerEvent): void;
  /** The pointer was released where it is. */
  end(): void;
  /** The gesture must leave no trace. */
  cancel(): void;
}

export interface CanvasActions {
  /** The gesture a press becomes once it moves. */
  press(pixel: Pixel, event: PointerEvent): Gesture;
  /** The gesture a finger held still becomes; undefined when there is nothing to hold. */
  hold(pixel: Pixel): Gesture | undefined;
  /** Two fingers: how their middle moved, and the share their distance shrank by. */
  pinch(middle: Pixel, moved: Pixel, factor: number): void;
  click(pixel: Pixel): void;
  hover(pixel: Pixel | undefined): void;
  wheel(pixel: Pixel, event: WheelEvent): void;
}

/** A finger that stays this long takes a part up. */
const HOLD_MS = 450;

interface Press {
  readonly id: number;
  readonly from: Pixel;
  readonly event: PointerEvent;
  gesture: Gesture | undefined;
  timer: number;
}

export class CanvasPointer {
  private readonly canvas: HTMLCanvasElement;
  private readonly actions: CanvasActions;
  private readonly stopping = new AbortController();
  private press: Press | undefined;
  private readonly fingers = new Map<number, Pixel>();

  constructor(canvas: HTMLCanvasElement, actions: CanvasActions) {
    this.canvas = canvas;
    this.actions = actions;
    const { signal } = this.stopping;
    const on = <K extends keyof HTMLElementEventMap>(type: K, act: (event: HTMLElementEventMap[K]) => void) =>
      canvas.addEventListener(type, act, { signal });
    on('pointerdown', (event) => this.down(event));
    on('pointermove', (event) => this.moved(event));
    on('pointerup', (event) => this.up(event));
    on('pointercancel', (event) => this.lost(event));
    on('lostpointercapture', (event) => this.lost(event));
    on('pointerleave', () => this.actions.hover(undefined));
    on('contextmenu', (event) => event.preventDefault());
    canvas.addEventListener('wheel', (event) => this.wheeled(event), { signal, passive: false });
    window.addEventListener('blur', () => this.cancel(), { signal });
    window.addEventListener('keydown', (event) => this.key(event), { signal, capture: true });
  }

  dispose(): void {
    this.cancel();
    this.stopping.abort();
  }

  /** Ends whatever is under way without a trace. */
  cancel(): void {
    const press = this.release();
    press?.gesture?.cancel();
    this.fingers.clear();
  }

  private down(event: PointerEvent): void {
    const pixel = pixelOf(event);
    if (event.pointerType === 'touch') this.fingers.set(event.pointerId, pixel);
    if (this.press) {
      // A second finger turns a one-finger gesture into a pinch; what the first had begun is undone.
      this.release()?.gesture?.cancel();
      return;
    }
    if (this.fingers.size > 1) return;
    this.canvas.setPointerCapture(event.pointerId);
    const press: Press = { id: event.pointerId, from: pixel, event, gesture: undefined, timer: 0 };
    if (event.pointerType === 'touch')
      press.timer = window.setTimeout(() => {
        if (this.press === press && !press.gesture) press.gesture = this.actions.hold(pixel);
      }, HOLD_MS);
    this.press = press;
  }

  private moved(event: PointerEvent): void {
    const pixel = pixelOf(event);
    if (this.fingers.size === 2 && this.fingers.has(event.pointerId)) {
      this.pinched(event.pointerId, pixel);
      return;
    }
    const { press } = this;
    if (!press) {
      if (event.pointerType !== 'touch') this.actions.hover(pixel);
      return;
    }
    if (event.pointerId !== press.id) return;
    if (this.fingers.has(press.id)) this.fingers.set(press.id, pixel);
    if (!press.gesture) {
      if (!isDragged(press.from, pixel)) return;
      window.clearTimeout(press.timer);
      press.gesture = this.actions.press(press.from, press.event);
    }
    press.gesture.move(pixel, event);
  }

  private pinched(id: number, pixel: Pixel): void {
    const before = [...this.fingers.values()];
    this.fingers.set(id, pixel);
    const after = [...this.fingers.values()];
    const [a, b, c, d] = [before[0], before[1], after[0], after[1]];
    if (!a || !b || !c || !d) return;
    const apart = (p: Pixel, q: Pixel) => Math.max(1, Math.hypot(p[0] - q[0], p[1] - q[1]));
    const middle: Pixel = [(c[0] + d[0]) / 2, (c[1] + d[1]) / 2];
    const moved: Pixel = [middle[0] - (a[0] + b[0]) / 2, middle[1] - (a[1] + b[1]) / 2];
    this.actions.pinch(middle, moved, apart(a, b) / apart(c, d));
  }

  private up(event: PointerEvent): void {
    this.fingers.delete(event.pointerId);
    if (event.pointerId !== this.press?.id) return;
    const press = this.release();
    if (press?.gesture) press.gesture.end();
    else if (press?.event.button === 0) this.actions.click(press.from);
  }

  private lost(event: PointerEvent): void {
    // A finger whose capture was given up for a pinch is still on the glass.
    if (event.type === 'pointercancel') this.fingers.delete(event.pointerId);
    if (event.pointerId === this.press?.id) this.release()?.gesture?.cancel();
  }

  private key(event: KeyboardEvent): void {
    if (event.key !== 'Escape' || !this.press?.gesture) return;
    // The drag takes this Escape; it must not close something else as well.
    event.preventDefault();
    event.stopPropagation();
    this.cancel();
  }

  private wheeled(event: WheelEvent): void {
    event.preventDefault();
    this.actions.wheel([event.offsetX, event.offsetY], event);
  }

  /** Forgets the press first, so that the capture it gives up cannot cancel it again. */
  private release(): Press | undefined {
    const { press } = this;
    this.press = undefined;
    if (!press) return undefined;
    window.clearTimeout(press.timer);
    if (this.canvas.hasPointerCapture(press.id)) this.canvas.releasePointerCapture(press.id);
    return press;
  }
}

function pixelOf(event: PointerEvent): Pixel {
  return [event.offsetX, event.offsetY];
}
