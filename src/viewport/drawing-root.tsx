/** Owns the canvas: makes it, draws on it, follows the size of its place, and takes it away again. */
import { createRoot } from '@react-three/fiber';
import { NoToneMapping, WebGLRenderer } from 'three';
import { planStore } from '../store/plan-store';
import { viewStore } from '../store/view-store';
import { CanvasPointer } from './pointer/canvas-pointer';
import { viewportActions } from './pointer/viewport-actions';
import { Sheet } from './sheet';
import { openViewportSession, ViewportSession } from './viewport-session';

/** Finer than this the eye gains nothing and the graphics card pays. */
const MOST_PIXEL_RATIO = 2;

export interface DrawingRoot {
  readonly session: ViewportSession;
  dispose(): void;
}

export interface DrawingHooks {
  readonly readOnly: boolean;
  /** The context went away (a driver restarted, too many pages), or came back. */
  readonly contextLost: () => void;
  readonly contextRestored: () => void;
}

/**
 * Makes a canvas in `host`. Throws when the browser has no WebGL 2. A new canvas for every root: a canvas whose root
 * was taken away has lost its context for good.
 */
export function openDrawing(host: HTMLElement, hooks: DrawingHooks): DrawingRoot {
  const canvas = document.createElement('canvas');
  canvas.setAttribute('role', 'img');
  // Asked for here rather than by three, which would write an error to the console before it throws. Strokes smooth
  // their own edges and cover those of all faces, so the frame needs no multisampling.
  const context = canvas.getContext('webgl2', { alpha: true, antialias: false, stencil: false });
  if (!context) throw new Error('no WebGL 2');
  const gl = new WebGLRenderer({ canvas, context });
  gl.toneMapping = NoToneMapping;
  gl.setClearAlpha(0);
  host.append(canvas);
  const session = new ViewportSession(canvas);
  const root = createRoot(canvas);
  const configure = () => {
    const { clientWidth, clientHeight } = host;
    session.setScreen({ width: Math.max(1, clientWidth), height: Math.max(1, clientHeight) });
    void root.configure({
      gl,
      frameloop: 'demand',
      dpr: [1, MOST_PIXEL_RATIO],
      // While the camera moves, a fine screen is drawn at one pixel a point: see AdaptiveDpr in the sheet.
      performance: {
        min: 1 / Math.min(MOST_PIXEL_RATIO, Math.max(1, window.devicePixelRatio)),
        debounce: 300,
      },
      size: { width: session.screen.width, height: session.screen.height, top: 0, left: 0 },
      flat: true,
    });
  };
  configure();
  const store = root.render(<Sheet session={session} />);
  session.invalidate = () => store.getState().invalidate();
  session.moving = () => store.getState().performance.regress();
  const pointer = new CanvasPointer(canvas, viewportActions(session, hooks.readOnly));
  const stopLooking = lookAtEachPlan(session);
  const resized = new ResizeObserver(configure);
  resized.observe(host);
  const close = openViewportSession(session);
  const stopWatching = watchContext(canvas, session, pointer, hooks);
  return {
    session,
    dispose() {
      close();
      stopLooking();
      stopWatching();
      resized.disconnect();
      pointer.dispose();
      root.unmount();
      canvas.remove();
    },
  };
}

/** Another plan is shown whole from the view in use; edits of a plan leave the camera alone. */
function lookAtEachPlan(session: ViewportSession): () => void {
  const look = () => session.lookFrom(viewStore.getState().view, true);
  look();
  return planStore.subscribe((state, before) => {
    if (state.planId !== before.planId) look();
  });
}

function watchContext(
  canvas: HTMLCanvasElement,
  session: ViewportSession,
  pointer: CanvasPointer,
  hooks: DrawingHooks,
): () => void {
  const lost = (event: Event) => {
    // Without this the browser never gives the context back.
    event.preventDefault();
    pointer.cancel();
    hooks.contextLost();
  };
  const restored = () => {
    hooks.contextRestored();
    session.invalidate();
  };
  canvas.addEventListener('webglcontextlost', lost);
  canvas.addEventListener('webglcontextrestored', restored);
  return () => {
    canvas.removeEventListener('webglcontextlost', lost);
    canvas.removeEventListener('webglcontextrestored', restored);
  };
}
