/** The pictures of a sheet, coming one by one once its words stand. */
import { useEffect, useMemo, useState } from 'react';
import type { Scene } from '../../../geometry';
import type { StepPicturePort, StepPictureWish } from '../../store/step-pictures';
import type { AssemblyAnswer } from '../../workers/assembly-request';
import { chooseWay } from '../way-in/choose-way';

export interface StepPictures {
  /** Addresses by key of the step. */
  readonly pictures: ReadonlyMap<string, string>;
  readonly wanted: number;
  /** Whether more will come. */
  readonly drawing: boolean;
}

const none: ReadonlyMap<string, string> = new Map();

export function useStepPictures(
  scene: Scene,
  answer: AssemblyAnswer | undefined,
  draw: StepPicturePort | undefined,
): StepPictures {
  const wishes = useMemo(() => (answer ? wishesOf(answer) : []), [answer]);
  const [pictures, setPictures] = useState(none);
  const [drawing, setDrawing] = useState(false);
  useEffect(() => {
    if (!answer || !draw || wishes.length === 0) return;
    const found = new Map<string, string>();
    setDrawing(true);
    const stop = draw(scene, answer.units, wishes, {
      onPicture: (key, address) => {
        found.set(key, address);
        setPictures(new Map(found));
      },
      onEnd: () => setDrawing(false),
    });
    return () => {
      stop();
      setPictures(none);
      setDrawing(false);
      for (const address of found.values()) URL.revokeObjectURL(address);
    };
  }, [scene, answer, wishes, draw]);
  return { pictures, wanted: wishes.length, drawing };
}

function wishesOf(answer: AssemblyAnswer): readonly StepPictureWish[] {
  return answer.subjects.flatMap(({ key, motions }): StepPictureWish[] => {
    const way = chooseWay(answer, { kind: 'step', key });
    if (!way) return [];
    const { absent, moving, enclosure } = way;
    return [{ key, absent, moving, enclosure, motions }];
  });
}
