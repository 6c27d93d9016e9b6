/** Under the drawing while a way is played: what it is, how sure it is, where it is tight, and the time along it. */
import { useEffect, useRef } from 'react';
import { type InsertionPath, poseOnPath } from '../../../geometry';
import { clearStage, setStage } from '../../store/stage-store';
import { usePlanStore, useSolutionStore } from '../../store/use-store';
import { selectPart } from '../../store/view-store';
import { endPlaying, playStep, type WayWanted } from '../../store/way-in-store';
import type { AssemblyAnswer } from '../../workers/assembly-request';
import type { ChosenWay } from './choose-way';
import { usePlayback } from './use-playback';
import { useWay } from './use-way';
import { momentWords } from './way-stations';
import './way-in.css';

export function WayInBar({ wanted }: { readonly wanted: WayWanted }) {
  const plan = useSolutionStore((state) => state.plan);
  const planId = usePlanStore((state) => state.planId);
  const state = useWay(plan, wanted);
  useEffect(() => {
    selectPart(undefined);
    return clearStage;
  }, []);
  const playedPlan = useRef(planId);
  useEffect(() => {
    // Another plan has other parts, so playing ends with it.
    if (planId !== playedPlan.current) endPlaying();
  }, [planId]);
  const title =
    state.kind === 'done' ? state.way.title : state.kind === 'working' ? state.title : 'How it goes in';
  return (
    <section
      className="way-in"
      aria-label="How it goes in"
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.preventDefault();
        endPlaying();
      }}
    >
      <div className="way-in-head">
        <h3>{title}</h3>
        {state.kind === 'done' && <StepButtons answer={state.answer} step={state.way.step} />}
        <button type="button" className="button small" onClick={endPlaying}>
          Close
        </button>
      </div>
      {state.kind === 'problem' && <p role="alert">{state.message}</p>}
      {state.kind === 'working' && (
        <div className="way-in-row">
          <p role="status">Looking for the way…</p>
          <progress aria-label="Way in" max={1} value={state.share} />
        </div>
      )}
      {state.kind === 'done' && <Played key={`${state.way.title} ${state.way.step}`} {...state} />}
    </section>
  );
}

function StepButtons({
  answer,
  step,
}: {
  readonly answer: AssemblyAnswer;
  readonly step: number | undefined;
}) {
  if (step === undefined) return null;
  const { subjects } = answer;
  const go = (by: number) => {
    const subject = subjects[step + by];
    if (subject) playStep(subject.key);
  };
  return (
    <span className="way-in-steps">
      <button
        type="button"
        className="button small icon"
        aria-label="Step before"
        disabled={step === 0}
        onClick={() => go(-1)}
      >
        ‹
      </button>
      <span>
        Step {step + 1} of {subjects.length}
      </span>
      <button
        type="button"
        className="button small icon"
        aria-label="Next step"
        disabled={step === subjects.length - 1}
        onClick={() => go(1)}
      >
        ›
      </button>
    </span>
  );
}

/** Keys by which a slider is moved. */
const SLIDER_KEYS = /^(Arrow|Page|Home|End)/;

interface PlayedProps {
  readonly answer: AssemblyAnswer;
  readonly way: ChosenWay;
  readonly path: InsertionPath;
}

function Played({ answer, way, path }: PlayedProps) {
  const scene = useSolutionStore((state) => state.scene);
  const last = path.furthest?.t ?? 1;
  useEffect(() => {
    const start = poseOnPath(path, 0);
    setStage(
      {
        scene,
        units: answer.units,
        absent: way.absent,
        moving: way.moving,
        enclosure: way.enclosure,
        swept: path.swept,
        mark: markOf(path),
        meets: path.furthest !== undefined,
        start,
      },
      way.takenOff ? poseOnPath(path, last) : start,
    );
  }, [scene, answer, way, path, last]);
  const { t, playing, seek, toggle, pause } = usePlayback(path, last, way.takenOff);
  const blocked = path.proof !== 'certified free';
  const moment = path.furthest && t >= last - 1e-6 ? `Meets ${path.furthest.name}` : momentWords(path, t);
  return (
    <>
      <div className="way-in-row">
        <button type="button" className="button small way-in-play" onClick={toggle}>
          {playing ? 'Pause' : 'Play'}
        </button>
        <input
          type="range"
          className="way-in-slider"
          aria-label="Along the way in"
          aria-valuetext={`${moment}, ${Math.round(t * 100)} % of the way`}
          min={0}
          max={last}
          step={0.005}
          value={t}
          // Whoever takes hold of it has it, also where it stands already.
          onPointerDown={pause}
          onKeyDown={(event) => {
            if (SLIDER_KEYS.test(event.key)) pause();
          }}
          onChange={(event) => seek(Number(event.target.value))}
        />
        <span className="way-in-moment number">{moment}</span>
        {path.gap && (
          <button type="button" className="button small" onClick={() => seek(path.gap?.t ?? t)}>
            Tightest
          </button>
        )}
      </div>
      <p className={blocked ? 'way-in-said fault' : 'way-in-said'} role={blocked ? 'alert' : 'status'}>
        {path.sentence}
      </p>
    </>
  );
}

function markOf({ gap, furthest }: InsertionPath) {
  if (furthest) {
    const { points, left, name } = furthest;
    return { points, figure: `${left.toFixed(0)} mm left`, word: `meets ${name}` };
  }
  if (!gap) return undefined;
  return {
    points: gap.points,
    figure: `${gap.millimetres.toFixed(1)} mm`,
    word: `on the way past ${gap.name}`,
  };
}
