/** What is written on the drawing: the dimension in question, and the size of every overlap. */
import {
  type Clearance,
  type Finding,
  type Fit,
  normalise,
  overlapPolyhedron,
  type Scene,
  type Solution,
  subtract,
  type Vector3,
} from '../../../geometry';
import type { Stage } from '../../store/stage-store';

export interface DimensionNote {
  readonly kind: 'dimension';
  readonly id: string;
  readonly points: readonly [Vector3, Vector3];
  readonly direction: Vector3;
  readonly fit: Fit;
  /** A gap, but a smaller one than wanted. */
  readonly tight: boolean;
  readonly figure: string;
  readonly word: string;
}

export interface OverlapNote {
  readonly kind: 'overlap';
  readonly id: string;
  readonly at: Vector3;
  readonly figure: string;
  readonly word: string;
}

export type Note = DimensionNote | OverlapNote;

export interface Chosen {
  readonly clearance: string | undefined;
  readonly finding: string | undefined;
  readonly part: string | undefined;
}

/** More labels than this hide the drawing; the worst are named, the table has the rest. */
const MOST_OVERLAPS = 5;

/** '3.2 mm', with a true minus sign. */
export function millimetresText(value: number): string {
  const text = Math.abs(value).toFixed(1);
  return `${value < 0 && text !== '0.0' ? '\u2212' : ''}${text} mm`;
}

/** The clearance whose arrow is drawn: the chosen one, else the tightest of the chosen part, else of all. */
export function shownClearance({ clearances, verdict }: Solution, chosen: Chosen): Clearance | undefined {
  if (chosen.clearance !== undefined) return clearances.find(({ id }) => id === chosen.clearance);
  if (chosen.finding !== undefined) return undefined;
  const { part } = chosen;
  if (part !== undefined) return clearances.find(({ parts }) => parts.includes(part));
  return clearances.find(({ id }) => id === verdict.tightest) ?? clearances[0];
}

/** Notes in the order of their importance. */
export function notesFor(scene: Scene, solution: Solution, chosen: Chosen): readonly Note[] {
  const clearance = shownClearance(solution, chosen);
  const notes: Note[] = clearance ? [dimensionNote(clearance)] : [];
  const said = clearance && clearance.millimetres < 0 ? clearance.parts : undefined;
  const overlaps = solution.findings.filter((finding) => finding.kind === 'interference');
  const first = overlaps.filter(({ id }) => id === chosen.finding);
  for (const finding of [...first, ...overlaps.filter(({ id }) => id !== chosen.finding)]) {
    if (notes.length > MOST_OVERLAPS) break;
    if (said && finding.parts.every((part) => said.includes(part)) && finding.id !== chosen.finding) continue;
    const note = overlapNote(scene, finding);
    if (note) notes.push(note);
  }
  return notes;
}

/** Where the way that is played is tightest, or what it meets. */
export function notesOnStage({ mark, meets }: Stage): readonly Note[] {
  if (!mark) return [];
  const { points, figure, word } = mark;
  if (meets) return [{ kind: 'overlap', id: 'way', at: points[1], figure, word }];
  const direction = normalise(subtract(points[1], points[0]));
  return [
    { kind: 'dimension', id: 'way', points, direction, fit: 'clearance fit', tight: false, figure, word },
  ];
}

function dimensionNote(clearance: Clearance): DimensionNote {
  const overlapping = clearance.millimetres < 0;
  const tight = !overlapping && clearance.millimetres < clearance.wanted;
  return {
    kind: 'dimension',
    id: clearance.id,
    points: clearance.points,
    direction: clearance.direction,
    fit: clearance.fit,
    figure: millimetresText(Math.abs(clearance.millimetres)),
    tight,
    word: overlapping ? 'overlap' : tight ? 'less than wanted' : clearance.fit,
  };
}

/** Stands at the middle of the largest common volume of the finding. */
function overlapNote(scene: Scene, finding: Finding): OverlapNote | undefined {
  let at: Vector3 | undefined;
  let most = 0;
  for (const [first, second] of finding.overlaps) {
    const [a, b] = [scene.boxes[first], scene.boxes[second]];
    const vertices = (a && b && overlapPolyhedron(a.box, b.box)?.vertices) ?? [];
    const spans = ([0, 1, 2] as const).map((axis) => spanOf(vertices.map((vertex) => vertex[axis])));
    const size = spans.reduce((product, { width }) => product * width, 1);
    if (size <= most) continue;
    most = size;
    at = [spans[0]?.middle ?? 0, spans[1]?.middle ?? 0, spans[2]?.middle ?? 0];
  }
  if (!at || finding.millimetres === undefined) return undefined;
  const figure = millimetresText(Math.abs(finding.millimetres));
  return { kind: 'overlap', id: finding.id, at, figure, word: 'overlap' };
}

function spanOf(values: readonly number[]): { width: number; middle: number } {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return Number.isFinite(low) ? { width: high - low, middle: (low + high) / 2 } : { width: 0, middle: 0 };
}
