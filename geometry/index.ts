/** The public face of the kernel: everything the app, the command line and the tests of the app may use. */

export type {
  Adjustment,
  AdjustmentValues,
  BodyBox,
  Element,
  Feature,
  Foot,
  Material,
  Mount,
  PartModel,
  Role,
} from './parts/body';
export type { Dimension, DimensionSource, FieldFacts, StatedDimension, Unit } from './parts/dimension';
export { nominal, nominalOr, sourceOf, withValue } from './parts/dimension';
export type { PartKind, PartSpec } from './parts/part-spec';
export { partKinds, partSpecSchema } from './parts/part-spec';
export { carriedBy, findMounts, type MountCandidate } from './plan/find-mounts';
export { kindName, partLabels } from './plan/part-labels';
export { modelOf, placePlan } from './plan/place-plan';
export {
  type Brief,
  isSeated,
  PLAN_FORMAT,
  type Placement,
  type Plan,
  type PlanPart,
  planSchema,
} from './plan/plan-schema';
export type { PlacedPart, PlacementProblem, Scene, SceneBox, Seat } from './plan/scene';
export type {
  Clearance,
  Direction,
  FaceRef,
  Finding,
  FindingKind,
  Fit,
  Neighbour,
  Solution,
  Verdict,
  Weight,
} from './solver/finding';
export { createSolver, type Solver, solve } from './solver/solve';
export type { FaceName, OrientedBox } from './space/oriented-box';
export type { RigidTransform } from './space/transform';
export type { Vector3 } from './space/vector';
