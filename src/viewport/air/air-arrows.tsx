/** The arrows inside the canvas; they follow the picture of the air, the cut and the colour of the sheet. */
import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { airStore } from '../../store/air-store';
import { stageStore } from '../../store/stage-store';
import { viewStore } from '../../store/view-store';
import { readPalette, watchTheme } from '../palette';
import { ArrowLayer } from './arrow-layer';

export function AirArrows() {
  const invalidate = useThree((state) => state.invalidate);
  const layer = useMemo(() => new ArrowLayer(), []);
  useEffect(() => {
    const update = () => {
      // A part on its way out stands in no air.
      const picture = stageStore.getState().stage ? undefined : airStore.getState().picture;
      layer.update(picture, viewStore.getState().section);
      invalidate();
    };
    const repaint = () => {
      layer.setPalette(readPalette(document.body));
      update();
    };
    repaint();
    const stops = [
      airStore.subscribe(update),
      stageStore.subscribe((state, before) => {
        if (state.stage !== before.stage) update();
      }),
      viewStore.subscribe((state, before) => {
        if (state.section !== before.section) update();
      }),
      watchTheme(repaint),
    ];
    return () => {
      for (const stop of stops) stop();
      layer.dispose();
      invalidate();
    };
  }, [layer, invalidate]);
  return (
    <>
      {layer.meshes.map((mesh) => (
        <primitive key={mesh.uuid} object={mesh} dispose={null} />
      ))}
    </>
  );
}
