/** Ways out of the seat that a mount suggests: what a builder would try first, in the order of liking. */
import type { PlacedPart, Scene } from '../../../plan/scene';
import { type Motion, turnAbout } from '../../../space/motion';
import { boundsOfBoxes, type OrientedBox } from '../../../space/oriented-box';
import { type AxisName, axisOfRotation } from '../../../space/rotation';
import { compose, type RigidTransform, transformPoint } from '../../../space/transform';
import { cross, dot, negate, scale, type Vector3 } from '../../../space/vector';
import { m2InsertionTiltDegrees } from '../../../standards/board-furniture';
import { bracketSizes } from '../../../standards/card-bracket';
import { m2Socket } from '../../../standards/m2-modules';
import { seatOf } from './seat-frame';
import type { AssemblyUnit } from './unit';

/** A way in words and motions. `cost` ranks it among the ways of its unit. */
export interface SuggestedWay {
  readonly words: string;
  readonly motions: readonly Motion[];
  readonly cost: number;
}

/** What suggestions are made from. */
export interface WayContext {
  readonly scene: Scene;
  /** Directions in which panels come off: hands and parts go in and out there. */
  readonly openings: readonly Vector3[];
  /** Travel along a direction that takes the unit clear of everything. */
  readonly clear: (unit: AssemblyUnit, direction: Vector3) => number;
}

const BOARD_TILTS: readonly number[] = [10, 20];
/** Lifts out of a slot before a card is moved sideways: past its fingers, past its bracket’s tongue. */
const CARD_LIFTS: readonly number[] = [14, 24, 40];
/** Play between the bracket and the rear wall it is moved past. */
const PAST_BRACKET_MM = 3;
const CARD_TILTS: readonly number[] = [5, 10, 20, 30];
/** Beyond what stands in the way of a plug: it is free and its lead is soft. */
const PLUG_CLEAR_MM = 2;

export function suggestedWays(context: WayContext, unit: AssemblyUnit): readonly SuggestedWay[] {
  const part = context.scene.parts[unit.part];
  if (!part) return [];
  const slide = (direction: Vector3): Motion => ({
    kind: 'slide',
    by: scale(direction, context.clear(unit, direction)),
  });
  switch (unit.kind) {
    case 'plug':
      return plugWays(unit);
    case 'panel':
    case 'slot cover':
      return panelWays(context, unit, part, slide);
    case 'M.2 sink':
      return [{ words: 'straight down onto the drive', motions: [slide(axis(part.pose, 'z'))], cost: 0 }];
    case 'cooler fan':
      return coolerFanWays(part, slide);
    case 'board':
      return boardWays(context, unit, part, slide);
    case 'card':
      return cardWays(unit, part, context, slide);
    case 'processor':
    case 'memory':
    case 'cooler':
      return straightWays(context.scene, part, unit.kind, slide);
    case 'drive':
      if (part.spec.kind === 'drive' && part.spec.form === 'M.2') return m2Ways(part, slide);
      return looseWays(context, unit, part, slide);
    default:
      return looseWays(context, unit, part, slide);
  }
}

type SlideOut = (direction: Vector3) => Motion;

function plugWays(unit: AssemblyUnit): SuggestedWay[] {
  const { plug } = unit;
  if (!plug) return [];
  return [
    {
      words: 'pushed home to the click',
      motions: [{ kind: 'slide', by: scale(plug.out, plug.depth + PLUG_CLEAR_MM) }],
      cost: 0,
    },
  ];
}

function panelWays(
  context: WayContext,
  unit: AssemblyUnit,
  part: PlacedPart,
  slide: SlideOut,
): SuggestedWay[] {
  const out = outwards(context.scene, unit, part);
  return [
    {
      words: unit.kind === 'panel' ? 'on from outside' : 'over the brackets from outside',
      motions: [slide(out)],
      cost: 0,
    },
  ];
}

