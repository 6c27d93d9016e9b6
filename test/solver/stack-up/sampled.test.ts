import { describe, expect, it } from 'vitest';
import { stackUpOf } from '../../../geometry/solver/stack-up/stack-ups';
import { examplePlan } from './example-plans';
import { discoveryOf, fastClearance, normals, seeded, solvedClearance, valuesAt } from './sampling';
import { kinked, watched } from './watched-clearances';

const MILLION = 1_000_000;
const SOLVED = 25;

describe.each(watched)('%s: %s', (name, id) => {
  const plan = examplePlan(name);
  const stack = stackUpOf(plan, id);
  if (!stack) throw new RangeError(id);
  const discovery = discoveryOf(plan, id);
  const fast = fastClearance(discovery);
  const count = discovery.variations.length;

  it('is the sum of its shares in the solved scene, all dimensions off at once', () => {
    const uniform = seeded(1);
    for (let sample = 0; sample < SOLVED; sample++) {
      const offsets = Float64Array.from({ length: count }, () => 2 * uniform() - 1);
      expect(fast(offsets)).toBeCloseTo(
        solvedClearance(plan, id, valuesAt(plan, discovery, offsets)) ?? Number.NaN,
        8,
      );
    }
  });

  it('stays within the worst case in a million samples, and reaches it at a corner', () => {
    const uniform = seeded(2);
    const offsets = new Float64Array(count);
    const [least, most] = stack.worstCase;
    let [lowest, highest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let sample = 0; sample < MILLION; sample++) {
      // Ends of the band are drawn often: corners are where a worst case would be missed.
      for (let k = 0; k < count; k++) {
        const u = uniform();
        offsets[k] = u < 0.25 ? -1 : u > 0.75 ? 1 : 4 * (u - 0.5);
      }
      const gap = fast(offsets);
      lowest = Math.min(lowest, gap);
      highest = Math.max(highest, gap);
    }
    expect(lowest).toBeGreaterThanOrEqual(least - 1e-9);
    expect(highest).toBeLessThanOrEqual(most + 1e-9);
    const nearest = Float64Array.from(discovery.binding.gap.upper, (share) => (share > 0 ? -1 : 1));
    expect(fast(nearest)).toBeCloseTo(least, 9);
  });

  it('has the sigma of a million normal samples within 2 %, and its probabilities', () => {
    const normal = normals(seeded(3));
    const scale = discovery.variations.map(({ dimension }) => 1 / dimension.sigmas);
    const offsets = new Float64Array(count);
    let [sum, squares, below] = [0, 0, 0];
    for (let sample = 0; sample < MILLION; sample++) {
      for (let k = 0; k < count; k++) offsets[k] = normal() * (scale[k] ?? 0);
      const off = fast(offsets) - stack.nominal;
      sum += off;
      squares += off * off;
      if (off + stack.nominal < stack.wanted) below++;
    }
    const sigma = Math.sqrt(squares / MILLION - (sum / MILLION) ** 2);
    expect(stack.kinked).toBe(false);
    expect(Math.abs(stack.sigma / sigma - 1)).toBeLessThan(0.02);
    expect(below / MILLION).toBeCloseTo(stack.probabilityBelowWanted, 2);
  });
});

describe.each(kinked)('%s: %s', (name, id) => {
  const plan = examplePlan(name);
  const stack = stackUpOf(plan, id);
  if (!stack) throw new RangeError(id);
  const discovery = discoveryOf(plan, id);

  it('says that it is no plain sum, and the worst case bounds the solved scene all the same', () => {
    expect(stack.kinks.map(({ kind }) => kind)).not.toEqual([]);
    const uniform = seeded(4);
    const [least, most] = stack.worstCase;
    for (let sample = 0; sample < 2 * SOLVED; sample++) {
      const offsets = Float64Array.from({ length: discovery.variations.length }, () => {
        const u = uniform();
        return u < 0.4 ? -1 : u > 0.6 ? 1 : 10 * (u - 0.5);
      });
      const gap = solvedClearance(plan, id, valuesAt(plan, discovery, offsets));
      // Slipped past: nothing stands in front within reach.
      if (gap === undefined) continue;
      expect(gap).toBeGreaterThanOrEqual(least - 1e-9);
      expect(gap).toBeLessThanOrEqual(most + 1e-9);
    }
  });
});
