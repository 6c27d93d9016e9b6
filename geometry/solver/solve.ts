/** From a placed scene to all the solver has to say about it. */
import type { Scene } from '../plan/scene';
import { coveredFindings } from './covered-features';
import { type ExaminedPart, examineParts } from './examined-part';
import type { Clearance, Finding, Solution } from './finding';
import { withLimits } from './limited-clearances';
import { Memory } from './memory';
import { NeighbourFinder } from './neighbours';
import { byImportance, byTightness } from './order-findings';
import { examinePair, type PairFacts } from './pair-facts';
import { seatFindings, standoffFindings } from './seat-findings';
import { namesOfClearance, shownClearances } from './select-clearances';
import { spaceFindings } from './space-findings';
import { tightFindings } from './tight-findings';
import { tubeFindings } from './tube-findings';
import { verdictOf } from './verdict';
import { withWaysOut } from './ways-out/ways-out';

/** Keeps what it found last and looks again only at pairs in which a part changed its pose or its model. */
export interface Solver {
  solve(scene: Scene): Solution;
}

/** Pure and deterministic: equal scenes give equal solutions. */
export function solve(scene: Scene): Solution {
  return createSolver().solve(scene);
}

export function createSolver(): Solver {
  return new RememberingSolver();
}

/** Facts of the pairs of each part, by its index, with all parts after it, in their order. */
type PairTable = readonly (readonly PairFacts[])[];

class RememberingSolver implements Solver {
  private parts: readonly ExaminedPart[] = [];
  private pairs: PairTable = [];
  private gaps = '';
  private readonly spaces = new Memory<Finding>();
  private readonly covered = new Memory<readonly Finding[]>();
  private readonly limited = new Memory<Clearance>();
  private readonly neighbours = new NeighbourFinder();

  solve(scene: Scene): Solution {
    this.parts = examineParts(scene, this.parts);
    const gaps = JSON.stringify(scene.wantedGaps);
    if (gaps !== this.gaps) this.pairs = [];
    this.gaps = gaps;
    this.pairs = refreshPairs(scene, this.parts, this.pairs);
    const solution = this.compose(scene);
    for (const memory of [this.spaces, this.covered, this.limited]) memory.endRound();
    return solution;
  }

  private compose(scene: Scene): Solution {
    const { parts, pairs } = this;
    const facts = pairs.flat();
    const measured = gather(facts, (pair) => pair.clearances);
    const clearances = withLimits(
      shownClearances(measured),
      (id) => partById(scene, parts, id),
      this.limited,
    );
    clearances.sort(byTightness);
    const around = {
      scene,
      parts,
      measured: measured.flatMap(({ clearance, sideways }) => (sideways ? [] : [clearance])),
      shown: clearances,
    };
    const findings = this.findings(scene, facts, clearances)
      .map((finding) => withWaysOut(around, finding))
      .sort(byImportance);
    return {
      verdict: verdictOf(findings, clearances, (clearance) => namesOfClearance(scene, parts, clearance)),
      findings,
      clearances,
      neighbours: this.neighbours.find(scene, parts, facts),
    };
  }

  private findings(
    scene: Scene,
    facts: readonly PairFacts[],
    clearances: readonly Clearance[],
  ): readonly Finding[] {
    const intrusions = gather(facts, (pair) => pair.intrusions);
    return [
      ...gather(facts, (pair) => pair.findings),
      ...spaceFindings(scene, this.parts, intrusions, this.spaces),
      ...coveredFindings(scene, this.parts, intrusions, this.covered),
      ...seatFindings(scene, this.parts),
      ...standoffFindings(this.parts),
      ...tubeFindings(this.parts),
      ...tightFindings(clearances),
    ];
  }
}

function partById(scene: Scene, parts: readonly ExaminedPart[], id: string): ExaminedPart | undefined {
  const index = scene.indexById.get(id);
  return index === undefined ? undefined : parts[index];
}

/** All pairs of the scene, each with the lower index first; those of two unchanged parts are taken over. */
function refreshPairs(scene: Scene, parts: readonly ExaminedPart[], before: PairTable): PairTable {
  return parts.map((first, i) => {
    const known = before[i];
    const row: PairFacts[] = [];
    for (let j = i + 1; j < parts.length; j++) {
      const second = parts[j];
      const old = known?.[j - i - 1];
      if (second)
        row.push(old?.first === first && old.second === second ? old : examinePair(scene, first, second));
    }
    return row;
  });
}

/** All items of all pairs; most pairs have none. */
function gather<T>(facts: readonly PairFacts[], itemsOf: (pair: PairFacts) => readonly T[]): readonly T[] {
  const all: T[] = [];
  for (const pair of facts) {
    for (const item of itemsOf(pair)) all.push(item);
  }
  return all;
}
