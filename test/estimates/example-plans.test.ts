import { describe, expect, it } from 'vitest';
import { heatImbalance, risesOf } from '../../geometry/estimates/air/carry-heat';
import { middleValues } from '../../geometry/estimates/assumptions';
import { compareEstimates } from '../../geometry/estimates/compare-estimates';
import { estimatePlan } from '../../geometry/estimates/estimate-plan';
import { heatLeaving, heatsByNode } from '../../geometry/estimates/heat/heat-in-place';
import { type Load, loads } from '../../geometry/estimates/profile';
import { breathsOf } from '../../geometry/estimates/running/breathing';
import { fanSpeedFor } from '../../geometry/estimates/running/fan-speed';
import { type Run, runMachine } from '../../geometry/estimates/running/run';
import { assumptionRanking, strongestAssumptions } from '../../geometry/estimates/sensitivity';
import { examplePlan, type PlacedPlan } from './example-plan';

const names = ['demo', 'faults', 'small'] as const;

function run({ plan, scene }: PlacedPlan, load: Load, more: object = {}): Run {
  const result = runMachine(plan, scene, { load, ...more }, middleValues);
  if (!result.ok) throw new Error(result.because);
  return result.run;
}

describe.each(names)('%s', (name) => {
  const placed = examplePlan(name);

  it.each(loads)('balances air, mass and heat to 1e-9 at %s, and comes to rest', (load) => {
    const { state, question } = run(placed, load);
    expect(state.settled).toBe(true);
    expect(state.solution.imbalance).toBeLessThan(1e-9);
    expect(heatImbalance(state.carrier, state.watts, state.rises)).toBeLessThan(1e-9);
    const put = [...question.heats.values()].reduce((sum, watts) => sum + watts, 0);
    const { byAir, throughWalls } = heatLeaving(state);
    expect((byAir + throughWalls) / put).toBeCloseTo(1, 9);
  });

  it('holds the card where its control aims, or at an end of its fans', () => {
    const { state, temperatures } = run(placed, 'game');
    const card = temperatures.find(({ part }) => part.kind === 'card');
    const share = state.shares.get('card') ?? Number.NaN;
    const { cardTarget, cardLeastSpeed } = middleValues;
    if (share > cardLeastSpeed && share < 1) expect(card?.celsius).toBeCloseTo(cardTarget, 1);
    else expect((card?.celsius ?? 0) > cardTarget).toBe(share >= 1);
  });

  it('shares every rise out among the sources without a rest', () => {
    const { question, state } = run(placed, 'game');
    const whole = new Float64Array(state.network.nodes);
    for (const id of question.heats.keys())
      risesOf(state.carrier, heatsByNode(question, state.network, id)).forEach((rise, i) => {
        whole[i] = (whole[i] ?? 0) + rise;
      });
    whole.forEach((rise, i) => {
      expect(rise).toBeCloseTo(state.rises[i] ?? 0, 7);
    });
  });

  it('says something in every topic, with a band, assumptions and the word estimate', () => {
    const answers = estimatePlan(placed.plan, placed.scene, { load: 'game' });
    for (const { answer, estimates } of Object.values(answers.topics)) {
      expect(answer.length).toBeGreaterThan(10);
      for (const estimate of estimates) {
        expect(estimate.formula.length).toBeGreaterThan(10);
        if (estimate.value === undefined) {
          expect(estimate.unknown).toMatch(/^unknown, because ./);
          continue;
        }
        expect(estimate.low ?? Number.NaN).toBeLessThanOrEqual(estimate.value);
        expect(estimate.high ?? Number.NaN).toBeGreaterThanOrEqual(estimate.value);
      }
    }
    for (const topic of ['power', 'air', 'heat', 'sound', 'mass'] as const)
      expect(answers.topics[topic].answer).toMatch(/an estimate/);
    const ids = Object.values(answers.topics).flatMap(({ estimates }) => estimates.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('gives equal answers to equal questions, and the same middles without bands', () => {
    const first = estimatePlan(placed.plan, placed.scene, { load: 'render' }, { bands: false });
    const again = estimatePlan(placed.plan, examplePlan(name).scene, { load: 'render' }, { bands: false });
    expect(again.topics).toEqual(first.topics);
  });
});

describe('what follows from what', () => {
  const demo = examplePlan('demo');
  const small = examplePlan('small');

  it('a warmer room warms everything, nearly degree for degree for what has no fan of its own', () => {
    const cool = run(demo, 'game', { room: 20 });
    const warm = run(demo, 'game', { room: 30 });
    const of = ({ temperatures }: Run, id: string) =>
      temperatures.find(({ part }) => part.id === id)?.celsius ?? 0;
    expect(of(warm, 'memory') - of(cool, 'memory')).toBeGreaterThan(8);
    expect(of(warm, 'memory') - of(cool, 'memory')).toBeLessThan(12);
    expect(of(warm, 'processor')).toBeGreaterThan(of(cool, 'processor'));
  });

  it('thin air at 3000 m cools less', () => {
    const inside = ({ question, state }: Run) =>
      breathsOf({ ...run(demo, 'game'), question, state }).find(({ device }) => device === 'cooler')?.rise ??
      0;
    expect(inside(run(demo, 'worst', { altitude: 3000 }))).toBeGreaterThan(inside(run(demo, 'worst')));
  });

  it('a fan stopped draws less; both intakes turned round pull the inside under the room', () => {
    const all = run(demo, 'game');
    const one = run(demo, 'game', { fanShares: { fan: 0, 'fan-2': 0 } });
    const inwards = ({ state }: Run, id: string) =>
      state.solution.flows[state.network.streamLink.get(id) ?? -1] ?? 0;
    expect(inwards(one, 'fan')).toBeLessThan(0.6 * inwards(all, 'fan'));
    const turned = examplePlan('demo', (parts) => {
      for (const id of ['fan', 'fan-2']) Object.assign(parts[id]?.placement as object, { foot: 'blows out' });
    });
    const pressure = (placed: PlacedPlan) =>
      estimatePlan(placed.plan, placed.scene, { load: 'game' }, { bands: false }).topics.air.estimates.find(
        ({ id }) => id === 'air pressure inside',
      )?.value ?? 0;
    expect(pressure(demo)).toBeGreaterThan(0);
    expect(pressure(turned)).toBeLessThan(0);
    const before = estimatePlan(demo.plan, demo.scene, { load: 'game' }, { bands: false }).topics.heat
      .estimates;
    const after = estimatePlan(turned.plan, turned.scene, { load: 'game' }, { bands: false }).topics.heat
      .estimates;
    expect(compareEstimates(before, after).map(({ id }) => id)).toContain('heat of processor');
    expect(compareEstimates(before, before)).toEqual([]);
  });

  it('a card moves less air before closed sheet than behind mesh, and much less 2 mm from it', () => {
    const closed = (thickness?: number) =>
      examplePlan('small', (parts) => {
        const walls = parts.enclosure?.spec.walls as Record<string, { material: string }>;
        if (walls.back) walls.back.material = 'steel';
        if (parts.card && thickness !== undefined) parts.card.spec.thickness = thickness;
      });
    const flow = (placed: PlacedPlan) => {
      const { state } = run(placed, 'worst', { fanShares: { card: 1 } });
      return ['card fan 1', 'card fan 2'].reduce(
        (sum, id) => sum + (state.solution.flows[state.network.streamLink.get(id) ?? -1] ?? 0),
        0,
      );
    };
    expect(flow(closed())).toBeLessThan(0.97 * flow(small));
    expect(flow(closed(64))).toBeLessThan(0.6 * flow(small));
  });

  it('slower case fans can make the machine louder: the card answers for them, and the search knows', () => {
    const answer = fanSpeedFor(demo.plan, demo.scene, { load: 'game' }, 45);
    if (answer.kind === 'unknown') throw new Error(answer.because);
    const [slowest] = answer.sweep;
    const quietest = Math.min(...answer.sweep.map(({ level }) => level ?? Number.NaN));
    expect(slowest?.level ?? 0).toBeGreaterThan(quietest + 3);
    expect(slowest?.shares.card).toBeGreaterThan(answer.sweep.at(-1)?.shares.card ?? 1);
    expect(answer.kind).toBe('met');
  });

  it('finds the speed at which a wish is just met, and says when no speed meets it', () => {
    const idle = fanSpeedFor(demo.plan, demo.scene, { load: 'idle' }, 26);
    if (idle.kind !== 'met') throw new Error(idle.kind);
    expect(idle.point.level).toBeLessThanOrEqual(26);
    expect(idle.point.level).toBeGreaterThan(25.5);
    expect(fanSpeedFor(demo.plan, demo.scene, { load: 'game' }, 10).kind).toBe('not met');
    expect(fanSpeedFor(examplePlan('faults').plan, examplePlan('faults').scene, { load: 'game' }).kind).toBe(
      'unknown',
    );
  });

  it('names the assumption that matters most', () => {
    const { topics } = estimatePlan(demo.plan, demo.scene, { load: 'game' });
    const strongest = strongestAssumptions(topics.heat.estimates);
    expect(strongest.find(({ estimate }) => estimate === 'heat of processor')?.effect.id).toBe(
      'gameProcessor',
    );
    const [first, ...rest] = assumptionRanking(topics.heat.estimates);
    expect(first?.share).toBeGreaterThan(rest[0]?.share ?? 1);
    const whole = [first, ...rest].reduce((sum, one) => sum + (one?.share ?? 0), 0);
    expect(whole).toBeCloseTo(1, 6);
  });
});
