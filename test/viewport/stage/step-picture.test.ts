import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { identityTransform, placePlan, poseOnPath, readPlan } from '../../../geometry';
import type { Stage } from '../../../src/store/stage-store';
import { projectPoint } from '../../../src/viewport/camera/sight';
import { movingBounds, stageBounds } from '../../../src/viewport/stage/stage-bounds';
import { stagedParts } from '../../../src/viewport/stage/staged-parts';
import { stepPicture } from '../../../src/viewport/stage/step-picture';
import { chooseWay } from '../../../src/views/way-in/choose-way';
import { answerAssembly } from '../../../src/workers/answer-assembly';

const read = readPlan(readFileSync('public/plans/small.json', 'utf8'));
if (!read.ok) throw new Error('the plan cannot be read');
const { plan } = read;
const scene = placePlan(plan);
const answer = answerAssembly(plan);
const screen = { width: 400, height: 300 };

const stages = answer.subjects.map(({ key, motions }) => {
  const way = chooseWay(answer, { kind: 'step', key });
  if (!way) throw new Error(key);
  const { absent, moving, enclosure } = way;
  const stage: Stage = {
    scene,
    units: answer.units,
    absent,
    moving,
    enclosure,
    swept: [],
    mark: undefined,
    meets: false,
    start: identityTransform,
  };
  return { key, motions, stage };
});

describe('the units of a scene', () => {
  it('hold every solid box once, with the plugs as things of their own', () => {
    const parts = stagedParts(scene, answer.units);
    const solids = scene.boxes.filter(({ body }) => body.role === 'solid').length;
    const plugs = answer.units.filter(({ isPlug }) => isPlug);
    const boxes = parts.reduce((sum, { model }) => sum + model.boxes.length, 0);
    expect(boxes).toBe(solids + plugs.reduce((sum, unit) => sum + unit.boxes.length, 0));
    expect(new Set(parts.map(({ id, neverMoves }) => `${id} ${neverMoves}`)).size).toBe(parts.length);
    expect(stagedParts(scene, answer.units)).toBe(parts);
  });
});

describe('pictures of the steps', () => {
  it('show all that moves, at its seat and off it, inside the picture', () => {
    for (const { key, motions, stage } of stages) {
      const picture = stepPicture(stage, motions, screen);
      expect(picture, key).toBeDefined();
      if (!picture) continue;
      const bounds = movingBounds(stage, picture.displacement);
      expect(bounds, key).toBeDefined();
      if (!bounds) continue;
      for (let corner = 0; corner < 8; corner++) {
        const { at } = projectPoint(picture.sight, screen, [
          corner & 1 ? bounds.max[0] : bounds.min[0],
          corner & 2 ? bounds.max[1] : bounds.min[1],
          corner & 4 ? bounds.max[2] : bounds.min[2],
        ]);
        expect(at[0], key).toBeGreaterThan(-1);
        expect(at[0], key).toBeLessThan(screen.width + 1);
        expect(at[1], key).toBeGreaterThan(-1);
        expect(at[1], key).toBeLessThan(screen.height + 1);
      }
    }
  });

  it('draw what moves on its own way in, off its seat by no more than 90 mm, with an arrow that ends there', () => {
    for (const { key, motions, stage } of stages) {
      const picture = stepPicture(stage, motions, screen);
      const away = Math.hypot(...(picture?.displacement.translation ?? []));
      expect(away, key).toBeGreaterThan(0.5);
      if (motions.every(({ kind }) => kind === 'slide')) expect(away, key).toBeLessThanOrEqual(90 + 1e-6);
      expect(picture?.arrow.length, key).toBeGreaterThan(0);
      const seat = movingBounds(stage, poseOnPath({ motions, reach: 1 }, 1));
      const tip = picture?.arrow[picture.arrow.length - 1]?.[1];
      for (const axis of [0, 1, 2] as const)
        expect(tip?.[axis], key).toBeCloseTo(((seat?.min[axis] ?? 0) + (seat?.max[axis] ?? 0)) / 2, 6);
    }
  });

  it('leave the enclosure out on the bench', () => {
    const bench = stages.find(({ stage }) => !stage.enclosure);
    const inside = stages.find(({ stage }) => stage.enclosure);
    const height = (stage: Stage | undefined) => {
      const bounds = stage && stageBounds(stage);
      return bounds ? bounds.max[0] - bounds.min[0] : 0;
    };
    expect(height(bench?.stage)).toBeLessThan(height(inside?.stage));
  });
});
