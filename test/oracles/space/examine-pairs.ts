import { overlapVolume } from '../../../geometry/space/overlap-volume';
import { separateBoxes } from '../../../geometry/space/separation';
import { CONTACT_TOLERANCE_MM } from '../../../geometry/space/tolerance';
import { type BoxPair, type PairClass, randomPair, seededRandom } from '../../space/random-boxes';
import {
  cannonDepth,
  loadManifold,
  loadRapier,
  type ManifoldOracle,
  type RapierOracle,
  threeOverlaps,
} from './oracles';

/** Two exact answers agree when they differ by at most this part of their value, or of 1 mm (1 mm3) below that. */
export const EXACT_AGREEMENT = 1e-9;

/** Single-precision answers agree when within this many mm plus this part of the value. */
export const SINGLE_AGREEMENT_MM = 1e-3;
const SINGLE_AGREEMENT = 1e-5;

/** One answer of another library that differs from the kernel's, and what a third library says. */
export interface Disagreement {
  readonly pair: number;
  readonly kind: PairClass;
  readonly library: string;
  readonly kernel: number;
  readonly theirs: number | undefined;
  readonly thirdLibrary: string;
  readonly third: number | undefined;
  /** Whether the third library sides with the kernel. */
  readonly settled: boolean;
}

export interface ClassReport {
  apart: number;
  touching: number;
  overlapping: number;
  worstGap: number;
  worstDepth: number;
  worstVolume: number;
}

export interface OracleReport {
  readonly seed: number;
  readonly count: number;
  readonly classes: Readonly<Record<PairClass, ClassReport>>;
  /** Answers of the exact libraries further off than `EXACT_AGREEMENT`. */
  readonly exact: readonly Disagreement[];
  /** Answers of rapier further off than single precision explains. */
  readonly rapier: readonly Disagreement[];
  /** Wrong signs of three's OBB, touching pairs left out (it counts touching as overlap). */
  readonly threeSigns: number;
}

interface Oracles {
  readonly manifold: ManifoldOracle;
  readonly rapier: RapierOracle;
}

/** Asks every library about `count` seeded pairs. */
export async function examinePairs(seed: number, count: number): Promise<OracleReport> {
  const oracles: Oracles = { manifold: await loadManifold(), rapier: await loadRapier() };
  const random = seededRandom(seed);
  const classes = {
    generic: newClass(),
    'axis-aligned': newClass(),
    mixed: newClass(),
    touching: newClass(),
  };
  const exact: Disagreement[] = [];
  const single: Disagreement[] = [];
  let threeSigns = 0;
  for (let n = 0; n < count; n++) {
    const pair = randomPair(random, n);
    const kernel = separateBoxes(pair.a, pair.b).distance;
    const exactLength = kernel < 0 ? cannonDepth(pair.a, pair.b) : oracles.manifold.gap(pair.a, pair.b);
    exact.push(...compareExact(n, pair, kernel, exactLength, classes[pair.kind], oracles.manifold));
    single.push(...compareRapier(n, pair, kernel, exactLength, oracles.rapier));
    if (kernel !== 0 && threeOverlaps(pair.a, pair.b) !== kernel < 0) threeSigns++;
  }
  return { seed, count, classes, exact, rapier: single, threeSigns };
}

function newClass(): ClassReport {
  return { apart: 0, touching: 0, overlapping: 0, worstGap: 0, worstDepth: 0, worstVolume: 0 };
}

/** Gap by manifold-3d, depth by cannon-es, overlap volume by manifold-3d. */
function compareExact(
  n: number,
  pair: BoxPair,
  kernel: number,
  theirs: number | undefined,
  report: ClassReport,
  manifold: ManifoldOracle,
): Disagreement[] {
  const volume = overlapVolume(pair.a, pair.b);
  const theirVolume = manifold.volume(pair.a, pair.b);
  const volumeError = relativeError(volume, theirVolume);
  const size = Math.abs(kernel);
  // A touching pair has a gap of anything up to the contact tolerance, which the kernel reports as 0.
  const length = kernel === 0 && theirs !== undefined && theirs <= CONTACT_TOLERANCE_MM ? 0 : theirs;
  const lengthError = length === undefined ? Infinity : relativeError(size, length);
  report.worstVolume = Math.max(report.worstVolume, volumeError);
  if (kernel > 0) report.apart++;
  else if (kernel < 0) report.overlapping++;
  else report.touching++;
  if (kernel < 0) report.worstDepth = Math.max(report.worstDepth, lengthError);
  else report.worstGap = Math.max(report.worstGap, lengthError);
  const found: Disagreement[] = [];
  const base = { pair: n, kind: pair.kind, thirdLibrary: 'none', third: undefined, settled: false };
  if (lengthError > EXACT_AGREEMENT) {
    found.push({ ...base, library: kernel < 0 ? 'cannon-es' : 'manifold-3d gap', kernel, theirs });
  }
  if (volumeError > EXACT_AGREEMENT) {
    found.push({ ...base, library: 'manifold-3d volume', kernel: volume, theirs: theirVolume });
  }
  return found;
}

/** Rapier's signed distance; where it differs, the exact library for that question is the third opinion. */
function compareRapier(
  n: number,
  pair: BoxPair,
  kernel: number,
  exactLength: number | undefined,
  rapier: RapierOracle,
): Disagreement[] {
  const theirs = rapier(pair.a, pair.b);
  const allowed = SINGLE_AGREEMENT_MM + SINGLE_AGREEMENT * Math.abs(kernel);
  if (theirs !== undefined && Math.abs(theirs - kernel) <= allowed) return [];
  const settled =
    exactLength !== undefined &&
    (relativeError(Math.abs(kernel), exactLength) <= EXACT_AGREEMENT ||
      (kernel === 0 && exactLength <= CONTACT_TOLERANCE_MM));
  const third = exactLength === undefined ? undefined : kernel < 0 ? -exactLength : exactLength;
  const thirdLibrary = kernel < 0 ? 'cannon-es' : 'manifold-3d';
  return [{ pair: n, kind: pair.kind, library: 'rapier', kernel, theirs, thirdLibrary, third, settled }];
}

function relativeError(kernel: number, theirs: number): number {
  return Math.abs(kernel - theirs) / Math.max(1, Math.abs(kernel));
}
