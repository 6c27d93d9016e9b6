import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { buildPart } from '../../geometry/parts/build-part';
import { outerSizeOf } from '../../geometry/parts/enclosure/outer-size';
import { type PartKind, type PartSpec, partKinds, partSpecSchema } from '../../geometry/parts/part-spec';
import { footFits } from '../../geometry/plan/mounting';
import { expectSoundModel } from '../parts/model-rules';

const folder = new URL('../../public/shelf/', import.meta.url);

const entrySchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  generic: z.literal(true).optional(),
  note: z.string().min(1).max(300).optional(),
  spec: z.unknown(),
});

interface Entry {
  readonly id: string;
  readonly generic: boolean;
  readonly spec: PartSpec;
}

function shelfOf(kind: PartKind): readonly Entry[] {
  const listed = z
    .array(entrySchema)
    .parse(JSON.parse(readFileSync(new URL(`${kind}.json`, folder), 'utf8')));
  return listed.map(({ id, generic, spec }) => {
    const parsed = partSpecSchema.safeParse(spec);
    if (!parsed.success) throw new Error(`${id}: ${z.prettifyError(parsed.error)}`);
    return { id, generic: generic ?? false, spec: parsed.data };
  });
}

const shelf = partKinds.flatMap(shelfOf);
const ofKind = (kind: PartKind) => shelf.filter((entry) => entry.spec.kind === kind);

/** How many parts of each kind a person can choose from without typing one. */
const least: Readonly<Record<PartKind, number>> = {
  enclosure: 8,
  board: 7,
  processor: 6,
  cooler: 9,
  memory: 6,
  drive: 6,
  card: 10,
  supply: 7,
  fan: 6,
  radiator: 5,
  adapter: 4,
};

describe('the shelf', () => {
  it('has one file a kind, enough parts of each, and each file holds its own kind', () => {
    expect(readdirSync(folder).sort()).toEqual(partKinds.map((kind) => `${kind}.json`).sort());
    for (const kind of partKinds) {
      expect(ofKind(kind).length, kind).toBeGreaterThanOrEqual(least[kind]);
      expect(shelfOf(kind).every((entry) => entry.spec.kind === kind)).toBe(true);
    }
    expect(shelf.length).toBeGreaterThanOrEqual(70);
  });

  it('names every part once, and calls a part generic when it has no maker', () => {
    expect(new Set(shelf.map((entry) => entry.id)).size).toBe(shelf.length);
    for (const { id, generic, spec } of shelf) expect(spec.maker === 'Generic', id).toBe(generic);
  });

  it.each(shelf.map((entry) => [entry.id, entry.spec] as const))(
    '%s builds and does not overlap itself',
    (_, spec) => {
      expectSoundModel(buildPart(spec));
    },
  );

  it('gives every enclosure a board that stands on its standoffs and a supply that is screwed to it', () => {
    const feetOf = (kind: PartKind) => ofKind(kind).flatMap((entry) => buildPart(entry.spec).feet);
    for (const { id, spec } of ofKind('enclosure')) {
      const { mounts } = buildPart(spec);
      const taken = (kind: PartKind) => {
        const feet = feetOf(kind);
        return mounts.some((mount) => feet.some((foot) => footFits(mount, foot)));
      };
      expect(taken('board'), `${id}: board`).toBe(true);
      expect(taken('supply'), `${id}: supply`).toBe(true);
    }
  });

  it('names enclosures by their litres without feet and handle', () => {
    for (const { spec } of ofKind('enclosure')) {
      if (spec.kind !== 'enclosure') continue;
      const named = Number(spec.model.match(/\d+$/)?.[0]);
      expect(Math.round(outerSizeOf(spec).litres), spec.model).toBe(named);
    }
  });

  it('gives every processor, cooler and memory module a place on some board', () => {
    const lids = ofKind('processor').flatMap((entry) => buildPart(entry.spec).mounts);
    const boards = ofKind('board').flatMap((entry) => buildPart(entry.spec).mounts);
    for (const { id, spec } of ofKind('cooler')) {
      const { feet } = buildPart(spec);
      expect(
        lids.some((lid) => feet.some((foot) => footFits(lid, foot))),
        id,
      ).toBe(true);
    }
    for (const { id, spec } of [...ofKind('processor'), ...ofKind('memory')]) {
      const { feet } = buildPart(spec);
      expect(
        boards.some((mount) => feet.some((foot) => footFits(mount, foot))),
        id,
      ).toBe(true);
    }
  });
});
