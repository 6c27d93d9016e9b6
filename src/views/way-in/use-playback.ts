/** Time along a path: dragged, stepped by keys, or run by the clock. Only poses are written; nothing is worked out. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { type InsertionPath, poseOnPath } from '../../../geometry';
import { moveOnStage } from '../../store/stage-store';
import { stationsOf } from './way-stations';

/** How long a whole way takes, and how long each stop is looked at by those who want less motion. */
const PLAYED_MS = 3200;
const STATION_MS = 1100;

export interface Playback {
  /** Share of the way, 0 outside, 1 seated. */
  readonly t: number;
  readonly playing: boolean;
  readonly seek: (t: number) => void;
  readonly toggle: () => void;
  readonly pause: () => void;
}

/** Plays towards `last`; from there, or when the way is taken backwards, it begins anew. */
export function usePlayback(path: InsertionPath, last: number, backwards: boolean): Playback {
  const [from, to] = backwards ? [last, 0] : [0, last];
  const [t, setT] = useState(from);
  const [playing, setPlaying] = useState(false);
  const now = useRef(from);
  const put = useCallback(
    (next: number) => {
      now.current = next;
      setT(next);
      moveOnStage(poseOnPath(path, next));
    },
    [path],
  );
  useEffect(() => {
    put(from);
    setPlaying(!wantsLessMotion());
  }, [put, from]);
  useEffect(() => {
    if (!playing) return;
    const end = () => setPlaying(false);
    return wantsLessMotion()
      ? stepThrough(stationsOf(path, last), now.current, to, put, end)
      : run(now.current, to, put, end);
  }, [playing, path, last, to, put]);
  return {
    t,
    playing,
    seek: (next) => {
      setPlaying(false);
      put(Math.max(0, Math.min(last, next)));
    },
    pause: () => setPlaying(false),
    toggle: () => {
      if (!playing && Math.abs(now.current - to) < 1e-6) put(from);
      setPlaying(!playing);
    },
  };
}

function wantsLessMotion(): boolean {
  return matchMedia('(prefers-reduced-motion: reduce)').matches;
}

function run(from: number, to: number, put: (t: number) => void, end: () => void): () => void {
  let start: number | undefined;
  let frame = requestAnimationFrame(function next(time) {
    start ??= time;
    const gone = (time - start) / PLAYED_MS;
    if (gone >= Math.abs(to - from)) {
      put(to);
      end();
      return;
    }
    put(from + Math.sign(to - from) * gone);
    frame = requestAnimationFrame(next);
  });
  return () => cancelAnimationFrame(frame);
}

/** From stop to stop without anything in between. */
function stepThrough(
  stations: readonly number[],
  from: number,
  to: number,
  put: (t: number) => void,
  end: () => void,
): () => void {
  const ahead = stations.filter((at) => (to > from ? at > from + 1e-6 : at < from - 1e-6));
  const stops = to > from ? ahead : [...ahead].reverse();
  const timer = setInterval(() => {
    const next = stops.shift();
    if (next !== undefined) put(next);
    if (stops.length === 0) end();
  }, STATION_MS);
  return () => clearInterval(timer);
}
