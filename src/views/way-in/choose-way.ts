/** From what a person wants to see to a question for the kernel, and to what the drawing leaves out meanwhile. */

import type { WayWanted } from '../../store/way-in-store';
import type { AssemblyAnswer, UnitOutline, WayQuestion } from '../../workers/assembly-request';

export interface ChosenWay {
  /** As the step is called: 'Put in the card'. */
  readonly title: string;
  /** Index of the step, when the sheet has one. */
  readonly step?: number;
  readonly question: WayQuestion;
  readonly absent: ReadonlySet<string>;
  readonly moving: ReadonlySet<string>;
  readonly enclosure: boolean;
  /** Played away from the seat. */
  readonly takenOff: boolean;
}

/** Undefined for something that never moves. */
export function chooseWay(answer: AssemblyAnswer, wanted: WayWanted): ChosenWay | undefined {
  const { subjects } = answer;
  const step =
    wanted.kind === 'step'
      ? subjects.findIndex(({ key }) => key === wanted.key)
      : subjects.findLastIndex(({ unit }) => unit === wanted.part);
  if (step >= 0) return wayOfStep(answer, step);
  return wanted.kind === 'part' ? wayOfStuck(answer, wanted.part) : undefined;
}

function wayOfStep(answer: AssemblyAnswer, step: number): ChosenWay | undefined {
  const subject = answer.subjects[step];
  const there = answer.sheet.steps[step]?.present;
  if (!subject || !there) return undefined;
  const { unit, bench, takenOff, words, motions } = subject;
  const moving = new Set([unit, ...subject.with]);
  const onBench = bench === undefined ? undefined : unitsOn(answer.units, bench);
  const near = there.filter((id) => !moving.has(id) && (onBench === undefined || onBench.has(id)));
  // What lies on the bench is put in later, so the sheet does not have it yet.
  const present = bench === undefined ? near : [bench, ...near];
  const shown = new Set(present);
  return {
    title: answer.sheet.steps[step]?.title ?? '',
    step,
    question: { unit, present, with: subject.with, onBench: bench !== undefined, known: { words, motions } },
    absent: new Set(answer.units.flatMap(({ id }) => (shown.has(id) || moving.has(id) ? [] : [id]))),
    moving,
    enclosure: bench === undefined,
    takenOff,
  };
}

/** A part for which no step was found: past everything else in its place, panels and covers off. */
function wayOfStuck({ units, unitNames }: AssemblyAnswer, unit: string): ChosenWay | undefined {
  if (!units.some(({ id }) => id === unit)) return undefined;
  const later = unitsOn(units, unit);
  return {
    title: `Put in ${unitNames[unit] ?? unit}`,
    question: { unit },
    absent: new Set(
      units.flatMap(({ id, covers }) => (covers || (later.has(id) && id !== unit) ? [id] : [])),
    ),
    moving: new Set([unit]),
    enclosure: true,
    takenOff: false,
  };
}

/** A unit and everything that sits on it, directly or not. */
export function unitsOn(units: readonly UnitOutline[], carrier: string): ReadonlySet<string> {
  const byId = new Map(units.map((unit) => [unit.id, unit]));
  const sits = (unit: UnitOutline): boolean => {
    let at: UnitOutline | undefined = unit;
    for (let steps = 0; at && steps < units.length; steps++) {
      if (at.id === carrier) return true;
      at = at.on === undefined ? undefined : byId.get(at.on);
    }
    return false;
  };
  return new Set(units.filter(sits).map(({ id }) => id));
}
