/** The stack-up between any two faces a person points at. */
import type { Plan } from '../../plan/plan-schema';
import { type FaceName, faceCentre, faceNormal } from '../../space/oriented-box';
import type { PackedBoxes } from '../../space/packed-boxes';
import { dot, subtract, type Vector3 } from '../../space/vector';
import type { FaceRef } from '../finding';
import { meets } from './changed-part';
import { makeLeg } from './clearance-legs';
import { combineTerms } from './combine';
import { variationsOf } from './discover';
import { leastOf, mostOf, wander } from './face-pairs';
import type { Band } from './fit-verdict';
import { legBodies } from './leg-bodies';
import { type PlanStudy, partAt, studyOf } from './plan-study';
import { type StackUpTerm, termsOf } from './stack-up';

/** A face of a box of a part. */
export type PointedFace = FaceRef & { readonly face: FaceName };

/** The distance from one face to another along the normal of the first, signed, mm. */
export interface FaceStackUp {
  readonly nominal: number;
  readonly terms: readonly StackUpTerm[];
  readonly worstCase: Band;
  readonly rss: number;
  readonly sigma: number;
}

/** Throws RangeError when a face is not in the plan, or both are of one part. */
export function stackUpBetween(plan: Plan, from: PointedFace, to: PointedFace): FaceStackUp {
  const study = studyOf(plan);
  const [first, second] = [locate(study, from), locate(study, to)];
  if (first.part === second.part) throw new RangeError('the two faces belong to one part');
  const leg = makeLeg(study, first.part, second.part, [first.box], [second.box]);
  const variations = variationsOf(study, [leg]);
  const bodies = legBodies(study, leg);
  const ends = (side: 'upper' | 'lower') =>
    variations.map((variation): PackedBoxes | undefined => {
      const wanted = leg.matters.get(variation.part);
      const change = variation[side];
      return wanted && meets(change, wanted) ? bodies.with(new Map([[variation.part, change]])) : undefined;
    });
  const normal = faceNormal(bodies.standing.boxAt(0), from.face);
  const gap = wander(
    { standing: bodies.standing, fromCount: 1, upper: ends('upper'), lower: ends('lower') },
    (packed) => distanceAlong(normal, packed, from.face, to.face),
  );
  const terms = termsOf(study, variations, gap);
  const { rss, sigma } = combineTerms(terms);
  return { nominal: gap.standing, terms, worstCase: [leastOf(gap), mostOf(gap)], rss, sigma };
}

function distanceAlong(normal: Vector3, packed: PackedBoxes, from: FaceName, to: FaceName): number {
  return dot(normal, subtract(faceCentre(packed.boxAt(1), to), faceCentre(packed.boxAt(0), from)));
}

function locate(study: PlanStudy, face: FaceRef): { part: number; box: number } {
  const part = study.scene.indexById.get(face.part);
  if (part === undefined) throw new RangeError(`the plan has no part ${face.part}`);
  const { placed } = partAt(study, part);
  const box = placed.model.boxes.findIndex(({ name }) => name === face.box);
  if (box < 0) throw new RangeError(`part ${face.part} has no box ${face.box}`);
  return { part, box: placed.firstBox + box };
}
