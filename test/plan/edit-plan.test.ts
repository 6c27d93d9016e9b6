import { describe, expect, it } from 'vitest';
import {
  addPart,
  adjustPart,
  freePart,
  nextPartId,
  placementAt,
  removePart,
  replacePart,
  suggestPlacement,
} from '../../geometry/plan/edit-plan';
import { placePlan } from '../../geometry/plan/place-plan';
import { planSchema } from '../../geometry/plan/plan-schema';
import { rotationFromDegrees } from '../../geometry/space/rotation';
import { smallBuild } from './small-build';

const specOf = (id: string) => {
  const found = smallBuild().parts[id];
  if (!found) throw new Error(`no ${id}`);
  return found.spec;
};

describe('editing a plan', () => {
  it('numbers further parts of a kind', () => {
    const plan = smallBuild();
    const once = addPart(plan, specOf('card'), { at: [0, 0, 0] });
    expect(once.id).toBe('card-2');
    expect(nextPartId(once.plan, 'card')).toBe('card-3');
  });

  it('leaves the plan it was given alone', () => {
    const plan = smallBuild();
    const copy = structuredClone(plan);
    removePart(plan, 'board');
    adjustPart(plan, 'cooler', 'front fan raise', 5);
    replacePart(plan, 'card', specOf('card'));
    expect(plan).toEqual(copy);
  });

  it('removes a part together with what stands on it', () => {
    const { plan, removed } = removePart(smallBuild(), 'processor');
    expect([...removed].sort()).toEqual(['cooler', 'processor']);
    expect(Object.keys(plan.parts).sort()).toEqual(['board', 'card', 'enclosure']);
  });

  it('suggests the first free mount', () => {
    const { plan } = removePart(smallBuild(), 'card');
    expect(suggestPlacement(placePlan(plan), specOf('card'))).toMatchObject({ on: 'board', mount: 'slot 2' });
  });

  it('frees a part without moving it', () => {
    const plan = smallBuild();
    const card = placePlan(plan).parts.find((part) => part.id === 'card');
    if (!card) throw new Error('no card');
    const freed = placePlan(freePart(plan, 'card', card.pose)).parts.find((part) => part.id === 'card');
    freed?.pose.translation.forEach((value, axis) => {
      expect(value).toBeCloseTo(card.pose.translation[axis] ?? Number.NaN, 9);
    });
    freed?.pose.rotation.forEach((value, entry) => {
      expect(value).toBeCloseTo(card.pose.rotation[entry] ?? Number.NaN, 9);
    });
  });

  it('writes a pose as a placement the schema takes', () => {
    const placement = placementAt({ rotation: rotationFromDegrees([0, 90, 0]), translation: [1, 2, 3] });
    expect(placement).toEqual({ at: [1, 2, 3], rotate: [0, 90, 0] });
    const plan = freePart(smallBuild(), 'card', {
      rotation: rotationFromDegrees([10, 20, 30]),
      translation: [1, 2, 3],
    });
    expect(() => planSchema.parse(plan)).not.toThrow();
  });

  it('replaces a board and keeps its guests on the mounts of the same name', () => {
    const board = specOf('board');
    if (board.kind !== 'board') throw new Error('not a board');
    const { plan, loosened } = replacePart(smallBuild(), 'board', { ...board, model: 'Other' });
    expect(loosened).toEqual([]);
    expect(placePlan(plan).problems).toEqual([]);
    expect(plan.parts.card?.placement).toEqual({ on: 'board', mount: 'slot 2' });
  });

  it('moves a guest to another fitting mount when its own is gone', () => {
    const board = specOf('board');
    if (board.kind !== 'board') throw new Error('not a board');
    const { plan, loosened } = replacePart(smallBuild(), 'board', {
      ...board,
      slots: [{ position: 1, size: 'x16' }],
    });
    expect(loosened).toEqual([]);
    expect(plan.parts.card?.placement).toMatchObject({ on: 'board', mount: 'slot 1' });
  });

  it('lets a guest stand where it was when nothing takes it, and says so', () => {
    const board = specOf('board');
    if (board.kind !== 'board') throw new Error('not a board');
    const before = placePlan(smallBuild()).parts.find((part) => part.id === 'card');
    const { plan, loosened } = replacePart(smallBuild(), 'board', { ...board, slots: [] });
    expect(loosened).toEqual(['card']);
    const after = placePlan(plan).parts.find((part) => part.id === 'card');
    after?.pose.translation.forEach((value, axis) => {
      expect(value).toBeCloseTo(before?.pose.translation[axis] ?? Number.NaN, 9);
    });
  });

  it('refuses to put a card in place of a cooler', () => {
    expect(() => replacePart(smallBuild(), 'cooler', specOf('card'))).toThrow(RangeError);
  });
});
