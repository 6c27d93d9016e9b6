import { beforeAll, describe, expect, it } from 'vitest';
import { EXACT_AGREEMENT, examinePairs, type OracleReport } from './examine-pairs';

const SEED = 20261;
const PAIRS = 100_000;

describe(`${PAIRS} random oriented pairs, seed ${SEED}`, () => {
  let report: OracleReport;

  beforeAll(async () => {
    report = await examinePairs(SEED, PAIRS);
  }, 600_000);

  it('has many separated, overlapping and touching pairs in it', () => {
    const { generic, mixed, touching, 'axis-aligned': aligned } = report.classes;
    for (const kind of [generic, aligned, mixed]) {
      expect(kind.apart).toBeGreaterThan(2000);
      expect(kind.overlapping).toBeGreaterThan(2000);
    }
    expect(touching.touching).toBe(PAIRS / 5);
  });

  it('agrees with manifold-3d on every gap and volume and with cannon-es on every depth', () => {
    expect(report.exact).toEqual([]);
    for (const kind of Object.values(report.classes)) {
      expect(kind.worstGap).toBeLessThanOrEqual(EXACT_AGREEMENT);
      expect(kind.worstDepth).toBeLessThanOrEqual(EXACT_AGREEMENT);
      expect(kind.worstVolume).toBeLessThanOrEqual(EXACT_AGREEMENT);
    }
  });

  it('has a third library on its side wherever rapier differs', () => {
    expect(report.rapier.filter((entry) => !entry.settled)).toEqual([]);
    expect(report.rapier.length).toBeLessThan(PAIRS / 100);
  });

  it("agrees with three's OBB on the sign of every pair that does not touch", () => {
    expect(report.threeSigns).toBe(0);
  });
});
