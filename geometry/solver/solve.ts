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
import { verdictOf } from './verdict';

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
  const clearances = nearestOfEach(facts.flatMap((pair) => pair.clearances)).sort(byTightness);
  const findings = findingsOf(scene, parts, facts, clearances).sort(byImportance);
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
): Finding[] {
  const intrusions = facts.flatMap((pair) => pair.intrusions);
  return [
    ...facts.flatMap((pair) => (pair.interference ? [{ ...pair.interference.finding, waysOut: [] }] : [])),
    ...spaceFindings(scene, intrusions),
    ...coveredFindings(scene, parts, intrusions),
    ...facts.flatMap((pair) => pair.zones),
    ...seatFindings(scene, parts),
    ...standoffFindings(parts),
    ...tightFindings(clearances),
  ];
}
