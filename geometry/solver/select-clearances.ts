/** Which of all measured clearances are shown, and how their two sides are called. */
import type { Scene } from '../plan/scene';
import { clearanceRules } from './clearance-rules';
import type { ExaminedPart } from './examined-part';
import type { Clearance, FaceRef } from './finding';
import { nameOfBox } from './part-names';

const nearestOnly: ReadonlySet<string> = new Set(
  clearanceRules.filter((rule) => rule.nearestOnly).map((rule) => rule.id),
);

/** Leaves, of a rule about 'whatever is in front', only the nearest partner of each part. */
export function nearestOfEach(clearances: readonly Clearance[]): Clearance[] {
  const nearest = new Map<string, Clearance>();
  const kept: Clearance[] = [];
  for (const clearance of clearances) {
    if (!nearestOnly.has(clearance.rule)) {
      kept.push(clearance);
      continue;
    }
    const key = `${clearance.rule}/${clearance.parts[0]}`;
    const known = nearest.get(key);
    if (known === undefined || clearance.millimetres < known.millimetres) nearest.set(key, clearance);
  }
  return [...kept, ...nearest.values()];
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
