import { describe, expect, it } from 'vitest';
import { carriedBy, findMounts } from '../../geometry/plan/find-mounts';
import { matchHoles, seatPose } from '../../geometry/plan/mounting';
import { placePlan } from '../../geometry/plan/place-plan';
import type { Plan } from '../../geometry/plan/plan-schema';
import type { PlacedPart, Scene } from '../../geometry/plan/scene';
import { transformPoint } from '../../geometry/space/transform';
import type { Vector3 } from '../../geometry/space/vector';
import { smallBuild } from './small-build';

function part(scene: Scene, id: string): PlacedPart {
  const found = scene.parts.find((candidate) => candidate.id === id);
  if (!found) throw new Error(`no part ${id}`);
  return found;
}

function expectPoint(actual: Vector3, expected: Vector3, digits = 6): void {
  for (const axis of [0, 1, 2] as const) expect(actual[axis]).toBeCloseTo(expected[axis], digits);
}

/** The documents print hundredths of a millimetre beside thousandths of an inch; either may be the rounded one. */
const PRINTED_DIGITS = 2;

describe('placing an upright build', () => {
  const scene = placePlan(smallBuild());

  it('has nothing to complain about', () => {
    expect(scene.problems).toEqual([]);
  });

  it('takes the board frame into the world as x = X + y_b, y = Y - x_b, z = Z + z_b', () => {
    // Corner: 2.11 in front of the rear panel (ATX 2.2 figure 4); 20 under a top at 350; z on standoffs of 6.5 plus
    // the 1.57 mm board (ATX 2.2 figure 7).
    const { pose } = part(scene, 'board');
    expectPoint(transformPoint(pose, [0, 0, 0]), [2.11, 330, 8.07], PRINTED_DIGITS);
    expectPoint(transformPoint(pose, [75, 95, 0]), [97.11, 255, 8.07], PRINTED_DIGITS);
    expectPoint(transformPoint(pose, [0, 0, 10]), [2.11, 330, 18.07], PRINTED_DIGITS);
  });

  it('stacks socket seat, package and cooler away from the board', () => {
    // Seat 3.4 (socket mechanical specification, see the standard's table) and the typed package height 4.
    expectPoint(part(scene, 'cooler').pose.translation, [97.11, 255, 8.07 + 3.4 + 4], PRINTED_DIGITS);
  });

  it('seats a card by slot 2: centreline 182.58 from the top edge (CEM 3.0 figure 9-20), fingers 3.40 up', () => {
    const { pose } = part(scene, 'card');
    // Card frame: z from the finger tips, x from the card-side face of the bracket, 1.09 behind the board edge.
    expectPoint(pose.translation, [2.11 - 1.09, 330 - 182.58, 8.07 + 3.4], PRINTED_DIGITS);
    expectPoint(
      transformPoint(pose, [300, 0, 0]),
      [2.11 - 1.09 + 300, 330 - 182.58, 8.07 + 3.4],
      PRINTED_DIGITS,
    );
  });

  it('moves everything mounted on the board with the board', () => {
    const plan = smallBuild();
    const board = plan.parts.board;
    if (!board) throw new Error('no board');
    const moved = placePlan({
      ...plan,
      parts: {
        ...plan.parts,
        board: { ...board, placement: { on: 'enclosure', mount: 'board', shift: [0, 10, 3] } },
      },
    });
    // The mount's y axis is the board's y: forward, the world's x.
    for (const id of ['board', 'processor', 'cooler', 'card']) {
      const before = part(scene, id).pose.translation;
      expectPoint(part(moved, id).pose.translation, [before[0] + 10, before[1], before[2] + 3]);
    }
    expect(moved.problems.map((problem) => problem.kind)).toEqual(['holes do not meet']);
  });

  it('keeps packed boxes and part ranges in step', () => {
    scene.parts.forEach((placed, index) => {
      placed.model.boxes.forEach((body, offset) => {
        const entry = scene.boxes[placed.firstBox + offset];
        expect(entry?.part).toBe(index);
        expect(entry?.body).toBe(body);
      });
    });
    expect(scene.packed.count).toBe(scene.boxes.length);
  });
});