/** The way a sheet of the enclosure comes off: across it, away from the middle of the enclosure. */
export function outwards(scene: Scene, unit: AssemblyUnit, part: PlacedPart): Vector3 {
  const boxes = unit.boxes.flatMap((box) => scene.boxes[box]?.box ?? []);
  const own = boundsOfBoxes(boxes);
  const all = boundsOfBoxes(
    part.model.boxes.map((_, k) => scene.boxes[part.firstBox + k]?.box).filter(isBox),
  );
  if (!own || !all) return [0, 0, 1];
  let thin: 0 | 1 | 2 = 0;
  for (const axis of [1, 2] as const)
    if (own.max[axis] - own.min[axis] < own.max[thin] - own.min[thin]) thin = axis;
  const sense = own.min[thin] + own.max[thin] > all.min[thin] + all.max[thin] ? 1 : -1;
  return thin === 0 ? [sense, 0, 0] : thin === 1 ? [0, sense, 0] : [0, 0, sense];
}

function isBox(box: OrientedBox | undefined): box is OrientedBox {
  return box !== undefined;
}

function axis(pose: RigidTransform, name: AxisName): Vector3 {
  return axisOfRotation(pose.rotation, name);
}

function straightWays(scene: Scene, part: PlacedPart, kind: string, slide: SlideOut): SuggestedWay[] {
  const seat = seatOf(scene, part);
  const up = seat?.away ?? axis(part.pose, 'z');
  const words =
    kind === 'memory'
      ? 'straight down, to the click of both clips'
      : kind === 'cooler'
        ? 'straight down onto the lid'
        : 'laid in without force';
  return [{ words, motions: [slide(up)], cost: 0 }];
}

function coolerFanWays(part: PlacedPart, slide: SlideOut): SuggestedWay[] {
  const up = axis(part.pose, 'z');
  const air = axis(part.pose, 'y');
  return [
    { words: 'clipped on from above', motions: [slide(up)], cost: 0 },
    { words: 'clipped on from the front', motions: [slide(air)], cost: 0.2 },
    { words: 'clipped on from the rear', motions: [slide(negate(air))], cost: 0.2 },
  ];
}

/** Straight onto its standoffs, or rear edge first under the aperture and then flat. */
function boardWays(
  context: WayContext,
  unit: AssemblyUnit,
  part: PlacedPart,
  slide: SlideOut,
): SuggestedWay[] {
  const up = axis(part.pose, 'z');
  const forward = axis(part.pose, 'y');
  const rear = Math.min(
    0,
    ...part.model.boxes.filter((b) => b.role === 'solid').map((b) => b.box.centre[1] - b.box.half[1]),
  );
  const under = Math.min(
    0,
    ...part.model.boxes.filter((b) => b.role === 'solid').map((b) => b.box.centre[2] - b.box.half[2]),
  );
  const edge = transformPoint(part.pose, [0, rear, under]);
  const turnAxis = cross(forward, up);
  const straight = slide(up);
  const ways: SuggestedWay[] = [{ words: 'straight down onto the standoffs', motions: [straight], cost: 0 }];
  for (const degrees of BOARD_TILTS) {
    ways.push({
      words: `rear edge first under the aperture, front raised by ${degrees} degrees, then flat`,
      motions: [{ kind: 'turn', point: edge, axis: turnAxis, degrees }, stretch(straight, context, unit)],
      cost: 0.1 + degrees / 100,
    });
  }
  ways.push({
    words: 'down in front of the aperture, then back into it',
    motions: [{ kind: 'slide', by: scale(forward, -rear + 2) }, straight],
    cost: 0.5,
  });
  return ways;
}

/** A slide made longer by what a tilted unit may reach further. */
function stretch(motion: Motion, context: WayContext, unit: AssemblyUnit): Motion {
  if (motion.kind !== 'slide') return motion;
  const boxes = unit.boxes.flatMap((box) => context.scene.boxes[box]?.box ?? []);
  const bounds = boundsOfBoxes(boxes);
  const reach = bounds ? Math.hypot(...[0, 1, 2].map((k) => (bounds.max[k] ?? 0) - (bounds.min[k] ?? 0))) : 0;
  const size = Math.sqrt(dot(motion.by, motion.by));
  return { kind: 'slide', by: scale(motion.by, (size + reach) / size) };
}

