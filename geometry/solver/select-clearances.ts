/** Which of all measured clearances are shown, and how their two sides are called. */
import type { Scene } from '../plan/scene';
import { CONTACT_TOLERANCE_MM } from '../space/tolerance';
import { clearanceRules } from './clearance-rules';
import type { ExaminedPart } from './examined-part';
import type { Clearance, FaceRef } from './finding';
import type { MeasuredClearance } from './measure-clearances';
import { nameOfBox } from './part-names';

const nearestOnly: ReadonlySet<string> = new Set(
  clearanceRules.filter((rule) => rule.nearestOnly).map((rule) => rule.id),
);

const limiting: ReadonlySet<string> = new Set(
  clearanceRules.filter((rule) => rule.limits).map((rule) => rule.id),
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
  first: Clearance;
  behind: Clearance | undefined;
}

/**
 * Leaves, of a rule about 'whatever is in front', only the nearest partner of each part. A partner met sideways is not
 * in front: its overlap is told as an interference, and the row goes on telling of the one that is.
 */
export function shownClearances(measured: readonly MeasuredClearance[]): readonly ShownClearance[] {
  const nearest = new Map<string, Nearest>();
  const shown: ShownClearance[] = [];
  for (const { clearance, sideways } of measured) {
    if (sideways) continue;
    if (!isNearestOnly(clearance.rule)) {
      shown.push({ clearance });
      continue;
    }
    const key = `${clearance.rule}/${clearance.parts[0]}`;
    const known = nearest.get(key);
    if (known) keepNearest(known, clearance);
    else nearest.set(key, { first: clearance, behind: undefined });
  }
  for (const { first, behind } of nearest.values()) {
    shown.push({ clearance: first, ...(behind ? { behind } : {}) });
  }
  return withoutTwins(shown);
}

/**
 * Where two rules measure the same gap between the same boxes, the one that wants more room tells it; of two that want
 * the same, one that says how large the part may be.
 */
function withoutTwins(shown: readonly ShownClearance[]): readonly ShownClearance[] {
  const kept = new Map<string, ShownClearance>();
  for (const one of shown) {
    const { from, to, millimetres } = one.clearance;
    const ends = [`${from.part}/${from.box}`, `${to.part}/${to.box}`].sort();
    const key = `${ends.join('|')}|${millimetres.toFixed(6)}`;
    const twin = kept.get(key);
    if (!twin || tellsMore(one.clearance, twin.clearance)) kept.set(key, one);
  }
  return [...kept.values()];
}

function tellsMore(one: Clearance, other: Clearance): boolean {
  if (one.wanted !== other.wanted) return one.wanted > other.wanted;
  return limiting.has(one.rule) && !limiting.has(other.rule);
}

/** Of two partners in one plane the first in the plan stays, or the row would change its name for a rounding. */
function keepNearest(known: Nearest, one: Clearance): void {
  const nearer = one.millimetres < known.first.millimetres - CONTACT_TOLERANCE_MM;
  const farther = nearer ? known.first : one;
  if (nearer) known.first = one;
  if (!known.behind || farther.millimetres < known.behind.millimetres) known.behind = farther;
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
