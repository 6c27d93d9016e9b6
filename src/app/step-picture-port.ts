/** Joins the assembly sheet to the drawing: neither knows the other. */
import type { StepPicturePort } from '../store/step-pictures';

export const stepPicturePort: StepPicturePort = (scene, units, wishes, listener) => {
  let stopped = false;
  import('../viewport/stage/draw-steps')
    .then(({ drawSteps }) => drawSteps(scene, units, wishes, listener, () => stopped))
    // A sheet without pictures is still a sheet.
    .catch(() => {
      if (!stopped) listener.onEnd();
    });
  return () => {
    stopped = true;
  };
};
