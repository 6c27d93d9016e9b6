/** The drawing inside the canvas: follows the stores, and draws a frame only when one of them has changed. */
import { AdaptiveDpr } from '@react-three/drei/core/AdaptiveDpr';
import { useFrame, useThree } from '@react-three/fiber';
import { lazy, Suspense, useEffect, useMemo } from 'react';
import { useStore } from 'zustand';
import { boundsOfBoxes, type Scene } from '../../geometry';
import { useAir } from '../store/air-store';
import { solutionStore } from '../store/solution-store';
import { stageStore } from '../store/stage-store';
import { viewStore } from '../store/view-store';
import { SightCamera } from './camera/camera-from-sight';
import { readPalette, watchTheme } from './palette';
import { SheetLayers } from './sheet-layers';
import type { ViewportSession } from './viewport-session';

const StageDrawing = lazy(() =>
  import('./stage/stage-drawing').then((module) => ({ default: module.StageDrawing })),
);
const AirArrows = lazy(() => import('./air/air-arrows').then((module) => ({ default: module.AirArrows })));

export function Sheet({ session }: { readonly session: ViewportSession }) {
  const invalidate = useThree((state) => state.invalidate);
  const staged = useStore(stageStore, ({ stage }) => stage !== undefined);
  const airShown = useAir((state) => state.shown);
  const layers = useMemo(() => new SheetLayers(), []);
  const camera = useMemo(() => new SightCamera(), []);
  useEffect(() => () => layers.dispose(), [layers]);
  useEffect(() => followStores(session, layers, invalidate), [session, layers, invalidate]);

  // A positive priority takes rendering over from fiber, so that nothing is drawn but by this one call.
  useFrame(({ gl, scene }) => {
    session.advance(performance.now());
    const { sight, screen, bounds } = session;
    layers.ghosts.update(session.ghosts);
    layers.uniforms.setCanvas(screen, gl.getPixelRatio());
    layers.uniforms.setSight(sight, bounds);
    camera.follow(sight, screen, bounds);
    gl.render(scene, camera);
    countFrame(session.canvas, gl.info.render.calls);
    session.frameDrawn();
  }, 1);
  return (
    <>
      <AdaptiveDpr />
      {layers.meshes.map((mesh) => (
        <primitive key={mesh.uuid} object={mesh} dispose={null} />
      ))}
      <Suspense>{airShown && <AirArrows />}</Suspense>
      <Suspense>{staged && <StageDrawing session={session} layers={layers} />}</Suspense>
    </>
  );
}

/** Read by tests of idleness and of drawing cost, and by anyone who looks at the page. */
function countFrame(canvas: HTMLCanvasElement, calls: number): void {
  canvas.dataset.frames = String(Number(canvas.dataset.frames ?? 0) + 1);
  canvas.dataset.drawcalls = String(calls);
}

function followStores(session: ViewportSession, layers: SheetLayers, invalidate: () => void): () => void {
  let palette = readPalette(document.body);
  const update = () => {
    const { scene, solution } = solutionStore.getState();
    session.bounds = layers.stageBounds ?? machineBounds(scene) ?? session.bounds;
    layers.update({ scene, solution, view: viewStore.getState() }, palette);
    invalidate();
  };
  const repaint = () => {
    palette = readPalette(document.body);
    layers.setPalette(palette);
    update();
  };
  layers.refresh = update;
  repaint();
  const stops = [
    solutionStore.subscribe(update),
    viewStore.subscribe((state, before) => {
      if (state.fitRequest !== before.fitRequest) {
        if (state.view === before.view) session.fit();
        else session.lookFrom(state.view);
      }
      update();
    }),
    watchTheme(repaint),
  ];
  return () => {
    for (const stop of stops) stop();
  };
}

function machineBounds(scene: Scene) {
  return boundsOfBoxes(scene.boxes.filter(({ body }) => body.role === 'solid').map(({ box }) => box));
}
