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
export { interiorOf } from './parts/enclosure/layout';
export { type OuterSize, outerSizeOf } from './parts/enclosure/outer-size';
export type { EnclosureSpec } from './parts/enclosure/spec';
export type { PartKind, PartSpec } from './parts/part-spec';
export { partKinds, partSpecSchema } from './parts/part-spec';
export { describeIssues } from './plan/describe-issues';
export {
  addPart,
  adjustPart,
  freePart,
  movePart,
  placementAt,
  removePart,
  replacePart,
  suggestPlacement,
} from './plan/edit-plan';
export { carriedBy, findMounts, type MountCandidate } from './plan/find-mounts';
export { kindName, partLabels } from './plan/part-labels';
export { modelOf, placePlan } from './plan/place-plan';
export {
  type Brief,
  briefSchema,
  type FreePlacement,
  isSeated,
  PLAN_FORMAT,
  type Placement,
  type Plan,
  type PlanPart,
  planSchema,
  type SeatedPlacement,
} from './plan/plan-schema';
export {
  LARGEST_PLAN_TEXT,
  type Problem,
  type ReadResult,
  readPlan,
  readPlanValue,
  writePlan,
} from './plan/read-plan';
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
export {
  type Bounds,
  boundsOfBoxes,
  cornersOfBox,
  type FaceName,
  faceNormal,
  type OrientedBox,
} from './space/oriented-box';
export { overlapPolyhedron, type Polyhedron } from './space/overlap-polyhedron';
export { rotationAbout } from './space/rotation';
export { compose, invert, type RigidTransform, transformDirection, transformPoint } from './space/transform';
export {
  add,
  cross,
  dot,
  interpolate,
  length,
  normalise,
  scale,
  subtract,
  type Vector3,
} from './space/vector';