/** Straight down into the slot, or bracket first, hooked over its edge and turned down about it. */
function cardWays(
  unit: AssemblyUnit,
  part: PlacedPart,
  context: WayContext,
  slide: SlideOut,
): SuggestedWay[] {
  const up = axis(part.pose, 'z');
  const along = axis(part.pose, 'x');
  const straight = slide(up);
  const ways: SuggestedWay[] = [
    { words: 'straight down into the slot, to the click of its latch', motions: [straight], cost: 0 },
  ];
  const brackets = part.model.boxes.filter((body) => body.element === 'card bracket');
  const tip = Math.min(0, ...brackets.map((body) => body.box.centre[2] - body.box.half[2]));
  const edge = transformPoint(part.pose, [0, 0, tip]);
  for (const degrees of CARD_TILTS) {
    ways.push({
      words: `bracket hooked in first, the far end raised by ${degrees} degrees and turned down`,
      motions: [
        { kind: 'turn', point: edge, axis: cross(along, up), degrees },
        stretch(straight, context, unit),
      ],
      cost: 0.5 + degrees / 100,
    });
  }
  for (const lift of CARD_LIFTS) {
    for (const opening of context.openings) {
      if (Math.abs(dot(opening, up)) > 0.9) continue;
      ways.push({
        words: 'in beside the slot, back until the bracket is behind the rear wall, then home',
        motions: [
          { kind: 'slide', by: scale(up, lift) },
          { kind: 'slide', by: scale(along, bracketSizes.wingDepth.value + PAST_BRACKET_MM) },
          slide(opening),
        ],
        cost: 0.3 + lift / 200,
      });
    }
  }
  return ways;
}

/** Tilted into its socket and pressed flat: turned up about the socket, drawn out along its own length, then away. */
function m2Ways(part: PlacedPart, slide: SlideOut): SuggestedWay[] {
  const up = axis(part.pose, 'z');
  const along = axis(part.pose, 'x');
  const degrees = m2InsertionTiltDegrees.value;
  const hinge = transformPoint(part.pose, [0, 0, 0]);
  const turn: Motion = { kind: 'turn', point: hinge, axis: cross(along, up), degrees };
  const tilted = axis(compose(turnAbout(hinge, cross(along, up), degrees), part.pose), 'x');
  const pull: Motion = { kind: 'slide', by: scale(tilted, m2Socket.depth.value + 1) };
  return [
    {
      words: `tilted in at about ${degrees} degrees, then pressed flat`,
      motions: [turn, pull, slide(up)],
      cost: 0,
    },
  ];
}

/** Off its seat by a little or by more, then out through an opening; or straight out along its seat. */
function looseWays(
  context: WayContext,
  unit: AssemblyUnit,
  part: PlacedPart,
  slide: SlideOut,
): SuggestedWay[] {
  const seat = seatOf(context.scene, part);
  const away = seat?.away ?? axis(part.pose, 'z');
  const ways: SuggestedWay[] = [];
  for (const opening of context.openings)
    ways.push({ words: 'slid in through the opening onto its seat', motions: [slide(opening)], cost: 0 });
  for (const off of [5, 40]) {
    for (const opening of context.openings) {
      if (Math.abs(dot(opening, away)) > 0.9) continue;
      ways.push({
        words: `slid in ${off} mm off its seat, then onto it`,
        motions: [{ kind: 'slide', by: scale(away, off) }, slide(opening)],
        cost: 0.1 + off / 200,
      });
    }
  }
  ways.push({ words: 'straight onto its seat', motions: [slide(away)], cost: 0.05 });
  if (unit.kind === 'supply' || unit.kind === 'adapter')
    ways.push({ words: 'slid in from outside through its bay', motions: [slide(negate(away))], cost: 0.3 });
  return ways;
}
