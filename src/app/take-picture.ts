/** The drawing as a picture for paper, which cannot show a live canvas. */
import { currentViewport } from '../viewport/viewport-session';

/** Two seconds without a frame: the page is hidden or cannot draw, and prints without a picture. */
const PATIENCE_MS = 2000;

/** A PNG as an inline address, taken in the very frame it is drawn in; undefined when nothing can be drawn. */
export async function takePicture(): Promise<string | undefined> {
  const session = currentViewport();
  if (!session) return undefined;
  return new Promise((resolve) => {
    const finish = (picture: string | undefined) => {
      stop();
      clearTimeout(timer);
      resolve(picture);
    };
    const stop = session.onFrame(() => finish(session.canvas.toDataURL('image/png')));
    const timer = setTimeout(() => finish(undefined), PATIENCE_MS);
    session.invalidate();
  });
}

/** Puts the light sheet in place while something is done: paper is white. */
export async function onLightSheet(action: () => Promise<void>): Promise<void> {
  const { dataset } = document.documentElement;
  const before = dataset.sheet;
  dataset.sheet = 'light';
  try {
    await action();
  } finally {
    dataset.sheet = before;
  }
}