describe('a place that cannot be', () => {
  const placed = (placement: Plan['parts'][string]['placement'], id = 'card') => {
    const plan = smallBuild();
    const old = plan.parts[id];
    if (!old) throw new Error(`no ${id}`);
    return placePlan({ ...plan, parts: { ...plan.parts, [id]: { ...old, placement } } });
  };

  it.each([
    ['carrier missing', { on: 'nobody', mount: 'slot 1' }],
    ['mount missing', { on: 'board', mount: 'slot 3' }],
    ['foot does not fit', { on: 'board', mount: 'slot 1' }],
    ['foot does not fit', { on: 'enclosure', mount: 'board' }],
    ['turn not allowed', { on: 'board', mount: 'slot 2', turn: 45 }],
  ] as const)('says %s', (kind, placement) => {
    expect(placed(placement).problems).toContainEqual(
      expect.objectContaining({ kind, part: 'card', on: placement.on, mount: placement.mount }),
    );
  });

  it('breaks a circle instead of running for ever', () => {
    const plan = smallBuild();
    const { board, card } = plan.parts;
    if (!board || !card) throw new Error('incomplete');
    const circle = placePlan({
      ...plan,
      parts: {
        board: { ...board, placement: { on: 'card', mount: 'x' } },
        card: { ...card, placement: { on: 'board', mount: 'slot 2' } },
      },
    });
    expect(circle.problems.map((problem) => problem.kind)).toContain('carried in a circle');
  });

  it('says when two parts claim one mount', () => {
    const plan = smallBuild();
    const { card } = plan.parts;
    if (!card) throw new Error('no card');
    const scene = placePlan({ ...plan, parts: { ...plan.parts, 'card-2': card } });
    expect(scene.problems).toEqual([expect.objectContaining({ kind: 'mount taken', part: 'card-2' })]);
  });
});

describe('finding mounts', () => {
  const plan = smallBuild();
  const scene = placePlan(plan);
  const spec = (id: string) => part(scene, id).spec;

  it('offers an x16 card only the x16 slot, and says who sits there', () => {
    const free = findMounts(scene, spec('card'), 'card');
    expect(free.map((candidate) => candidate.placement.mount)).toEqual(['slot 2']);
    expect(free[0]?.takenBy).toBeUndefined();
    expect(findMounts(scene, spec('card'))[0]?.takenBy).toBe('card');
  });

  it('gives the pose the part then really has', () => {
    const [candidate] = findMounts(scene, spec('card'), 'card');
    expect(candidate?.pose).toEqual(part(scene, 'card').pose);
  });

  it('lets a fan at the rear blow out unless told otherwise (common practice, no source)', () => {
    const fan = { kind: 'fan', maker: 'Test', model: 'Plain', size: 120 } as const;
    const feet = findMounts(scene, fan).map(({ placement }) => `${placement.mount}: ${placement.foot}`);
    expect(feet).toEqual(['fan rear fan: blows out', 'fan rear fan: blows in']);
    const built = placePlan({
      ...plan,
      parts: { ...plan.parts, fan: { spec: fan, placement: { on: 'enclosure', mount: 'fan rear fan' } } },
    });
    expect(part(built, 'fan').seat?.foot).toBe('blows out');
  });

  it('never offers a part a mount of something it carries', () => {
    expect([...carriedBy(scene, 'board')].sort()).toEqual(['board', 'card', 'cooler', 'processor']);
    expect(
      findMounts(scene, spec('board'), 'board').every((candidate) => candidate.placement.on === 'enclosure'),
    ).toBe(true);
  });
});

describe('holes and standoffs', () => {
  const scene = placePlan(smallBuild());
  const mount = part(scene, 'enclosure').model.mounts.find((candidate) => candidate.id === 'board');
  const foot = part(scene, 'board').model.feet[0];
  if (!mount || !foot) throw new Error('no board mount');

  it('meets every standoff of a microATX case with a microATX board', () => {
    const match = matchHoles(mount, foot);
    expect(match.met.map(({ hole }) => hole.id).sort()).toEqual([...'BCFHJLMRS']);
    expect(match.missing).toEqual([]);
    expect(match.extra).toEqual([]);
  });

  it('names a missing standoff and one that stands where there is no hole', () => {
    const points = (mount.points ?? []).filter((point) => point.id !== 'L');
    const without = matchHoles({ ...mount, points }, foot);
    expect(without.missing.map((hole) => hole.id)).toEqual(['L']);
    const extra = matchHoles({ ...mount, points: [...points, { id: 'stray', at: [120, 120] }] }, foot);
    expect(extra.extra.map((point) => point.id)).toEqual(['stray']);
  });

  it('turns a part about the mount', () => {
    const carrier = { rotation: [1, 0, 0, 0, 1, 0, 0, 0, 1], translation: [0, 0, 0] } as const;
    const plain = { id: 'm', label: 'm', patterns: ['p'], frame: carrier };
    const plainFoot = { id: 'f', label: 'f', pattern: 'p', frame: carrier };
    const pose = seatPose(carrier, plain, plainFoot, 90, [5, 0, 0]);
    expectPoint(transformPoint(pose, [1, 0, 0]), [5, 1, 0]);
  });
});
