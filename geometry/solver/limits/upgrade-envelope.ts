/** The largest things that still go on every mount of a plan, filled or empty: what an upgrade may measure. */
import type { Mount } from '../../parts/body';
import type { PartKind } from '../../parts/part-spec';
import { addPart } from '../../plan/edit-plan';
import type { Plan } from '../../plan/plan-schema';
import type { PlacedPart } from '../../plan/scene';
import { type PlanStudy, studyOf } from '../stack-up/plan-study';
import { sizesOf } from './key-dimensions';
import { type Limit, limitIn } from './limit';
import { trialPart } from './trial-parts';

export interface MountEnvelope {
  /** Id of the part that offers the mount. */
  readonly on: string;
  readonly mount: string;
  /** 'Slot 2 (x16) on Board'. */
  readonly label: string;
  readonly kind: PartKind;
  /** Id of the part there now; absent for an empty mount. */
  readonly filledBy?: string;
  /** What stands in the way of anything at all on an empty mount. */
  readonly blockedBy?: string;
  /** One for each size that matters; each alone, the other sizes as they are, or small on an empty mount. */
  readonly limits: readonly Limit[];
}

/** In the order of the plan. Mounts for boards, processors and adapters are left out: forms, not sizes, decide there. */
export function upgradeEnvelope(plan: Plan): readonly MountEnvelope[] {
  const study = studyOf(plan);
  const guests = new Map(
    study.scene.parts.flatMap((part) => (part.seat ? [[`${part.seat.on}/${part.seat.mount}`, part]] : [])),
  );
  return study.scene.parts.flatMap((carrier) =>
    carrier.model.mounts.flatMap((mount) => {
      const guest = guests.get(`${carrier.id}/${mount.id}`);
      return (guest ? filled(study, carrier, mount, guest) : empty(study, carrier, mount)) ?? [];
    }),
  );
}

function filled(
  study: PlanStudy,
  carrier: PlacedPart,
  mount: Mount,
  guest: PlacedPart,
): MountEnvelope | undefined {
  const sizes = sizesOf(guest.spec);
  if (sizes.length === 0) return undefined;
  return {
    ...placeOf(carrier, mount),
    kind: guest.kind,
    filledBy: guest.id,
    limits: sizes.map((path) => limitIn(study, guest.id, path, 'largest')),
  };
}

function empty(around: PlanStudy, carrier: PlacedPart, mount: Mount): MountEnvelope | undefined {
  const spec = trialPart(mount);
  if (!spec) return undefined;
  const trial = addPart(around.plan, spec, { on: carrier.id, mount: mount.id });
  const study = around.studyOfOther(trial.plan);
  const limits = sizesOf(spec).map((path) => limitIn(study, trial.id, path, 'largest'));
  const blockedBy = obstructionOf(limits);
  return {
    ...placeOf(carrier, mount),
    kind: spec.kind,
    ...(blockedBy === undefined ? {} : { blockedBy }),
    limits: blockedBy === undefined ? limits : [],
  };
}

function placeOf(carrier: PlacedPart, mount: Mount): Pick<MountEnvelope, 'on' | 'mount' | 'label'> {
  return { on: carrier.id, mount: mount.id, label: `${mount.label} on ${carrier.label}` };
}

/** Less than this share of the smallest usual size is no size. */
const LEAST_SHARE = 0.5;

/** What keeps even the smallest usual thing out, whichever of its sizes shrinks. */
function obstructionOf(limits: readonly Limit[]): string | undefined {
  const inTheWay = limits.map(({ overlapsAnyway, neverClear, steps: [step], standing }) => {
    const fixed = overlapsAnyway ?? neverClear;
    if (fixed !== undefined) return fixed;
    return step && step.value < LEAST_SHARE * standing ? step.binds : undefined;
  });
  // A single size may be small and still say something: a slim fan.
  if (limits.length < 2 && limits.every((limit) => limit.steps.length > 0)) return undefined;
  return inTheWay.every((name) => name !== undefined) ? inTheWay[0] : undefined;
}
