/**
 * A part held by the pointer, from the shelf or from its place. One object for the whole drag: it remembers where the
 * part was taken, shows where it would go, and ends exactly once, by dropping or by letting go without a trace.
 */
import {
  add,
  compose,
  type PartModel,
  type PartSpec,
  type Plan,
  type RigidTransform,
  subtract,
  transformPoint,
  type Vector3,
} from '../../../geometry';
import { commitPreview, planStore, previewPlan } from '../../store/plan-store';
import { millimetresPerPixel, type Pixel, projectPoint, rayThrough } from '../camera/sight';
import type { ViewportSession } from '../viewport-session';
import { axisPlane, facingPlane, meetPlane, roundOnPlane, stepFor } from './drag-plane';
import { frameAt, type MountOption, solidBounds } from './mount-options';
import { nearestPlace } from './nearest-place';

export interface HeldPart {
  readonly spec: PartSpec;
  readonly model: PartModel;
  /** Where the part stands when it is taken up. */
  readonly pose: RigidTransform;
  readonly options: readonly MountOption[];
  /** Key of the mount it sits on now; choosing that changes nothing. */
  readonly home?: string;
  /** Farther than this from any mount the part stays where it was, CSS pixels. */
  readonly reach: number;
  /** The plan with the part on a mount, or standing free. */
  readonly seated: (option: MountOption) => Plan;
  readonly free: (pose: RigidTransform) => Plan;
}

export class PartInHand {
  private readonly session: ViewportSession;
  private readonly part: HeldPart;
  private readonly grabbed: Vector3;
  private readonly middle: Vector3;
  private readonly places: readonly MountOption['frame'][number][];
  private chosen: string | undefined;
  private chosenFrame: MountOption['frame'] = [];
  private over = false;
  private readonly forgetPlan: () => void;

  /** `grabbed` is the point of the part under the pointer, in the world. */
  constructor(session: ViewportSession, part: HeldPart, grabbed: Vector3) {
    this.session = session;
    this.part = part;
    this.grabbed = grabbed;
    this.middle = transformPoint(part.pose, solidBounds(part.model).centre);
    this.chosen = part.home;
    this.places = part.options.flatMap((option) => option.frame);
    // What is held was taken from this plan; when another step is undone meanwhile, the drag has lost its ground.
    const { plan } = planStore.getState();
    this.forgetPlan = planStore.subscribe((state) => {
      if (state.plan !== plan) this.cancel();
    });
  }

  /** Follows the pointer; previews only when the place under it changes. */
  moveTo(pixel: Pixel, free: boolean): void {
    if (this.over) return;
    const { sight, screen } = this.session;
    const ray = rayThrough(sight, screen, pixel);
    const at = meetPlane(ray, facingPlane(sight, this.grabbed));
    if (!at) return;
    const pose = shifted(this.part.pose, subtract(at, this.grabbed));
    const shown = free ? this.placeFree(pixel) : this.seat(subtract(at, this.grabbed));
    this.session.showGhosts({
      model: this.part.model,
      spec: this.part.spec,
      pose: shown ?? pose,
      places: free ? noFrame : this.places,
      chosen: this.chosenFrame,
    });
  }

  drop(): void {
    if (this.over) return;
    this.end();
    commitPreview();
  }

  cancel(): void {
    if (this.over) return;
    this.end();
    previewPlan(undefined);
  }

  private end(): void {
    this.over = true;
    this.forgetPlan();
    this.session.showGhosts(undefined);
  }

  /** Chooses the mount nearest to where the hand holds the part's middle. */
  private seat(shift: Vector3): undefined {
    const { sight, screen } = this.session;
    const middle = projectPoint(sight, screen, add(this.middle, shift));
    const places = this.part.options.map((option) => {
      const { at, visible } = projectPoint(sight, screen, option.middle);
      return { key: option.key, at: visible ? at : undefined, option };
    });
    const { option } = nearestPlace(places, middle.at, this.part.reach, this.chosen) ?? {};
    const key = option?.key ?? this.part.home;
    if (key === this.chosen) return;
    this.chosen = key;
    this.chosenFrame = option?.frame ?? noFrame;
    previewPlan(option && key !== this.part.home ? this.part.seated(option) : undefined);
  }

  /** Stands the part in space, on the world plane that faces the eye. */
  private placeFree(pixel: Pixel): RigidTransform | undefined {
    const { sight, screen } = this.session;
    const plane = axisPlane(sight, this.grabbed);
    const at = meetPlane(rayThrough(sight, screen, pixel), plane);
    if (!at) return undefined;
    const moved = shifted(this.part.pose, subtract(at, this.grabbed));
    const step = stepFor(millimetresPerPixel(sight, screen));
    const pose = { ...moved, translation: roundOnPlane(moved.translation, plane, step) };
    const key = `free ${pose.translation.join(' ')}`;
    if (key !== this.chosen) {
      this.chosen = key;
      this.chosenFrame = frameAt(this.part.model, pose);
      previewPlan(this.part.free(pose));
    }
    return pose;
  }
}

const noFrame: MountOption['frame'] = [];

function shifted(pose: RigidTransform, by: Vector3): RigidTransform {
  return compose({ rotation: [1, 0, 0, 0, 1, 0, 0, 0, 1], translation: by }, pose);
}
