/** The stack-up of a clearance: the dimensions behind it, each one's share, and what follows for the fit. */
import type { DimensionSource } from '../../parts/dimension';
import type { FaceRef, Fit } from '../finding';
import type { ClearanceBand } from './band';
import { combineTerms } from './combine';
import type { Discovery, LegPair, Variation } from './discover';
import type { Wandering } from './face-pairs';
import { type Band, fitOfBand, type Kept, keptInBand } from './fit-verdict';
import type { Kink } from './kinks';
import { probabilityBelow } from './normal-distribution';
import { facesOfPair } from './pair-faces';
import type { PlanStudy } from './plan-study';

/** One dimension of one part. */
export interface StackUpTerm {
  readonly part: string;
  /** 'Card', 'Memory 2'. */
  readonly partLabel: string;
  /** Dotted path into the part's spec. */
  readonly path: string;
  readonly title: string;
  readonly datum: string | undefined;
  readonly nominal: number;
  readonly plusMinus: number;
  readonly sigmas: 2 | 3;
  readonly source: DimensionSource;
  /** The band is the general tolerance for the source and size, not stated on the sheet. */
  readonly isDefault: boolean;
  /** False where the sheet is silent and a published value stands in. */
  readonly isStated: boolean;
  /** mm of gap for each mm of the dimension, by central difference over the band. */
  readonly sensitivity: number;
  /** mm of gap, plus or minus, when the dimension is at the end of its band. */
  readonly contribution: number;
  /** Of the variance, 0 to 1. */
  readonly share: number;
  /** Boxes of the part that the dimension moves or resizes, by name. */
  readonly boxes: readonly string[];
}

export interface StackUp {
  /** Id of the clearance. */
  readonly clearance: string;
  /** The faces that set it as things stand. */
  readonly faces: readonly [FaceRef, FaceRef];
  /** mm. */
  readonly nominal: number;
  readonly wanted: number;
  /** The largest share first. */
  readonly terms: readonly StackUpTerm[];
  readonly worstCase: Band;
  /** Half-width by root sum of squares of the stated bands, mm. */
  readonly rss: number;
  readonly sigma: number;
  /** Where another face may take over these two hold for the likelier face: at least so probable. */
  readonly probabilityOfContact: number;
  readonly probabilityBelowWanted: number;
  readonly kinked: boolean;
  readonly kinks: readonly Kink[];
  readonly fit: Fit;
  readonly wantedKept: Kept;
}

/** What of a face pair's gap each dimension moves, mm. */
export function termsOf(
  study: PlanStudy,
  variations: readonly Variation[],
  gap: Wandering,
): readonly StackUpTerm[] {
  const shares = variations.map((variation, index) => {
    const [up, down] = [gap.upper[index] ?? 0, gap.lower[index] ?? 0];
    const { plusMinus, sigmas } = variation.dimension;
    const contribution = Math.max(Math.abs(up), Math.abs(down));
    return { variation, sensitivity: (up - down) / (2 * plusMinus), contribution, sigmas };
  });
  const variance = shares.reduce((sum, { contribution, sigmas }) => sum + (contribution / sigmas) ** 2, 0);
  return shares
    .filter(({ contribution }) => contribution > NO_SHARE_MM)
    .sort((a, b) => b.contribution / b.sigmas - a.contribution / a.sigmas)
    .map(({ variation: { part, dimension, upper }, sensitivity, contribution, sigmas }) => {
      const placed = study.scene.parts[part];
      if (!placed) throw new RangeError(`the plan has no part number ${part}`);
      const { isPosition: _, ...facts } = dimension;
      return {
        part: placed.id,
        partLabel: placed.label,
        ...facts,
        sensitivity,
        contribution,
        share: (contribution / sigmas) ** 2 / variance,
        boxes: [...upper.boxes.keys()].map((box) => placed.model.boxes[box]?.name ?? ''),
      };
    });
}

/** Shares below this are roundoff, mm. */
const NO_SHARE_MM = 1e-9;

interface Named {
  readonly id: string;
  readonly wanted: number;
}

/** Puts together what was found. */
export function stackUpFrom(
  study: PlanStudy,
  { id, wanted }: Named,
  discovery: Discovery,
  { band, rivals }: ClearanceBand,
  kinks: readonly Kink[],
): StackUp {
  const { binding } = discovery;
  const terms = termsOf(study, discovery.variations, binding.gap);
  const { rss, sigma } = combineTerms(terms);
  const below = (limit: number): number =>
    Math.max(
      probabilityBelow(limit, binding.gap.standing, sigma),
      ...rivals.map((rival) => probabilityOfPair(discovery, rival, limit)),
    );
  return {
    clearance: id,
    faces: facesOfPair(study, binding),
    nominal: binding.gap.standing,
    wanted,
    terms,
    worstCase: band,
    rss,
    sigma,
    probabilityOfContact: below(0),
    probabilityBelowWanted: below(wanted),
    kinked: kinks.length > 0,
    kinks,
    fit: fitOfBand(band),
    wantedKept: keptInBand(band, wanted),
  };
}

function probabilityOfPair({ variations }: Discovery, pair: LegPair, limit: number): number {
  // Faces that only meet now and then would be counted too often.
  if (!pair.facesAlways) return 0;
  const { upper, lower, standing } = pair.gap;
  const terms = variations.map(({ dimension: { plusMinus, sigmas } }, index) => ({
    sensitivity: ((upper[index] ?? 0) - (lower[index] ?? 0)) / (2 * plusMinus),
    plusMinus,
    sigmas,
  }));
  return probabilityBelow(limit, standing, combineTerms(terms).sigma);
}
