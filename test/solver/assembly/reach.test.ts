import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodiesOf } from '../../../geometry/solver/assembly/assembly-bodies';
import { plugFrame, plugGrips } from '../../../geometry/solver/assembly/reach/plug-grips';
import { driverVolume, testUse, usefulRecords } from '../../../geometry/solver/assembly/reach/use-volume';
import { separateBoxes } from '../../../geometry/space/separation';
import { hands } from '../../../geometry/standards/hand-and-tools';
import { boxesOf } from './oracle-scenes';
import { randomBoxes } from './order/random-scenes';

const hand = hands.usual.value;
const driver = (shaftLength: number) => ({
  label: `shaft ${shaftLength}`,
  shaftDiameter: 6,
  shaftLength,
  handleDiameter: 35,
  handleLength: 100,
  grip: 'fist' as const,
});
const nothing = () => false;

/** Walls of a square shaft 10 across and 150 deep, the screw at its bottom. */
const shaft = boxesOf([
  [-40, -40, 0, -5, 40, 150],
  [5, -40, 0, 40, 40, 150],
  [-5, -40, 0, 5, -5, 150],
  [-5, 5, 0, 5, 40, 150],
]);

describe('driver reach', () => {
  it('a 6 x 200 shaft reaches a screw 150 down a shaft of 10: 2.0 play each side, handle 50 above the mouth', () => {
    const bodies = bodiesOf([], shaft);
    const volume = driverVolume(driver(200), hand, [0, 0, 0], [0, 0, 1], 0);
    expect(testUse(bodies, volume, nothing).fixed).toBe(false);
    const [blade, handle] = volume.boxes;
    if (!blade || !handle) throw new Error('a driver has a shaft and a handle');
    expect(shaft.map((wall) => separateBoxes(blade, wall).distance)).toEqual([2, 2, 2, 2]);
    expect(Math.min(...shaft.map((wall) => separateBoxes(handle, wall).distance))).toBeCloseTo(50, 9);
  });

  it('a 6 x 140 shaft does not: its handle meets the mouth 10 before', () => {
    const bodies = bodiesOf([], shaft);
    const volume = driverVolume(driver(140), hand, [0, 0, 0], [0, 0, 1], 0);
    expect(testUse(bodies, volume, nothing).fixed).toBe(true);
    const [, handle] = volume.boxes;
    if (!handle) throw new Error('a driver has a handle');
    expect(Math.min(...shaft.map((wall) => separateBoxes(handle, wall).distance))).toBeCloseTo(-10, 9);
  });

  it('between two towers 20 apart: reachable when the shaft is as long as they are high, else both are named', () => {
    const towers = [boxesOf([[-60, -60, 20, -10, 60, 160]]), boxesOf([[10, -60, 20, 60, 60, 160]])];
    const bodies = bodiesOf(towers);
    const at = (length: number) =>
      testUse(bodies, driverVolume(driver(length), hand, [0, 0, 0], [0, 0, 1], 0), nothing).blockers;
    expect(at(160)).toBe(0n);
    expect(at(250)).toBe(0n);
    expect(at(159)).toBe(3n);
    expect(at(120)).toBe(3n);
  });
});

describe('fingers on a plug', () => {
  // A plug 20 x 10 and 10 high on a board, a wall 18 away on its left.
  const plug = { frame: plugFrame([0, 0, 10], [0, 0, 1], [1, 0, 0]), half: [10, 5] as const, grip: 10 };
  const wall = boxesOf([[-38, -100, 0, -28, 100, 300]]);

  it('18 beside a plug is too little for a finger of 20; finger and thumb across it do', () => {
    const bodies = bodiesOf([wall]);
    const records = plugGrips(plug, hand, 45).map((grip) => testUse(bodies, grip, nothing));
    const free = (name: string) => records.some((r) => r.volume.name.startsWith(name) && r.blockers === 0n);
    expect(free('finger and thumb, lengthwise')).toBe(false);
    expect(free('finger and thumb, across')).toBe(true);
    expect(free('one finger')).toBe(true);
  });

  it('taking the wall away turns the verdict', () => {
    const records = plugGrips(plug, hand, 45).map((grip) => testUse(bodiesOf([wall]), grip, nothing));
    const lengthwise = records.filter((r) => r.volume.name.startsWith('finger and thumb, lengthwise'));
    expect(lengthwise.every((r) => r.blockers === 1n)).toBe(true);
    const without = plugGrips(plug, hand, 45).map((grip) => testUse(bodiesOf([]), grip, nothing));
    expect(without.every((r) => r.blockers === 0n && !r.fixed)).toBe(true);
  });

  it('adding a part never makes a place reachable that was not', () => {
    fc.assert(
      fc.property(fc.nat({ max: 100_000 }), (seed) => {
        const boxes = randomBoxes(seed, 12, 160, 60);
        const few = bodiesOf([], boxes.slice(0, 6));
        const all = bodiesOf([], boxes);
        const place = { ...plug, frame: plugFrame([80, 80, 60], [0, 0, 1], [1, 0, 0]) };
        for (const grip of plugGrips(place, hand, 45)) {
          if (testUse(few, grip, nothing).fixed) expect(testUse(all, grip, nothing).fixed).toBe(true);
        }
      }),
      { numRuns: 60, seed: 5 },
    );
  });

  it('of several placements only those with something to say are kept', () => {
    const bodies = bodiesOf([wall]);
    const records = usefulRecords(plugGrips(plug, hand, 45).map((grip) => testUse(bodies, grip, nothing)));
    // The wrist of 65 meets the wall when it comes straight; leaning away costs a little and is free.
    expect(records.map((record) => [record.blockers, record.volume.cost])).toEqual([
      [1n, 0],
      [0n, 0.2],
    ]);
  });
});
