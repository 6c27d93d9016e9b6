import { describe, expect, test } from 'vitest';
import { buildPart } from '../../../geometry/parts/build-part';
import { drivenPart, lengthPaths } from '../../../geometry/parts/drawing/driven-dimensions';
import type { PartSpec } from '../../../geometry/parts/part-spec';
import { dimensionsOf } from '../../../geometry/parts/stated-dimensions/stated-dimensions';
import { boundsOfBoxes } from '../../../geometry/space/oriented-box';
import { everyShelfEntry } from '../../views/every-shelf-entry';

const entryOf = (id: string): PartSpec => everyShelfEntry.find(([name]) => name === id)![1];
const firstOf = (kind: PartSpec['kind']): PartSpec =>
  everyShelfEntry.find(([, spec]) => spec.kind === kind)![1];
const dimensionOf = (spec: PartSpec, path: string) => drivenPart(spec, path)?.dimension;

/** Fields whose distance is not one between two faces of the body, by how the builders of bodies are made. */
const unseen = /bendRadius|tubes\.length|cable|raise|recess|curve/;

describe.each(everyShelfEntry)('%s', (_, spec) => {
  const driven = new Map(
    lengthPaths(spec).flatMap((path) => {
      const found = drivenPart(spec, path);
      return found ? [[path, found] as const] : [];
    }),
  );

  test('every dimension found is as long as its field says', () => {
    const nominals = new Map(dimensionsOf(spec).map(({ path, nominal }) => [path, nominal]));
    for (const [path, { dimension }] of driven) {
      if (!dimension) continue;
      expect(dimension.to - dimension.from, path).toBeCloseTo(Math.abs(nominals.get(path) ?? Number.NaN), 5);
    }
  });

  test('a size that changes the whole of the part is found', () => {
    const whole = (sheet: PartSpec) => boundsOfBoxes(buildPart(sheet).boxes.map(({ box }) => box))!;
    const sizes = new Set(
      [0, 1, 2].map((i) => Math.round((whole(spec).max[i as 0] - whole(spec).min[i as 0]) * 1e4)),
    );
    for (const { path, nominal, isPosition } of dimensionsOf(spec)) {
      if (isPosition || unseen.test(path) || !sizes.has(Math.round(nominal * 1e4)) || !driven.has(path))
        continue;
      expect(driven.get(path)?.dimension, path).toBeDefined();
    }
  });
});

describe('what a draughtsman would point at', () => {
  test('the length of a card runs from the bracket to the tip', () => {
    const card = firstOf('card');
    const found = dimensionOf(card, 'length');
    expect(found).toMatchObject({ axis: 0, from: 0, to: found?.nominal });
  });

  test('the height of a cooler stands up from the lid', () => {
    const cooler = everyShelfEntry.find(([, spec]) => spec.kind === 'cooler' && spec.style === 'tower')![1];
    expect(dimensionOf(cooler, 'height')).toMatchObject({ axis: 2, from: 0 });
  });

  test('the inside of an enclosure lies between inner faces', () => {
    const enclosure = entryOf('tidewrack-saltpan-26');
    expect(dimensionOf(enclosure, 'interior.length')).toMatchObject({ axis: 0, from: 0, to: 372 });
    expect(dimensionOf(enclosure, 'interior.trayToSide')).toMatchObject({ axis: 2, from: 0, to: 173 });
    expect(dimensionOf(enclosure, 'interior.behindTray')).toMatchObject({ axis: 2, to: -1 });
  });

  test('the place of a fan seat is measured from the origin to its middle', () => {
    const enclosure = entryOf('tidewrack-saltpan-26');
    expect(dimensionOf(enclosure, 'fanSeats.0.at.0')).toMatchObject({ axis: 1, from: 0, to: 272 });
  });

  test('a default nobody typed has its dimension too', () => {
    const fan: PartSpec = { kind: 'fan', maker: 'Quayside', model: 'Vane', size: 120 };
    expect(dimensionOf(fan, 'thickness')).toMatchObject({ axis: 2, nominal: 25 });
  });

  test('a bend radius is no straight distance', () => {
    const block = everyShelfEntry.find(
      ([, spec]) => spec.kind === 'cooler' && spec.style === 'liquid block',
    )![1];
    expect(dimensionOf(block, 'tubes.bendRadius')).toBeUndefined();
  });
});
