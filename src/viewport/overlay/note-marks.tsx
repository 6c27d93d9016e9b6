/** The notes on the drawing: thin lines in one SVG, and plates of paper with the number. Moved after every frame. */
import { type RefObject, useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import { useStore } from 'zustand';
import { stageStore } from '../../store/stage-store';
import { useSolutionStore, useViewStore } from '../../store/use-store';
import { type Pixel, projectPoint } from '../camera/sight';
import type { ViewportSession } from '../viewport-session';
import { type Note, notesFor, notesOnStage } from './annotations';
import { type DimensionDrawing, drawDimension } from './dimension-geometry';
import { type LabelWish, placeLabels, type Rectangle } from './place-labels';

interface Marks {
  readonly plates: Map<string, HTMLElement>;
  readonly groups: Map<string, SVGGElement>;
}

/** Distance from what a plate names, CSS pixels: enough for a leader to be seen. */
const DISTANCE_PX = 26;

export function NoteMarks({ session }: { readonly session: ViewportSession }) {
  const notes = useNotes();
  const marks = useRef<Marks>({ plates: new Map(), groups: new Map() });
  useLayoutEffect(() => layOutNotes(session, notes, marks.current), [session, notes]);
  useEffect(() => session.onFrame(() => layOutNotes(session, notes, marks.current)), [session, notes]);
  return (
    <div className="viewport-notes" aria-hidden="true">
      <svg className="viewport-lines">
        <title>Dimension lines</title>
        {notes.map((note) => (
          <g key={note.id} className={noteClass(note)} ref={keep(marks, 'groups', note.id)}>
            <path className="viewport-line" />
            <path className="viewport-arrow" />
            <path className="viewport-leader" />
          </g>
        ))}
      </svg>
      {notes.map((note) => (
        <div
          key={note.id}
          className={`viewport-plate ${noteClass(note)}`}
          ref={keep(marks, 'plates', note.id)}
        >
          <span className="viewport-figure">{note.figure}</span> {note.word}
        </div>
      ))}
    </div>
  );
}

function useNotes(): readonly Note[] {
  const scene = useSolutionStore((state) => state.scene);
  const solution = useSolutionStore((state) => state.solution);
  const clearance = useViewStore((state) => state.selectedClearance);
  const finding = useViewStore((state) => state.selectedFinding);
  const part = useViewStore((state) => state.selectedPart);
  const stage = useStore(stageStore, (state) => state.stage);
  return useMemo(
    () => (stage ? notesOnStage(stage) : notesFor(scene, solution, { clearance, finding, part })),
    [scene, solution, clearance, finding, part, stage],
  );
}

function keep<K extends keyof Marks>(marks: RefObject<Marks>, kind: K, id: string) {
  return (element: (HTMLElement & SVGGElement) | HTMLElement | SVGGElement | null) => {
    const map = marks.current[kind] as Map<string, Element>;
    if (element) map.set(id, element);
    else map.delete(id);
  };
}

function noteClass(note: Note): string {
  if (note.kind === 'overlap') return 'is-interference';
  if (note.tight) return 'is-transition';
  return `is-${note.fit.split(' ')[0]}`;
}

interface Located {
  readonly note: Note;
  readonly plate: HTMLElement;
  readonly anchor: Pixel;
  readonly drawing: DimensionDrawing | undefined;
}

function layOutNotes(session: ViewportSession, notes: readonly Note[], marks: Marks): void {
  const located = notes.flatMap((note): Located[] => {
    const plate = marks.plates.get(note.id);
    const place = plate && locate(session, note);
    if (plate) plate.hidden = !place;
    marks.groups.get(note.id)?.toggleAttribute('hidden', !place);
    return plate && place ? [{ note, plate, ...place }] : [];
  });
  const wishes = located.map(
    ({ plate, anchor, drawing }): LabelWish => ({
      anchor,
      width: plate.offsetWidth,
      height: plate.offsetHeight,
      aside: drawing?.aside ?? [0.3, 1],
      distance: DISTANCE_PX,
    }),
  );
  const { screen, insets } = session;
  const room: Rectangle = {
    left: insets.left,
    top: insets.top,
    width: screen.width - insets.left - insets.right,
    height: screen.height - insets.top - insets.bottom,
  };
  const taken = located.flatMap(({ drawing }) => (drawing ? [lineRoom(drawing)] : []));
  placeLabels(wishes, room, taken).forEach((label, index) => {
    const entry = located[index];
    if (entry) write(entry, label, marks);
  });
}

function locate(
  { sight, screen }: ViewportSession,
  note: Note,
): Pick<Located, 'anchor' | 'drawing'> | undefined {
  if (note.kind === 'overlap') {
    const { at, visible } = projectPoint(sight, screen, note.at);
    return visible ? { anchor: at, drawing: undefined } : undefined;
  }
  const drawing = drawDimension(sight, screen, note.points, note.direction);
  return drawing && { anchor: drawing.middle, drawing };
}

/** Labels keep off the dimension line itself. */
function lineRoom({ from, to }: DimensionDrawing): Rectangle {
  const margin = 12;
  return {
    left: Math.min(from[0], to[0]) - margin,
    top: Math.min(from[1], to[1]) - margin,
    width: Math.abs(to[0] - from[0]) + 2 * margin,
    height: Math.abs(to[1] - from[1]) + 2 * margin,
  };
}

function write({ note, plate, anchor, drawing }: Located, label: Rectangle, marks: Marks): void {
  plate.style.transform = `translate(${Math.round(label.left)}px, ${Math.round(label.top)}px)`;
  const paths = marks.groups.get(note.id)?.children;
  if (!paths) return;
  paths[0]?.setAttribute('d', drawing?.lines ?? '');
  paths[1]?.setAttribute('d', drawing?.arrows ?? dot(anchor));
  const nearest: Pixel = [
    Math.max(label.left, Math.min(label.left + label.width, anchor[0])),
    Math.max(label.top, Math.min(label.top + label.height, anchor[1])),
  ];
  paths[2]?.setAttribute('d', `M${anchor[0]} ${anchor[1]}L${nearest[0]} ${nearest[1]}`);
}

function dot([x, y]: Pixel): string {
  return `M${x - 2.5} ${y}a2.5 2.5 0 1 1 5 0a2.5 2.5 0 1 1 -5 0Z`;
}
