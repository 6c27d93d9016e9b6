/** Which of all measured clearances are shown, and how their two sides are called. */
import type { Scene } from '../plan/scene';
import { clearanceRules } from './clearance-rules';
import type { ExaminedPart } from './examined-part';
import type { Clearance, FaceRef } from './finding';
import type { MeasuredClearance } from './measure-clearances';
import { nameOfBox } from './part-names';

const nearestOnly: ReadonlySet<string> = new Set(
  clearanceRules.filter((rule) => rule.nearestOnly).map((rule) => rule.id),
);

/** Whether the rule shows one partner only. */
export function isNearestOnly(rule: string): boolean {
  return nearestOnly.has(rule);
}

/** A clearance that is shown, and what the same rule meets behind its partner. */
export interface ShownClearance {
  readonly clearance: Clearance;
  readonly behind?: Clearance;
}

interface Nearest {
  first: MeasuredClearance;
  behind: Clearance | undefined;
}

/** Leaves, of a rule about 'whatever is in front', only the nearest partner of each part. */
export function shownClearances(measured: readonly MeasuredClearance[]): readonly ShownClearance[] {
  const nearest = new Map<string, Nearest>();
  const shown: ShownClearance[] = [];
  for (const one of measured) {
    const { clearance, sideways } = one;
    if (!isNearestOnly(clearance.rule)) {
      if (!sideways) shown.push({ clearance });
      continue;
    }
    const key = `${clearance.rule}/${clearance.parts[0]}`;
    const known = nearest.get(key);
    if (known) keepNearest(known, one);
    else nearest.set(key, { first: one, behind: undefined });
  }
  for (const { first, behind } of nearest.values()) {
    if (!first.sideways) shown.push({ clearance: first.clearance, ...(behind ? { behind } : {}) });
  }
  return shown;
}

function keepNearest(known: Nearest, one: MeasuredClearance): void {
  const nearer = one.clearance.millimetres < known.first.clearance.millimetres;
  const farther = nearer ? known.first : one;
  if (nearer) known.first = one;
  if (farther.sideways) return;
  if (!known.behind || farther.clearance.millimetres < known.behind.millimetres)
    known.behind = farther.clearance;
}

/** 'cooler' and 'side panel'. */
export function namesOfClearance(
  scene: Scene,
  parts: readonly ExaminedPart[],
  clearance: Clearance,
): readonly [string, string] {
  return [nameOfFace(scene, parts, clearance.from), nameOfFace(scene, parts, clearance.to)];
}

function nameOfFace(scene: Scene, parts: readonly ExaminedPart[], face: FaceRef): string {
  const index = scene.indexById.get(face.part);
  const part = index === undefined ? undefined : parts[index];
  const body = part?.placed.model.boxes.find((candidate) => candidate.name === face.box);
  if (!part || !body) throw new RangeError(`no box ${face.box} of part ${face.part}`);
  return nameOfBox(part.placed.kind, part.name, body).text;
}
