/** The public face of the kernel: everything the app, the command line and the tests of the app may use. */

export type { Assumption, Topic } from './estimates/assumption';
export { type AssumptionId, type AssumptionValues, assumptions, middleValues } from './estimates/assumptions';
export { unitName, writeValue } from './estimates/banded';
export type { WishRow } from './estimates/brief/brief-wishes';
export { choiceOfConstants } from './estimates/choice-of-constants';
export { compareEstimates, type EstimateChange } from './estimates/compare-estimates';
export type {
  AssumptionEffect,
  Estimate,
  EstimateInput,
  EstimateUnit,
  Limit,
  Standing,
} from './estimates/estimate';
export {
  type EstimateOptions,
  estimatePlan,
  type PlanEstimates,
  type PowerDetail,
  type RunningDetail,
  type TopicEstimates,
} from './estimates/estimate-plan';
export { type CardDroop, cardDroops } from './estimates/mass/card-droop';
export { moneySum, validUntil } from './estimates/money/money-figures';
export { amountOf } from './estimates/money/wish-figures';
export type { EfficiencyCurve } from './estimates/power/efficiency-curve';
export { durationName } from './estimates/power/excursions';
export { caseFanShares, type Load, loads, type Profile } from './estimates/profile';
export type { AirArrow, AirPicture } from './estimates/running/air-picture';
export type { Breath } from './estimates/running/breathing';
export type { BreathingSpace } from './estimates/running/breathing-space';
export { type FanChange, fanChanges } from './estimates/running/fan-changes';
export type { FanPoint } from './estimates/running/fan-points';
export { fanSpeedFor, type SpeedAnswer, type SpeedPoint, speedSweep } from './estimates/running/fan-speed';
export { assumptionRanking, type Sensitivity, strongestAssumptions } from './estimates/sensitivity';
export type { SoundSource } from './estimates/sound/sources';
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
export { nominal, nominalOr } from './parts/dimension';
export {
  bodyPicture,
  type Eye,
  eyeAt,
  type PaintedFace,
  type PaperPoint,
} from './parts/drawing/body-picture';
export { type DrivenDimension, drivenPart, lengthPaths } from './parts/drawing/driven-dimensions';
export { type LineDrawing, lineDrawing, type PaperLine } from './parts/drawing/line-drawing';
export { inView, type PartView, rangeAlong, type SignedAxis, viewsOf } from './parts/drawing/views';
export type { OuterSize } from './parts/enclosure/outer-size';
export type { EnclosureSpec } from './parts/enclosure/spec';
export {
  type EnclosureFromLimits,
  enclosureFromLimits,
  type FoundFace,
} from './parts/enclosure-from-limits/from-limits';
export { type PublishedLimits, publishedLimitsSchema } from './parts/enclosure-from-limits/limits';
export type { PartKind, PartSpec } from './parts/part-spec';
export { partKinds, partSpecSchema } from './parts/part-spec';
export { withStatement } from './parts/stated-dimensions/change-dimension';
export { type StandingIn, valuesStandingIn } from './parts/stated-dimensions/standing-in';
export { dimensionsOf, type PartDimension } from './parts/stated-dimensions/stated-dimensions';
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
export { exchangePlaces } from './plan/exchange-places';
export { findMounts, type MountCandidate } from './plan/find-mounts';
export { kindName } from './plan/part-labels';
export { modelOf, placePlan } from './plan/place-plan';
export {
  type Brief,
  briefSchema,
  type FreePlacement,
  isSeated,
  type LeadWish,
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
export { factorOfUnit, fieldOfHeader } from './sheet-text/field-of-header';
export { guessKind } from './sheet-text/guess-kind';
export { type DecimalMark, decimalMarkOfCells, readNumberCell } from './sheet-text/number-cell';
export { readSheetText } from './sheet-text/read-sheet-text';
export type { ReadValue, SheetQuestion, SheetReading, TextSpan } from './sheet-text/reading';
export { type InsertionPath, pathOfUnit, poseOnPath } from './solver/assembly/insertion-path';
export { type LeadWaypoint, leadWaypoints } from './solver/assembly/leads/lead-waypoints';
export {
  type ChannelFill,
  type LeadOptions,
  type LeadPlan,
  type RoutedLead,
  routeLeads,
} from './solver/assembly/leads/route-leads';
export { buildMachine, type Machine, type MachineOptions } from './solver/assembly/machine/machine';
export type { AssemblyUnit, UnitKind } from './solver/assembly/machine/unit';
export {
  type AssemblyOrder,
  type AssemblyStep,
  type OrderOptions,
  orderOfMachine,
  type StepNeed,
} from './solver/assembly/order/assembly-order';
export type { KnotReport, NamedKnot } from './solver/assembly/order/knot-report';
export type { Reason } from './solver/assembly/order/reasons';
export { type ServiceEntry, serviceOfMachine } from './solver/assembly/order/service-order';
export {
  type AssemblySheet,
  type SheetOptions,
  type SheetStep,
  sheetOfOrder,
} from './solver/assembly/sheet/assembly-sheet';
export type { Change, FindingChange, MarginChange, ShelfPart } from './solver/change/change';
export { waysToChange } from './solver/change/ways-to-change';
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
export type { Limit as DimensionLimit, LimitStep } from './solver/limits/limit';
export { type MountEnvelope, upgradeEnvelope } from './solver/limits/upgrade-envelope';
export { createSolver, type Solver, solve } from './solver/solve';
export { type ChainLink, type DimensionChain, dimensionChain } from './solver/stack-up/dimension-chain';
export type { FaceStackUp, PointedFace } from './solver/stack-up/face-stack-up';
export { type Band, fitOfBand, type Kept } from './solver/stack-up/fit-verdict';
export type { Kink } from './solver/stack-up/kinks';
export { normalDensity } from './solver/stack-up/normal-distribution';
export type { StackUp, StackUpTerm } from './solver/stack-up/stack-up';
export { stackUpOf, stackUpsOf } from './solver/stack-up/stack-ups';
export { allWorthMeasuring, type Measurement, type WorthMeasuring } from './solver/stack-up/worth-measuring';
export { type WantedGapSetting, wantedGapSettings } from './solver/wanted-gap-settings';
export type { Motion, Slide, Turn } from './space/motion';
export {
  type Bounds,
  boundsOfBoxes,
  cornersOfBox,
  type FaceName,
  type OrientedBox,
  transformBox,
} from './space/oriented-box';
export { overlapPolyhedron, type Polyhedron } from './space/overlap-polyhedron';
export { rotationAbout } from './space/rotation';
export {
  compose,
  identityTransform,
  invert,
  type RigidTransform,
  transformDirection,
  transformPoint,
} from './space/transform';
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
