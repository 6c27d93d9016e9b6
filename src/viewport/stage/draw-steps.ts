/** Pictures of steps, drawn one after another beside the page with the sheet's own layers, in ink for white paper. */
import { Scene as ThreeScene, WebGLRenderer } from 'three';
import { identityTransform, type Scene } from '../../../geometry';
import type { Stage, StagedUnit } from '../../store/stage-store';
import type { StepPictureListener, StepPictureWish } from '../../store/step-pictures';
import { SightCamera } from '../camera/camera-from-sight';
import { WorldStrokes } from '../layers/world-strokes';
import { readLightPalette } from '../palette';
import { SheetLayers } from '../sheet-layers';
import { StageLayers } from './stage-layers';
import { stepPicture } from './step-picture';

/** CSS pixels of a picture, and device pixels of each: fine enough for paper at 70 mm wide. */
const SCREEN = { width: 400, height: 300 };
const PIXEL_RATIO = 2;
/** How pale what is there already is drawn. */
const PALE = 0.5;
const ARROW_WEIGHT = 20;

/** Ends with no picture where nothing can be drawn. The page gets its turn between two pictures. */
export async function drawSteps(
  scene: Scene,
  units: readonly StagedUnit[],
  wishes: readonly StepPictureWish[],
  listener: StepPictureListener,
  isStopped: () => boolean,
): Promise<void> {
  const studio = openStudio();
  try {
    for (const wish of wishes) {
      await new Promise((resolve) => setTimeout(resolve));
      if (isStopped() || !studio) break;
      const { key, motions, absent, moving, enclosure } = wish;
      const still = { swept: [], mark: undefined, meets: false, start: identityTransform, pale: PALE };
      const drawn = studio.draw({ scene, units, absent, moving, enclosure, ...still }, motions);
      const blob = drawn && (await new Promise<Blob | null>((resolve) => studio.canvas.toBlob(resolve)));
      if (isStopped()) break;
      if (blob) listener.onPicture(key, URL.createObjectURL(blob));
    }
  } finally {
    studio?.close();
  }
  if (!isStopped()) listener.onEnd();
}

interface Studio {
  readonly canvas: HTMLCanvasElement;
  /** Whether there was anything to draw. */
  draw(stage: Stage, motions: StepPictureWish['motions']): boolean;
  close(): void;
}

/** A canvas of its own; undefined when the browser has no WebGL 2. */
function openStudio(): Studio | undefined {
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('webgl2', { alpha: true, antialias: false, preserveDrawingBuffer: true });
  if (!context) return undefined;
  const gl = new WebGLRenderer({ canvas, context });
  gl.setPixelRatio(PIXEL_RATIO);
  gl.setSize(SCREEN.width, SCREEN.height, false);
  gl.setClearAlpha(0);
  const palette = readLightPalette(document.body);
  const layers = new SheetLayers();
  const arrow = new WorldStrokes(layers.uniforms, { depth: 'always', order: 60 });
  const staging = new StageLayers(layers);
  layers.setPalette(palette);
  arrow.setTint(palette.ink);
  const world = new ThreeScene();
  world.add(...layers.meshes, arrow.mesh);
  const camera = new SightCamera();
  return {
    canvas,
    draw(stage, motions) {
      const picture = stepPicture(stage, motions, SCREEN);
      if (!picture) return false;
      staging.showStage(stage, picture.displacement);
      arrow.set(picture.arrow, ARROW_WEIGHT);
      layers.uniforms.setCanvas(SCREEN, PIXEL_RATIO);
      layers.uniforms.setSight(picture.sight, picture.bounds);
      camera.follow(picture.sight, SCREEN, picture.bounds);
      gl.render(world, camera);
      return true;
    },
    close() {
      staging.dispose();
      layers.dispose();
      arrow.dispose();
      gl.dispose();
      gl.forceContextLoss();
    },
  };
}
