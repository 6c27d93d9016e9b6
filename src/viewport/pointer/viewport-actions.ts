/** Turns pointer gestures into camera moves, selection and part drags. */
import { solutionStore } from '../../store/solution-store';
import { stageStore } from '../../store/stage-store';
import { hoverPart, selectPart, viewStore } from '../../store/view-store';
import { orbit, pan, zoomAt } from '../camera/move-sight';
import { type Pixel, rayThrough } from '../camera/sight';
import { sectionPlane } from '../layers/sheet-uniforms';
import type { ViewportSession } from '../viewport-session';
import type { CanvasActions, Gesture } from './canvas-pointer';
import type { PartInHand } from './part-in-hand';
import { type Picked, pickPart } from './pick-part';
import { canBeTaken, takeFromMachine } from './take-part';

/** Enlargement for each pixel of wheel; a notch of an ordinary wheel is about 100 pixels. */
const WHEEL_STRENGTH = 0.0014;
/** Trackpads report a pinch as a wheel with much smaller steps. */
const PINCH_STRENGTH = 0.01;

export function viewportActions(session: ViewportSession, readOnly: boolean): CanvasActions {
  const pick = (pixel: Pixel): Picked | undefined => {
    // While a way is played parts are not where the plan has them: the drawing is for looking only.
    if (stageStore.getState().stage) return undefined;
    const { section } = viewStore.getState();
    const { scene } = solutionStore.getState();
    const ray = rayThrough(session.sight, session.screen, pixel);
    return pickPart(scene, ray, section && sectionPlane(section));
  };
  const take = (picked: Picked | undefined): Gesture | undefined => {
    const hand = picked && !readOnly ? takeFromMachine(session, picked.part, picked.at) : undefined;
    if (!hand || !picked) return undefined;
    selectPart(picked.part);
    return partGesture(session, hand);
  };
  return {
    press(from, event) {
      if (event.button !== 0 || event.shiftKey) return cameraGesture(session, from, slide);
      const picked = pick(from);
      // A finger on the drawing turns it, unless it is on the part already chosen.
      const takes = event.pointerType !== 'touch' || picked?.part === viewStore.getState().selectedPart;
      return (takes ? take(picked) : undefined) ?? cameraGesture(session, from, turn);
    },
    hold: (pixel) => take(pick(pixel)),
    pinch(middle, moved, factor) {
      const { screen } = session;
      session.setSight(zoomAt(pan(session.sight, screen, moved[0], moved[1]), screen, middle, factor));
    },
    click: (pixel) => selectPart(pick(pixel)?.part),
    hover(pixel) {
      const part = pixel && pick(pixel)?.part;
      hoverPart(part);
      const { scene } = solutionStore.getState();
      session.canvas.dataset.over = part ?? '';
      session.canvas.dataset.grab = String(!readOnly && part !== undefined && canBeTaken(scene, part));
    },
    wheel(pixel, event) {
      const strength = event.ctrlKey ? PINCH_STRENGTH : WHEEL_STRENGTH;
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 33 : 1;
      const factor = Math.exp(Math.max(-300, Math.min(300, event.deltaY * lines)) * strength);
      session.setSight(zoomAt(session.sight, session.screen, pixel, factor));
    },
  };
}

type MoveCamera = (session: ViewportSession, dx: number, dy: number) => void;

const turn: MoveCamera = (session, dx, dy) => session.setSight(orbit(session.sight, dx, dy));
const slide: MoveCamera = (session, dx, dy) => session.setSight(pan(session.sight, session.screen, dx, dy));

function cameraGesture(session: ViewportSession, from: Pixel, move: MoveCamera): Gesture {
  const before = session.sight;
  let last = from;
  return {
    move(pixel) {
      move(session, pixel[0] - last[0], pixel[1] - last[1]);
      last = pixel;
    },
    end: () => undefined,
    cancel: () => session.setSight(before),
  };
}

/** Alt, or the switch on the tool bar, frees the part from mounts, also in the middle of a drag. */
function partGesture(session: ViewportSession, hand: PartInHand): Gesture {
  let at: Pixel | undefined;
  const keys = new AbortController();
  const follow = (alt: boolean) => {
    if (at) hand.moveTo(at, alt || viewStore.getState().freePlacement);
  };
  for (const type of ['keydown', 'keyup'] as const) {
    window.addEventListener(
      type,
      (event) => {
        if (event.key !== 'Alt') return;
        event.preventDefault();
        follow(type === 'keydown');
      },
      { signal: keys.signal },
    );
  }
  session.canvas.dataset.holding = 'true';
  const finish = (act: () => void) => () => {
    keys.abort();
    delete session.canvas.dataset.holding;
    act();
  };
  return {
    move(pixel, event) {
      at = pixel;
      follow(event.altKey);
    },
    end: finish(() => hand.drop()),
    cancel: finish(() => hand.cancel()),
  };
}
