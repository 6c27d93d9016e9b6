import { expect } from 'vitest';
import type { PartModel } from '../../geometry/parts/body';
import { type Bounds, boundsOfBoxes } from '../../geometry/space/oriented-box';
import { separateBoxes } from '../../geometry/space/separation';
import { CONTACT_TOLERANCE_MM } from '../../geometry/space/tolerance';

/** Pairs of solid boxes of one part that share volume, by name. */
export function solidOverlaps(model: PartModel): readonly string[] {
  const solids = model.boxes.filter((box) => box.role === 'solid');
  return solids.flatMap((a, i) =>
    solids
      .slice(i + 1)
      .filter((b) => separateBoxes(a.box, b.box).distance < -CONTACT_TOLERANCE_MM)
      .map((b) => `${a.name} / ${b.name}`),
  );
}

/** What holds for the body of any part: no self-overlap, real boxes, unique names, features that name its boxes. */
export function expectSoundModel(model: PartModel): void {
  expect(solidOverlaps(model)).toEqual([]);
  for (const { name, box } of model.boxes) {
    expect(
      box.half.every((half) => Number.isFinite(half) && half > 0),
      name,
    ).toBe(true);
    expect(box.centre.every(Number.isFinite), name).toBe(true);
  }
  const unique = (names: readonly string[]) => expect(new Set(names).size).toBe(names.length);
  const names = model.boxes.map((box) => box.name);
  unique(names);
  unique(model.mounts.map((mount) => mount.id));
  unique(model.feet.map((foot) => foot.id));
  unique(model.features.map((feature) => feature.id));
  unique(model.adjustments.map((adjustment) => adjustment.id));
  const features = model.features.map((feature) => feature.id);
  for (const box of model.boxes) if (box.feature !== undefined) expect(features).toContain(box.feature);
  for (const feature of model.features) {
    for (const used of [...feature.use, ...feature.approach]) {
      expect(names).toContain(used);
      expect(model.boxes.find((box) => box.name === used)?.role).not.toBe('solid');
    }
  }
}

/** The range a named box spans in the part's frame. */
export function spanOf(model: PartModel, name: string): Bounds {
  const found = model.boxes.filter((box) => box.name === name).map((box) => box.box);
  const bounds = boundsOfBoxes(found);
  if (bounds === undefined) throw new Error(`no box is called ${name}`);
  return bounds;
}

/** The range all solid boxes span, or those an extra test lets through. */
export function solidSpan(
  model: PartModel,
  choose: (box: PartModel['boxes'][number]) => boolean = () => true,
): Bounds {
  const bounds = boundsOfBoxes(
    model.boxes.filter((box) => box.role === 'solid' && choose(box)).map((box) => box.box),
  );
  if (bounds === undefined) throw new Error('no solid box was chosen');
  return bounds;
}
