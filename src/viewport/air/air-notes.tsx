/** Over the drawing: temperatures at the arrows, and the key to their size and colour. */
import { useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import { useStore } from 'zustand';
import { type Load, loads } from '../../../geometry';
import { useAir } from '../../store/air-store';
import { hideAir, showAir } from '../../store/show-air';
import { stageStore } from '../../store/stage-store';
import { useViewStore } from '../../store/use-store';
import { projectPoint } from '../camera/sight';
import { type LabelWish, placeLabels, type Rectangle } from '../overlay/place-labels';
import type { ViewportSession } from '../viewport-session';
import { type AirLabel, airLabels } from './air-labels';
import { shownArrows } from './arrow-layer';
import './air-notes.css';

const LOAD_NAMES: Readonly<Record<Load, string>> = {
  idle: 'idle',
  game: 'game',
  render: 'render',
  worst: 'worst case',
};

/** On a narrow drawing fewer temperatures are written. */
const NARROW_PX = 560;
const FEW = 5;

export function AirNotes({ session }: { readonly session: ViewportSession }) {
  const picture = useAir((state) => state.picture);
  const problem = useAir((state) => state.problem);
  const section = useViewStore((state) => state.section);
  const staged = useStore(stageStore, (state) => state.stage !== undefined);
  const narrow = session.screen.width < NARROW_PX;
  const labels = useMemo(
    () =>
      picture && !staged
        ? airLabels({ ...picture, arrows: shownArrows(picture, section) }, narrow ? FEW : undefined)
        : [],
    [picture, section, narrow, staged],
  );
  const plates = useRef(new Map<string, HTMLElement>());
  const key = useRef<HTMLElement>(null);
  useLayoutEffect(() => layOut(session, labels, plates.current, key.current), [session, labels]);
  useEffect(
    () => session.onFrame(() => layOut(session, labels, plates.current, key.current)),
    [session, labels],
  );
  return (
    <>
      <div className="air-plates" aria-hidden="true">
        {labels.map(({ id, words }) => (
          <span
            key={id}
            className="air-plate"
            ref={(element) => {
              if (element) plates.current.set(id, element);
              else plates.current.delete(id);
            }}
          >
            {words}
          </span>
        ))}
      </div>
      <section className="air-key" aria-label="Air in the drawing" ref={key}>
        <KeyHead />
        {problem !== undefined && <p role="status">No arrows: {problem}.</p>}
        {!picture && problem === undefined && <p role="status">Working out the air…</p>}
        {picture && (
          <>
            <Scale coldest={picture.coldest} warmest={picture.warmest} />
            <Sizes largest={picture.largestFlow} />
          </>
        )}
      </section>
    </>
  );
}

function KeyHead() {
  const profile = useAir((state) => state.profile);
  return (
    <div className="air-key-head">
      <label>
        <span>Air</span>
        <select
          className="select"
          value={profile.load}
          aria-label="Load for the air in the drawing"
          onChange={({ target }) => {
            const load = loads.find((one) => one === target.value);
            if (load) showAir({ ...profile, load });
          }}
        >
          {loads.map((load) => (
            <option key={load} value={load}>
              {LOAD_NAMES[load]}
            </option>
          ))}
        </select>
      </label>
      <button type="button" className="button plain small" onClick={hideAir}>
        Hide
      </button>
    </div>
  );
}

function Scale({ coldest, warmest }: { readonly coldest: number; readonly warmest: number }) {
  const middle = (coldest + warmest) / 2;
  return (
    <div className="air-scale">
      <svg viewBox="0 0 150 10" preserveAspectRatio="none" aria-hidden="true">
        <defs>
          <linearGradient id="air-warmth">
            <stop offset="0" className="cold" />
            <stop offset="0.5" className="middle" />
            <stop offset="1" className="warm" />
          </linearGradient>
        </defs>
        <rect x="0.5" y="0.5" width="149" height="9" fill="url(#air-warmth)" />
      </svg>
      <div className="air-scale-numbers">
        {[coldest, middle, warmest].map((celsius, i) => (
          <span key={['cold', 'middle', 'warm'][i]}>{celsius.toFixed(0)} °C</span>
        ))}
      </div>
    </div>
  );
}

/** Two arrows to read the others by. */
function Sizes({ largest }: { readonly largest: number }) {
  return (
    <ul className="air-sizes" aria-label="Flow by the size of an arrow, an estimate">
      {[1, 0.15].map((share) => (
        <li key={share}>
          <svg viewBox="-30 -9 60 18" aria-hidden="true">
            <path
              d="M-20 -2.8H3.2V-7.6L20 0L3.2 7.6V2.8H-20Z"
              transform={`scale(${(1.4 * Math.sqrt(share)).toFixed(3)})`}
            />
          </svg>
          {(largest * share).toFixed(0)} m³/h
        </li>
      ))}
      <li className="quiet">estimate</li>
    </ul>
  );
}

/** Distance of a plate from the middle of its arrow, CSS pixels. */
const DISTANCE_PX = 10;

function layOut(
  session: ViewportSession,
  labels: readonly AirLabel[],
  plates: ReadonlyMap<string, HTMLElement>,
  key: HTMLElement | null,
): void {
  const { sight, screen, insets } = session;
  const placed = labels.flatMap(({ id, arrow }) => {
    const plate = plates.get(id);
    const { at, visible } = projectPoint(sight, screen, arrow.at);
    if (plate) plate.hidden = !visible;
    return plate && visible ? [{ plate, at }] : [];
  });
  const wishes = placed.map(
    ({ plate, at }): LabelWish => ({
      anchor: at,
      width: plate.offsetWidth,
      height: plate.offsetHeight,
      aside: [0, -1],
      distance: DISTANCE_PX,
    }),
  );
  const room = {
    left: insets.left,
    top: insets.top,
    width: screen.width - insets.left - insets.right,
    height: screen.height - insets.top - insets.bottom,
  };
  const taken = key ? [key, ...otherPlates(key)].map((element) => placeIn(session, element)) : [];
  placeLabels(wishes, room, taken).forEach(({ left, top }, i) => {
    const plate = placed[i]?.plate;
    if (plate) plate.style.transform = `translate(${Math.round(left)}px, ${Math.round(top)}px)`;
  });
}

/** What else is written over the drawing. */
function otherPlates(key: HTMLElement): readonly Element[] {
  return [...(key.parentElement?.querySelectorAll('.viewport-plate:not([hidden])') ?? [])];
}

function placeIn(session: ViewportSession, element: Element): Rectangle {
  const { left, top } = session.canvas.getBoundingClientRect();
  const place = element.getBoundingClientRect();
  return { left: place.left - left, top: place.top - top, width: place.width, height: place.height };
}
