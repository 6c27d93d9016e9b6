/** Puts the stage into the drawing for as long as there is one. */
import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { stageStore } from '../../store/stage-store';
import type { SheetLayers } from '../sheet-layers';
import type { ViewportSession } from '../viewport-session';
import { StageLayers } from './stage-layers';

interface StageDrawingProps {
  readonly session: ViewportSession;
  readonly layers: SheetLayers;
}

export function StageDrawing({ session, layers }: StageDrawingProps) {
  const invalidate = useThree((state) => state.invalidate);
  const drawing = useMemo(() => new StageLayers(layers), [layers]);
  useEffect(() => {
    const lookAnew = () => {
      layers.refresh();
      session.fit();
    };
    layers.attach(drawing);
    lookAnew();
    const stop = stageStore.subscribe(({ stage, displacement }, before) => {
      if (!stage) return;
      if (stage !== before.stage) lookAnew();
      else if (displacement) {
        drawing.move(stage, displacement);
        invalidate();
      }
    });
    return () => {
      stop();
      layers.attach(undefined);
      lookAnew();
      drawing.dispose();
    };
  }, [session, layers, drawing, invalidate]);
  return drawing.meshes.map((mesh) => <primitive key={mesh.uuid} object={mesh} dispose={null} />);
}
