/** A placed scene as movable units with their ways, needs and boxes: everything orders are computed from. */
import type { Scene } from '../../../plan/scene';
import type { OrientedBox } from '../../../space/oriented-box';
import { PackedBoxes } from '../../../space/packed-boxes';
import { separateBoxes } from '../../../space/separation';
import type { Vector3 } from '../../../space/vector';
import type { HandPreset } from '../../../standards/hand-and-tools';
import { type AssemblyBodies, bitOf } from '../assembly-bodies';
import { rangeOf, travelToClear } from '../paths/hull';
import { testWay } from '../paths/test-way';
import type { WayRecord } from '../paths/way';
import { testUse, type UseRecord, usefulRecords } from '../reach/use-volume';
import { type NeededLead, neededLeads } from './needed-leads';
import { type Need, needsOf } from './needs';
import { outwards, type SuggestedWay, suggestedWays, type WayContext } from './suggested-ways';
import type { AssemblyUnit } from './unit';
import { unitsOf } from './units';

/** A suggested way with everything it meets. */
export interface TestedWay {
  readonly way: SuggestedWay;
  readonly record: WayRecord;
}

/** A need with those of its placements that have something to say. */
export interface TestedNeed {
  readonly need: Need;
  readonly records: readonly UseRecord[];
  /** What every placement meets that no other part could clear: own body or enclosure. */
  readonly all: readonly UseRecord[];
}

export interface Machine {
  readonly scene: Scene;
  readonly units: readonly AssemblyUnit[];
  readonly leads: readonly NeededLead[];
  readonly bodies: AssemblyBodies;
  /** Scene box of each box of `bodies`. */
  readonly sceneBox: Int32Array;
  readonly ways: readonly (readonly TestedWay[])[];
  readonly needs: readonly (readonly TestedNeed[])[];
  readonly context: WayContext;
}

export interface MachineOptions {
  readonly hand?: HandPreset;
  /** Called now and then with the share done, 0 to 1; throw from it to stop. */
  readonly onProgress?: (share: number) => void;
}

/** Tests every suggested way and every need of a scene once, against everything. */
export function buildMachine(scene: Scene, options: MachineOptions = {}): Machine {
  const leads = neededLeads(scene);
  const units = unitsOf(scene, leads);
  const { bodies, sceneBox } = bodiesFor(scene, units);
  const context = contextOf(scene, units, bodies);
  const bundles = bundlesOf(scene, units);
  const ways: TestedWay[][] = [];
  const needs: TestedNeed[][] = [];
  for (const unit of units) {
    options.onProgress?.(unit.index / units.length);
    ways.push(
      suggestedWays(context, unit).map((way) => ({ way, record: testWay(bodies, unit.index, way.motions) })),
    );
    needs.push(
      needsOf(scene, unit, options.hand ?? 'usual').map((need) =>
        testNeed(
          need,
          unit,
          bodies,
          sceneBox,
          bundles.filter((bundle) => bundle.unit !== unit.index),
        ),
      ),
    );
  }
  return { scene, units, leads, bodies, sceneBox, ways, needs, context };
}

/** Where the leads of plugged rows turn away: soft, so no hand is kept out by them, but none likes to push past. */
interface Bundle {
  readonly unit: number;
  readonly box: OrientedBox;
}

/** How unwelcome it is to push a bundle of leads aside. */
const PAST_A_BUNDLE = 0.5;

function bundlesOf(scene: Scene, units: readonly AssemblyUnit[]): readonly Bundle[] {
  return units.flatMap((unit) => {
    const part = scene.parts[unit.part];
    if (unit.kind !== 'plug' || part?.kind !== 'supply') return [];
    return part.model.boxes.flatMap((body, k) => {
      const box = scene.boxes[part.firstBox + k]?.box;
      return body.role === 'bend space' && box ? [{ unit: unit.index, box }] : [];
    });
  });
}

/** A record as it is, or, where it meets bundles, once with them gone and once pushing them aside at a cost. */
function withBundles(record: UseRecord, bundles: readonly Bundle[]): readonly UseRecord[] {
  const met = bundles.filter(({ box }) =>
    record.volume.boxes.some((mine) => separateBoxes(mine, box).distance < 0),
  );
  if (met.length === 0) return [record];
  const blockers = met.reduce((set, { unit }) => set | bitOf(unit), record.blockers);
  const pushing = {
    ...record.volume,
    name: `${record.volume.name}, past the leads`,
    cost: record.volume.cost + PAST_A_BUNDLE,
  };
  return [
    { ...record, blockers },
    { ...record, volume: pushing },
  ];
}

