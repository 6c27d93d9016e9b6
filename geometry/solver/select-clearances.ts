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
