/** The pictures of a sheet, coming one by one once its words stand. */
import { useEffect, useRef, useState } from 'react';
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

/** An answer and what it was found for. */
export interface AnsweredPlan {
  readonly answer: AssemblyAnswer;
  readonly scene: Scene;
  /** The plan's parts as text: what is said of leads or prices shows in no picture. */
  readonly parts: string;
}

/** Drawn anew when a part changes. */
export function useStepPictures(
  answered: AnsweredPlan | undefined,
  draw: StepPicturePort | undefined,
): StepPictures {
  const [pictures, setPictures] = useState(none);
  const [drawing, setDrawing] = useState(false);
  const asked = useRef(answered);
  asked.current = answered;
  const parts = answered?.parts;
  const wanted = answered?.answer.subjects.length ?? 0;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the parts say when there is something new to draw.
  useEffect(() => {
    if (!asked.current || !draw) return;
    const { scene, answer } = asked.current;
    const found = new Map<string, string>();
    setDrawing(true);
    const stop = draw(scene, answer.units, wishesOf(answer), {
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
  }, [parts, draw]);
  return { pictures, wanted, drawing };
}

function wishesOf(answer: AssemblyAnswer): readonly StepPictureWish[] {
  return answer.subjects.flatMap(({ key, motions }): StepPictureWish[] => {
    const way = chooseWay(answer, { kind: 'step', key });
    if (!way) return [];
    const { absent, moving, enclosure } = way;
    return [{ key, absent, moving, enclosure, motions }];
  });
}
