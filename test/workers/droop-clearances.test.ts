import { expect, test } from 'vitest';
import { middleValues } from '../../geometry/estimates/assumptions';
import { cardDroops } from '../../geometry/estimates/mass/card-droop';
import { droopRows } from '../../src/workers/droop-clearances';
import { examplePlan } from '../estimates/example-plan';

/** The demo machine with a disk lying free under the tip of the card. */
function withDiskUnderTip() {
  return examplePlan('demo', (parts) => {
    const { kind, maker } = parts['drive-2']?.spec ?? {};
    Object.assign(parts, {
      'drive-2': {
        spec: { kind, maker, model: 'Under the tip', form: '3.5', height: 26.1 },
        placement: { at: [200, 60, 60], rotate: [-90, 0, 0] },
      },
    });
  });
}

test('the tip of a card sinks towards what lies under it by as much as its droop there, less with a prop', () => {
  const { plan, scene } = withDiskUnderTip();
  const [droop] = cardDroops(scene, middleValues);
  const row = droopRows(plan, scene).find(({ title }) => title.includes('drive 2'));
  if (!droop || !row) throw new Error(JSON.stringify(droopRows(plan, scene)));
  expect(droop.free).toBeGreaterThan(0.5);
  const lost = row.placed - row.sunk;
  expect(lost).toBeGreaterThan(0.3 * droop.free);
  expect(lost).toBeLessThan(1.05 * droop.free);
  expect(row.placed - row.propped).toBeLessThan(0.1 * lost);
});

test('what stands under the slot itself keeps its gap, and a card on edge has none to lose', () => {
  const demo = examplePlan('demo');
  for (const { placed, sunk } of droopRows(demo.plan, demo.scene)) expect(placed - sunk).toBeLessThan(0.05);
  const small = examplePlan('small');
  expect(droopRows(small.plan, small.scene)).toEqual([]);
});
