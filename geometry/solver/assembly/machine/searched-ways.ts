/** Ways looked for by searching when the suggested ones leave something stuck. */

import { axisOfRotation } from '../../../space/rotation';
import type { Vector3 } from '../../../space/vector';
import { bitOf, type UnitSet, unitsIn } from '../assembly-bodies';
import { findWayOut } from '../paths/find-way';
import { defaultSearchLimits, type SearchLimits } from '../paths/search-limits';
import { searchFor } from '../paths/straight-moves';
import { obstaclesOf, testWay } from '../paths/test-way';
import type { Machine } from './machine';
import type { ExtraWays } from './machine-system';
import { seatOf } from './seat-frame';
import type { AssemblyUnit } from './unit';
import { wordsOfSearched } from './way-words';

/** Coarser than the search for a single path: an order asks for many. Our choice. */
const QUICK: SearchLimits = { stops: 8, tilt: 30, tiltStep: 10, cell: 10, angle: 5, poses: 60 };

/** The direction in which the seat of a unit lets go. */
export function lettingGo(machine: Machine, unit: AssemblyUnit): Vector3 {
  const part = machine.scene.parts[unit.part];
  const first = machine.ways[unit.index]?.[0]?.way.motions.at(-1);
  if (first?.kind === 'slide') {
    const size = Math.hypot(...first.by);
    if (size > 0) return [first.by[0] / size, first.by[1] / size, first.by[2] / size];
  }
  const seat = part && seatOf(machine.scene, part);
  return seat?.away ?? (part ? axisOfRotation(part.pose.rotation, 'z') : [0, 0, 1]);
}

/**
 * For each stuck unit that hangs loose, a way past what is stuck with it; parts in sockets only leave along them. What
 * no suggested way takes past what never moves is searched for in earnest.
 */
export function searchedWays(machine: Machine, stuck: UnitSet): readonly ExtraWays[] {
  const known = searched.get(machine) ?? new Map<UnitSet, readonly ExtraWays[]>();
  searched.set(machine, known);
  const before = known.get(stuck);
  if (before) return before;
  const ways = searchAll(machine, stuck);
  known.set(stuck, ways);
  return ways;
}

/** Order and service ask the same of one machine. */
const searched = new WeakMap<Machine, Map<UnitSet, readonly ExtraWays[]>>();

function searchAll(machine: Machine, stuck: UnitSet): readonly ExtraWays[] {
  return unitsIn(stuck).flatMap((index): ExtraWays[] => {
    const unit = machine.units[index];
    if (
      !unit ||
      unit.kind === 'plug' ||
      unit.kind === 'panel' ||
      unit.kind === 'processor' ||
      unit.kind === 'memory'
    )
      return [];
    const boxes = machine.bodies.boxesOf[index] ?? [];
    const obstacles = obstaclesOf(machine.bodies, index, (box) => {
      const other = machine.bodies.unitOf[box] ?? -1;
      return other < 0 || (stuck & bitOf(other)) !== 0n;
    });
    const isHeld = (machine.ways[index] ?? []).every(({ record }) => record.fixed);
    const limits = isHeld ? defaultSearchLimits : QUICK;
    const out = lettingGo(machine, unit);
    const found = findWayOut(searchFor(machine.bodies, boxes, obstacles), out, limits);
    if (!('method' in found)) return [];
    const way = { words: wordsOfSearched(machine, unit, found, out), motions: found.motions, cost: 1 };
    return [{ unit: index, ways: [{ way, record: testWay(machine.bodies, index, found.motions) }] }];
  });
}
