/** From a placed scene to all the solver has to say about it. */
import type { Scene } from '../plan/scene';
import { coveredFindings } from './covered-features';
import { type ExaminedPart, examineParts } from './examined-part';
import type { Clearance, Finding, Solution } from './finding';
import { findNeighbours, type PairLookup } from './neighbours';
import { byImportance, byTightness } from './order-findings';
import { examinePair, type PairFacts } from './pair-facts';
import { seatFindings, standoffFindings } from './seat-findings';
import { namesOfClearance, nearestOfEach } from './select-clearances';
import { spaceFindings } from './space-findings';
import { tightFindings } from './tight-findings';
import { tubeFindings } from './tube-findings';
import { verdictOf } from './verdict';
import { type Surroundings, withLimit, withWaysOut } from './ways-out/ways-out';

/** Keeps what it found last and looks again only at pairs in which a part changed its pose or its model. */
export interface Solver {
  solve(scene: Scene): Solution;
}

/** Pure and deterministic: equal scenes give equal solutions. */
export function solve(scene: Scene): Solution {
  return createSolver().solve(scene);
}

export function createSolver(): Solver {
  let parts: readonly ExaminedPart[] = [];
  let pairs: (PairFacts | undefined)[][] = [];
  let gaps = '';
  return {
    solve(scene) {
      parts = examineParts(scene, parts);
      const wanted = JSON.stringify(scene.wantedGaps);
      if (wanted !== gaps) pairs = [];
      gaps = wanted;
      pairs = refreshPairs(scene, parts, pairs);
      return compose(scene, parts, pairs);
    },
  };
}

/** Facts of all pairs, by the lower and the higher index; those of two unchanged parts are taken over. */
function refreshPairs(
  scene: Scene,
  parts: readonly ExaminedPart[],
  before: readonly (readonly (PairFacts | undefined)[])[],
): (PairFacts | undefined)[][] {
  return parts.map((first, i) =>
    parts.map((second, j) => {
      if (j <= i) return undefined;
      const known = before[i]?.[j];
      return known?.first === first && known.second === second ? known : examinePair(scene, first, second);
    }),
  );
}

function compose(
  scene: Scene,
  parts: readonly ExaminedPart[],
  pairs: readonly (readonly (PairFacts | undefined)[])[],
): Solution {
  const pairOf: PairLookup = (first, second) => pairs[first]?.[second];
  const facts = pairs.flatMap((row) => row.filter((pair) => pair !== undefined));
  const measured = facts.flatMap((pair) => pair.clearances);
  const around: Surroundings = { scene, parts, clearances: measured };
  const clearances = nearestOfEach(measured)
    .sort(byTightness)
    .map((clearance) => withLimit(around, clearance));
  const findings = findingsOf(scene, parts, facts, clearances)
    .map((finding) => withWaysOut(around, finding))
    .sort(byImportance);
  return {
    verdict: verdictOf(findings, clearances, (clearance) => namesOfClearance(scene, parts, clearance)),
    findings,
    clearances,
    neighbours: findNeighbours(scene, pairOf),
  };
}

function findingsOf(
  scene: Scene,
  parts: readonly ExaminedPart[],
  facts: readonly PairFacts[],
  clearances: readonly Clearance[],
): readonly Finding[] {
  const intrusions = facts.flatMap((pair) => pair.intrusions);
  return [
    ...facts.flatMap((pair) => pair.findings),
    ...spaceFindings(scene, parts, intrusions),
    ...coveredFindings(scene, parts, intrusions),
    ...seatFindings(scene, parts),
    ...standoffFindings(parts),
    ...tubeFindings(parts),
    ...tightFindings(clearances),
  ];
}
