import { beforeEach, describe, expect, test } from 'vitest';
import { placePlan } from '../../geometry';
import { nudgeOpenPlan, nudgePart, screenStep } from '../../src/store/nudge';
import { openPlan, planStore, undo } from '../../src/store/plan-store';
import { solutionStore } from '../../src/store/solution-store';
import { turnPart } from '../../src/store/turn-part';
import { samplePlan } from './sample-plan';

const plan = samplePlan();
const scene = placePlan(plan);
const originOf = (id: string, of = scene) => of.parts[of.indexById.get(id)!]!.pose.translation;

describe('one nudge', () => {
  test.each([
    ['board', [1, 0, 0]],
    ['board', [0, 0.1, 0]],
    ['processor', [0, 0, 1]],
    ['processor', [-1, 0, 0]],
    ['fan', [0, 0, -0.1]],
  ] as const)('moves the %s in the world by exactly %j, whatever it sits on', (id, delta) => {
    const moved = placePlan(nudgePart(plan, scene, id, delta));
    originOf(id, moved).forEach((value, axis) => {
      expect(value).toBeCloseTo(originOf(id)[axis]! + delta[axis]!, 9);
    });
  });

  test('keeps a seated part on its mount, and brings what it carries along', () => {
    const next = nudgePart(plan, scene, 'board', [2, 0, 0]);
    expect(next.parts.board?.placement).toMatchObject({ on: 'enclosure', mount: 'board' });
    expect(originOf('processor', placePlan(next))[0]).toBeCloseTo(originOf('processor')[0] + 2, 9);
  });

  test('there and back leaves no shift behind', () => {
    const there = nudgePart(plan, scene, 'board', [0.1, 0, 0]);
    const back = nudgePart(there, placePlan(there), 'board', [-0.1, 0, 0]);
    expect(back.parts.board?.placement).toEqual(plan.parts.board?.placement);
  });

  test('of a part whose mount is gone moves it from where it is drawn', () => {
    const astray = { ...plan.parts.processor!, placement: { on: 'board', mount: 'no such mount' } };
    const lost = { ...plan, parts: { ...plan.parts, processor: astray } };
    const before = placePlan(lost);
    const after = placePlan(nudgePart(lost, before, 'processor', [0, 1, 0]));
    expect(originOf('processor', after)[1]).toBeCloseTo(originOf('processor', before)[1] + 1, 9);
  });

  test('of a part that is not there changes nothing', () => {
    expect(nudgePart(plan, scene, 'card', [1, 0, 0])).toBe(plan);
  });
});

describe('a run of nudges', () => {
  beforeEach(() => openPlan('one', samplePlan()));
  const at = () => planStore.getState().plan.parts.fan?.placement;
  const nudge = (id: string, time: number) =>
    nudgeOpenPlan(solutionStore.getState().scene, id, [1, 0, 0], time);

  test('is one step of undo', () => {
    for (const time of [10_000, 10_200, 10_900]) nudge('fan', time);
    expect(at()).toEqual({ at: [303, 200, 80] });
    undo();
    expect(at()).toEqual({ at: [300, 200, 80] });
  });

  test('ends with a pause, another part or another edit', () => {
    nudge('fan', 20_000);
    nudge('fan', 22_000);
    nudge('processor', 22_100);
    nudge('fan', 22_200);
    expect(planStore.temporal.getState().pastStates).toHaveLength(4);
  });
});

describe('arrow keys', () => {
  test('right means the front from the side, the tray from the front, and stays right in every view', () => {
    expect(screenStep('side', 'right', 1)).toEqual([1, 0, 0]);
    expect(screenStep('front', 'right', 1)).toEqual([0, 0, -1]);
    expect(screenStep('rear', 'left', 0.1)).toEqual([0, 0, -0.1]);
    expect(screenStep('top', 'up', 1)).toEqual([0, 0, -1]);
  });

  test.each(['three-quarter', 'side', 'front', 'rear', 'back', 'top', 'floor'] as const)(
    'right, up and nearer are a right-handed frame in the %s view',
    (view) => {
      const [r, u, n] = (['right', 'up', 'nearer'] as const).map((direction) =>
        screenStep(view, direction, 1),
      );
      const cross = [0, 1, 2].map(
        (axis) => r![(axis + 1) % 3]! * u![(axis + 2) % 3]! - r![(axis + 2) % 3]! * u![(axis + 1) % 3]! || 0,
      );
      expect(cross).toEqual(n);
    },
  );
});

describe('a turn', () => {
  test('of a free part goes by quarters about the axis that faces the eye, and four come round', () => {
    let turned = plan;
    for (let quarter = 0; quarter < 4; quarter++)
      turned = turnPart(turned, placePlan(turned), 'fan', 'side') ?? turned;
    expect(turned.parts.fan?.placement).toEqual(plan.parts.fan?.placement);
    const once = turnPart(plan, scene, 'fan', 'side');
    expect(once?.parts.fan?.placement).toEqual({ at: [300, 200, 80], rotate: [0, 0, 90] });
  });

  test('of a board is refused: its mount holds it one way only', () => {
    expect(turnPart(plan, scene, 'board', 'side')).toBeUndefined();
  });
});
