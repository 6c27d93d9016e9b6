import { describe, expect, it } from 'vitest';
import { middleValues } from '../../geometry/estimates/assumptions';
import { estimatePlan } from '../../geometry/estimates/estimate-plan';
import { certifiedPoints } from '../../geometry/estimates/power/efficiency';
import { fanChanges } from '../../geometry/estimates/running/fan-changes';
import { runMachine } from '../../geometry/estimates/running/run';
import { examplePlan } from './example-plan';

const demo = examplePlan('demo');
const changes = fanChanges(demo.plan, demo.scene, { load: 'game' });
const find = (id: string) => {
  const change = changes.find((one) => one.id === id);
  if (!change) throw new Error(`no change ${id}`);
  return change;
};

describe('what changes with a fan', () => {
  it('tries every fan turned, slowed and left out, and one on each free seat', () => {
    for (const fan of ['fan', 'fan-2', 'fan-3'])
      for (const how of ['turn', 'slow', 'remove'])
        expect(find(`${how} ${fan}`).temperatures).toHaveLength(2);
    expect(changes.filter(({ id }) => id.startsWith('add '))).not.toHaveLength(0);
  });

  it('gives the difference to the machine as it is, not the figure of another question', () => {
    const result = runMachine(demo.plan, demo.scene, { load: 'game' }, middleValues);
    if (!result.ok) throw new Error(result.because);
    const now = result.run.temperatures.find(({ part }) => part.id === 'processor')?.celsius ?? Number.NaN;
    for (const { temperatures } of changes)
      for (const { part, after, by } of temperatures.filter((one) => one.part === 'processor'))
        expect(after - by, part).toBeCloseTo(now, 9);
  });

  it('finds that both front intakes matter to the processor, and that less air is drawn without one', () => {
    expect(find('remove fan').temperatures[0]?.by).toBeGreaterThan(3);
    expect(find('remove fan').drawn.by).toBeLessThan(-20);
    expect(find('slow fan').drawn.by).toBeGreaterThan(find('remove fan').drawn.by);
    expect(find('turn fan').pressure).toBeLessThan(0);
  });

  it('an intake added draws more air than there was', () => {
    const added = changes.filter(({ id }) => id.startsWith('add '));
    for (const { drawn } of added) expect(drawn.by).toBeGreaterThan(0);
  });

  it('says nothing of a machine that cannot be run', () => {
    const bare = examplePlan('demo', (parts) => {
      for (const id of Object.keys(parts)) if (id !== 'supply') delete parts[id];
      Object.assign(parts.supply ?? {}, { placement: { at: [0, 0, 0] } });
    });
    expect(fanChanges(bare.plan, bare.scene, { load: 'game' })).toEqual([]);
  });
});

describe('details for the drawings', () => {
  const { power, running, wishes } = estimatePlan(
    demo.plan,
    demo.scene,
    { load: 'game', room: 30 },
    { bands: false },
  );

  it('the efficiency curve passes the certified points of the level, its working point lies on it', () => {
    const curve = power.efficiency;
    const half = curve?.samples.find(({ output }) => Math.abs(output - 425) < 1e-9);
    const certified = certifiedPoints('platinum', 230).at50;
    const { lossOverCertified } = middleValues;
    const loss = (0.5 / certified - 0.5) * lossOverCertified;
    expect(half?.efficiency).toBeCloseTo(0.5 / (0.5 + loss), 9);
    expect(curve?.at.wall).toBeGreaterThan(curve?.at.output ?? Number.POSITIVE_INFINITY);
  });

  it('breathing space is told of fans that draw from inside, the narrowest first', () => {
    const spaces = running?.spaces ?? [];
    expect(spaces.map(({ label }) => label)).toContain('Card, fan 1');
    expect(spaces.map(({ label }) => label)).not.toContain('Fan 1');
    const room = spaces.map(({ gap, wanted }) => gap - wanted);
    expect(room).toEqual([...room].sort((a, b) => a - b));
  });

  it('figures for another room do not answer for the room of the brief', () => {
    const heat = wishes.find(({ id }) => id === 'heat');
    expect(heat?.standing).toBe('unknown');
    expect(heat?.says).toContain('30 °C');
  });
});
