import { describe, expect, it } from 'vitest';
import { buildPart } from '../../../geometry/parts/build-part';
import type { PartSpec } from '../../../geometry/parts/part-spec';
import { withDimension } from '../../../geometry/parts/stated-dimensions/change-dimension';
import { dimensionAt } from '../../../geometry/parts/stated-dimensions/stated-dimensions';
import { placePlan } from '../../../geometry/plan/place-plan';
import type { Plan } from '../../../geometry/plan/plan-schema';
import { solve } from '../../../geometry/solver/solve';
import { type ChainLink, dimensionChain } from '../../../geometry/solver/stack-up/dimension-chain';
import { faceCentre } from '../../../geometry/space/oriented-box';
import { dot, subtract, type Vector3 } from '../../../geometry/space/vector';
import { type ExamplePlan, examplePlan } from './example-plans';

const PANEL = 'cooler to side panel/cooler/enclosure';

const runOf = ({ points: [from, to] }: ChainLink, direction: Vector3): number =>
  dot(subtract(to, from), direction);

/** Distance between the two faces of a link along the chain, in a plan placed from the beginning. */
function apart(plan: Plan, { faces }: ChainLink, direction: Vector3): number {
  const scene = placePlan(plan);
  const [a, b] = faces.map(({ part, box, face }) => {
    const index = scene.indexById.get(part);
    const entry = scene.boxes.find((one) => one.part === index && one.body.name === box);
    if (!entry || !face) throw new RangeError(`${part} has no face ${box} ${face}`);
    return faceCentre(entry.box, face);
  });
  if (!a || !b) throw new RangeError('a link between two faces has two');
  return Math.abs(dot(subtract(b, a), direction));
}

/** Sheets are cut into numbered pieces: where one came or went, names do not tell which is which. */
function isBuiltAnew(before: PartSpec, after: PartSpec): boolean {
  const names = (spec: PartSpec) =>
    buildPart(spec)
      .boxes.map(({ name }) => name)
      .join();
  return names(before) !== names(after);
}

describe('the chain behind a clearance', () => {
  it('walks from the one face to the other, each link beginning where the last one ended', () => {
    const plan = examplePlan('demo');
    const chain = dimensionChain(plan, PANEL);
    if (!chain) throw new RangeError(PANEL);
    expect(chain.links.map(({ path }) => path)).toEqual([
      'height',
      'height',
      'socket.seat',
      'thickness',
      'board.standoff',
      'interior.trayToSide',
    ]);
    const clearance = solve(placePlan(plan)).clearances.find(({ id }) => id === PANEL);
    let at = dot(clearance?.points[0] ?? [0, 0, 0], chain.direction);
    for (const link of chain.links) {
      expect(dot(link.points[0], chain.direction)).toBeCloseTo(at, 9);
      at += runOf(link, chain.direction);
    }
    expect(at).toBeCloseTo(dot(clearance?.points[1] ?? [0, 0, 0], chain.direction), 9);
  });

  it('puts every dimension between two faces that stand apart and part by as much as it says', () => {
    let tried = 0;
    for (const name of ['demo', 'faults', 'small'] satisfies ExamplePlan[]) {
      const plan = examplePlan(name);
      for (const { id } of solve(placePlan(plan)).clearances) {
        const chain = dimensionChain(plan, id);
        for (const link of chain?.links ?? []) {
          const entry = plan.parts[link.part];
          if (!chain || !entry || link.faces.length < 2) continue;
          const size = Math.abs(link.nominal);
          expect(apart(plan, link, chain.direction), `${id} ${link.path}`).toBeCloseTo(size, 6);
          const by = dimensionAt(entry.spec, link.path).plusMinus / 2;
          const spec = withDimension(entry.spec, link.path, link.nominal + by);
          const other = { ...plan, parts: { ...plan.parts, [link.part]: { ...entry, spec } } };
          if (isBuiltAnew(entry.spec, spec)) continue;
          const grown = Math.abs(link.nominal + by);
          expect(apart(other, link, chain.direction), `${id} ${link.path}`).toBeCloseTo(grown, 6);
          tried++;
        }
      }
    }
    expect(tried).toBeGreaterThan(50);
  });

  it('is not known for what is not there', () => {
    expect(dimensionChain(examplePlan('demo'), 'cooler to side panel/nobody/enclosure')).toBeUndefined();
  });
});
