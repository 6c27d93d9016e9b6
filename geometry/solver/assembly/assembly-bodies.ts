/**
 * What paths are tested against: numbered boxes, each belonging to one movable unit (or to none, then it never moves).
 * Millimetres, world frame, everything at its seat.
 */
import type { OrientedBox } from '../../space/oriented-box';
import { PackedBoxes } from '../../space/packed-boxes';

/** Whether a box of a moving unit may enter or touch another box wherever they meet: fingers in their slot. */
export type MayMeet = (mover: number, obstacle: number) => boolean;

export interface AssemblyBodies {
  /** The boxes at their seats, followed by room for the boxes of one moving unit. */
  readonly packed: PackedBoxes;
  /** How many boxes there are; the numbers from here on are room. */
  readonly count: number;
  /** Unit of each box; -1 for what never moves. */
  readonly unitOf: Int32Array;
  /** Boxes of each unit. */
  readonly boxesOf: readonly (readonly number[])[];
  readonly mayMeet: MayMeet;
}

const never: MayMeet = () => false;

/** Bodies from plain boxes: `units[k]` are the boxes of unit k, `fixed` never move. */
export function bodiesOf(
  units: readonly (readonly OrientedBox[])[],
  fixed: readonly OrientedBox[] = [],
  mayMeet: MayMeet = never,
): AssemblyBodies {
  const all = [...units.flat(), ...fixed];
  const most = units.reduce((size, unit) => Math.max(size, unit.length), 1);
  const packed = new PackedBoxes(all.length + most);
  const unitOf = new Int32Array(all.length).fill(-1);
  const boxesOf: number[][] = [];
  let next = 0;
  for (const [unit, boxes] of units.entries()) {
    boxesOf.push(boxes.map((_, k) => next + k));
    unitOf.fill(unit, next, next + boxes.length);
    next += boxes.length;
  }
  for (const [index, box] of all.entries()) packed.setBox(index, box);
  return { packed, count: all.length, unitOf, boxesOf, mayMeet };
}

/** A set of units as bits of a bigint: bit k is unit k. */
export type UnitSet = bigint;

export function bitOf(unit: number): UnitSet {
  return 1n << BigInt(unit);
}

/** The units in a set, ascending. */
export function unitsIn(set: UnitSet): number[] {
  const units: number[] = [];
  for (let unit = 0, rest = set; rest !== 0n; unit++, rest >>= 1n) if ((rest & 1n) === 1n) units.push(unit);
  return units;
}

/** Number of units in a set. */
export function sizeOf(set: UnitSet): number {
  let size = 0;
  for (let rest = set; rest !== 0n; rest >>= 32n) size += bitsOf(Number(rest & 0xffffffffn));
  return size;
}

/** Set bits of a 32-bit number, by sums of ever wider fields. */
function bitsOf(word: number): number {
  const pairs = word - ((word >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

/** All of the first `count` units. */
export function allUnits(count: number): UnitSet {
  return (1n << BigInt(count)) - 1n;
}
