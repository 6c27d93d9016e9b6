import { describe, expect, it } from 'vitest';
import { middleValues } from '../../../geometry/estimates/assumptions';
import { cardDroops } from '../../../geometry/estimates/mass/card-droop';
import { massFigures, wholeMass } from '../../../geometry/estimates/mass/mass-figures';
import { partMasses } from '../../../geometry/estimates/mass/masses';
import { roomLeft } from '../../../geometry/estimates/mass/places';
import {
  footLoads,
  hangAngle,
  type Stand,
  standOf,
  tippingOf,
} from '../../../geometry/estimates/mass/standing';
import { examplePlan } from '../example-plan';

const square: Stand = {
  contacts: [
    { name: 'a', x: 0, z: 0 },
    { name: 'b', x: 0, z: 200 },
    { name: 'c', x: 400, z: 0 },
    { name: 'd', x: 400, z: 200 },
  ],
  edges: { minX: 0, maxX: 400, minZ: 0, maxZ: 200 },
  ground: 0,
  top: 500,
};

describe('standing (statics)', () => {
  it('shares the weight evenly in the middle, wholly to two feet over an edge, and always balances', () => {
    expect(footLoads(square, [200, 99, 100], 100)).toEqual([25, 25, 25, 25]);
    const edge = footLoads(square, [0, 99, 100], 100);
    expect(edge[0]).toBeCloseTo(50, 9);
    expect(edge[2]).toBeCloseTo(0, 9);
    const loads = footLoads(square, [130, 99, 70], 100);
    const sum = (weight: (i: number) => number) =>
      loads.reduce((total, load, i) => total + load * weight(i), 0);
    expect(sum(() => 1)).toBeCloseTo(100, 9);
    expect(sum((i) => square.contacts[i]?.x ?? 0) / 100).toBeCloseTo(130, 9);
    expect(sum((i) => square.contacts[i]?.z ?? 0) / 100).toBeCloseTo(70, 9);
  });

  it('tips at 45 degrees when the edge is as far as the centre is high, over the nearest edge', () => {
    const tipping = tippingOf(square, [200, 100, 100], 100);
    expect(tipping.degrees).toBeCloseTo(45, 9);
    expect(tipping.push).toBeCloseTo((100 * 100) / 500, 9);
    expect(tippingOf(square, [390, 100, 100], 100).over).toBe('front');
  });

  it('hangs straight under its centre and at 45 degrees when as far beside as below', () => {
    expect(hangAngle([0, 100, 0], [0, 0, 0])).toBeCloseTo(0, 9);
    expect(hangAngle([0, 100, 0], [60, 0, 80])).toBeCloseTo(45, 9);
  });
});

describe('the demo plan', () => {
  const { plan, scene } = examplePlan('demo');

  it('weighs what its sheets add up to, with leads', () => {
    const stated = Object.values(plan.parts).reduce((sum, { spec }) => {
      const { mass } = spec;
      return sum + (mass === undefined ? 0 : typeof mass === 'number' ? mass : mass.value);
    }, 0);
    expect(wholeMass(scene, middleValues)?.kilograms).toBeCloseTo(
      (stated + middleValues.leadsMass) / 1000,
      9,
    );
  });

  it('has its centre inside, and the two glass-side feet bear less than the weight', () => {
    const centre = wholeMass(scene, middleValues)?.centre ?? [0, 0, 0];
    const stand = standOf(scene);
    expect(stand?.contacts.length).toBe(4);
    expect(centre[0]).toBeGreaterThan(0);
    expect(centre[0]).toBeLessThan(372);
    expect(centre[2]).toBeGreaterThan(-20);
    expect(centre[2]).toBeLessThan(177);
  });

  it('puts every part where its body is: a supply moved up lifts the centre', () => {
    const masses = partMasses(scene, middleValues);
    const supply = masses.find(({ part }) => part.kind === 'supply');
    expect(supply?.at[1]).toBeCloseTo((5 + 68) / 2, 0);
  });

  it("droops its card, which lies across gravity; the small plan's card hangs and does not", () => {
    const [card] = cardDroops(scene, middleValues);
    expect(card?.free).toBeGreaterThan(0.3);
    expect(card?.propped).toBeLessThan((card?.free ?? 0) / 5);
    const [hung] = cardDroops(examplePlan('small').scene, middleValues);
    expect(hung?.free).toBeCloseTo(0, 9);
  });

  it('states litres both ways, larger over everything', () => {
    const figures = massFigures(plan, scene, middleValues);
    const value = (id: string) => figures.find((figure) => figure.id === id)?.value ?? Number.NaN;
    expect(value('size walls')).toBeCloseTo((374.2 * 354 * 197.8) / 1e6, 1);
    expect(value('size overall')).toBeGreaterThan(value('size walls'));
  });
});

it('a bag takes a machine in the best way it may be turned', () => {
  const machine = { length: 360, height: 200, width: 150 };
  const bag = { length: 210, height: 370, width: 160 };
  expect(roomLeft(machine, bag, false)).toBe(10);
  expect(roomLeft(machine, bag, true)).toBeLessThan(0);
});