function testNeed(
  need: Need,
  unit: AssemblyUnit,
  bodies: AssemblyBodies,
  sceneBox: Int32Array,
  bundles: readonly Bundle[],
): TestedNeed {
  const ignored = (box: number): boolean => need.ignores(sceneBox[box] ?? -1);
  const all = need.volumes.flatMap((volume) => withBundles(testUse(bodies, volume, ignored), bundles));
  // Blocked by itself is blocked for good: what is in hand can never clear its own way.
  const own = bitOf(unit.index);
  return {
    need,
    all,
    records: usefulRecords(
      all.map((record) => ((record.blockers & own) === 0n ? record : { ...record, fixed: true })),
    ),
  };
}

function bodiesFor(
  scene: Scene,
  units: readonly AssemblyUnit[],
): { readonly bodies: AssemblyBodies; readonly sceneBox: Int32Array } {
  const inUnit = new Set(units.flatMap((unit) => unit.boxes));
  const fixed = scene.boxes.flatMap((entry, box) =>
    entry.body.role === 'solid' && !inUnit.has(box) ? [box] : [],
  );
  const all = [...units.flatMap((unit) => unit.boxes), ...fixed];
  const sceneBox = Int32Array.from(all);
  // Room for everything that can move at once: a board with all that is mounted on it.
  const most = units.reduce((sum, unit) => sum + unit.boxes.length, 1);
  const packed = new PackedBoxes(all.length + most);
  all.forEach((box, k) => {
    const placed: OrientedBox | undefined = scene.boxes[box]?.box;
    if (placed) packed.setBox(k, placed);
  });
  const unitOf = new Int32Array(all.length).fill(-1);
  const boxesOf: number[][] = [];
  let next = 0;
  for (const unit of units) {
    boxesOf.push(unit.boxes.map((_, k) => next + k));
    unitOf.fill(unit.index, next, next + unit.boxes.length);
    next += unit.boxes.length;
  }
  const mayMeet = (mover: number, obstacle: number): boolean =>
    meetsBySeat(
      scene,
      units,
      sceneBox[mover] ?? -1,
      sceneBox[obstacle] ?? -1,
      unitOf[mover] ?? -1,
      unitOf[obstacle] ?? -1,
    );
  return { bodies: { packed, count: all.length, unitOf, boxesOf, mayMeet }, sceneBox };
}

/** Fingers in their slot, a processor in its socket, a plug in what it is plugged into. */
function meetsBySeat(
  scene: Scene,
  units: readonly AssemblyUnit[],
  a: number,
  b: number,
  unitA: number,
  unitB: number,
): boolean {
  const [first, second] = [scene.boxes[a], scene.boxes[b]];
  if (!first || !second) return false;
  if (first.part === second.part && (units[unitA]?.kind === 'plug' || units[unitB]?.kind === 'plug'))
    return true;
  return engages(scene, first, second) || engages(scene, second, first);
}

type Entry = Scene['boxes'][number];

function engages(scene: Scene, guest: Entry, host: Entry): boolean {
  const part = scene.parts[guest.part];
  // A module turns in the mouth of its socket, which is drawn as a full block.
  const turnsInSocket = part?.spec.kind === 'drive' && part.spec.form === 'M.2';
  if (!guest.body.engages && !turnsInSocket) return false;
  const seat = part?.seat;
  if (seat === undefined || scene.parts[host.part]?.id !== seat.on) return false;
  return host.body.receives?.includes(seat.mount) === true;
}

function contextOf(scene: Scene, units: readonly AssemblyUnit[], bodies: AssemblyBodies): WayContext {
  const around = rangeOf(
    bodies,
    Array.from({ length: bodies.count }, (_, k) => k),
  );
  const openings: Vector3[] = [];
  for (const unit of units) {
    const part = scene.parts[unit.part];
    if (unit.kind === 'panel' && part) openings.push(outwards(scene, unit, part));
  }
  return {
    scene,
    openings,
    clear: (unit, direction) =>
      travelToClear(rangeOf(bodies, bodies.boxesOf[unit.index] ?? []), around, direction),
  };
}
