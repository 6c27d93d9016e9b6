/** The screws that hold each unit: where their heads are, which way the driver comes, what drives them. */

import { outlineOf } from '../../../parts/board/outline';
import type { CoolerSpec } from '../../../parts/cooler/spec';
import { layOutTower } from '../../../parts/cooler/tower-layout';
import { nominal, nominalOr } from '../../../parts/dimension';
import type { SocketPattern } from '../../../parts/patterns';
import type { PlacedPart, Scene } from '../../../plan/scene';
import { axisOfRotation } from '../../../space/rotation';
import { transformPoint } from '../../../space/transform';
import { add, negate, scale, type Vector3 } from '../../../space/vector';
import { type ScrewUse, sinkScrewInset } from '../../../standards/assembly-screws';
import { bracketPlateY, bracketSizes } from '../../../standards/card-bracket';
import { coolerFoot } from '../../../standards/cooler-proportions';
import { slotPitch } from '../../../standards/expansion-slots';
import type { DriverName } from '../../../standards/hand-and-tools';
import { m2Module } from '../../../standards/m2-modules';
import { heldHoles, seatOf } from './seat-frame';
import type { AssemblyUnit } from './unit';

/** One screw. */
export interface Fastener {
  readonly name: string;
  readonly use: ScrewUse;
  /** Where the head sits, in the world, mm. */
  readonly at: Vector3;
  /** From the head to the hand. */
  readonly axis: Vector3;
  readonly drivers: readonly DriverName[];
}

const usual: readonly DriverName[] = ['usual', 'long'];
const small: readonly DriverName[] = ['precision'];

export function fastenersOf(scene: Scene, unit: AssemblyUnit): readonly Fastener[] {
  const part = scene.parts[unit.part];
  if (!part) return [];
  switch (unit.kind) {
    case 'M.2 sink':
      return sinkScrews(scene, unit, part);
    case 'cooler':
      return part.spec.kind === 'cooler' ? coolerScrews(scene, part, part.spec) : [];
    case 'card':
      return cardScrews(part);
    case 'drive':
      return part.spec.kind === 'drive' && part.spec.form === 'M.2'
        ? [m2Screw(part, part.spec.length)]
        : seatScrews(
            scene,
            part,
            part.spec.kind === 'drive' && part.spec.form === '3.5' ? 'drive 3.5' : 'drive 2.5',
          );
    case 'board':
      return boardScrews(scene, part);
    case 'supply':
      return seatScrews(scene, part, 'supply');
    case 'adapter':
      return part.spec.kind === 'adapter' && part.spec.form === 'supply plate'
        ? seatScrews(scene, part, 'supply plate')
        : [];
    case 'fan':
      return seatScrews(scene, part, 'fan');
    case 'radiator':
      return seatScrews(scene, part, 'radiator');
    default:
      return [];
  }
}

/** Screws from the far side of the carrier's sheet: the head lies on the seat's plane as seen from outside. */
function seatScrews(scene: Scene, part: PlacedPart, use: ScrewUse): Fastener[] {
  const seat = seatOf(scene, part);
  if (!seat) return [];
  const axis = negate(seat.away);
  return heldHoles(part, seat).map((at, k) => ({ name: `screw ${k + 1}`, use, at, axis, drivers: usual }));
}

function boardScrews(scene: Scene, part: PlacedPart): Fastener[] {
  const seat = seatOf(scene, part);
  if (!seat || part.spec.kind !== 'board') return [];
  const { thickness } = outlineOf(part.spec);
  return heldHoles(part, seat).map((hole, k) => ({
    name: `screw ${k + 1}`,
    use: 'board',
    at: add(hole, scale(seat.away, thickness)),
    axis: seat.away,
    drivers: usual,
  }));
}

function m2Screw(part: PlacedPart, length: number): Fastener {
  const at = transformPoint(part.pose, [length, 0, m2Module.boardThickness.value]);
  return {
    name: 'its screw',
    use: 'M.2 drive',
    at,
    axis: axisOfRotation(part.pose.rotation, 'z'),
    drivers: small,
  };
}

function sinkScrews(scene: Scene, unit: AssemblyUnit, part: PlacedPart): Fastener[] {
  const box = unit.boxes[0] === undefined ? undefined : scene.boxes[unit.boxes[0]]?.box;
  if (!box) return [];
  const longest = box.half.indexOf(Math.max(...box.half));
  const up = axisOfRotation(part.pose.rotation, 'z');
  const along = axisOfRotation(box.rotation, longest === 0 ? 'x' : longest === 1 ? 'y' : 'z');
  const thick = Math.min(...box.half);
  const inset = (box.half[longest as 0 | 1 | 2] ?? 0) - sinkScrewInset.value;
  return [1, -1].map((sense, k) => ({
    name: `screw ${k + 1}`,
    use: 'M.2 sink',
    at: add(add(box.centre, scale(along, sense * inset)), scale(up, thick)),
    axis: up,
    drivers: small,
  }));
}

/** One screw in the wing of each slot the bracket spans. */
function cardScrews(part: PlacedPart): Fastener[] {
  if (part.spec.kind !== 'card') return [];
  const wing = part.model.boxes.find((body) => body.name === 'bracket wing')?.box;
  if (!wing) return [];
  const sheet = bracketPlateY.cardSideFace.value - bracketPlateY.outerFace.value;
  const x = -sheet - bracketSizes.screwHoleToPlateOuterFace.value;
  const top = wing.centre[2] + wing.half[2];
  const first = wing.centre[1] + wing.half[1] - slotPitch.value / 2;
  const up = axisOfRotation(part.pose.rotation, 'z');
  return Array.from({ length: part.spec.bracketSlots }, (_, slot) => ({
    name: `bracket screw ${slot + 1}`,
    use: 'card bracket',
    at: transformPoint(part.pose, [x, first - slot * slotPitch.value, top]),
    axis: up,
    drivers: usual,
  }));
}

/** Half the spacing of a hole pattern along the air, which runs along y of the cooler; common practice. */
const HALF_PITCH: Readonly<Record<SocketPattern, readonly [number, number]>> = {
  'square-75': [37.5, 37.5],
  'square-78': [39, 39],
  'square-80': [40, 40],
  'rectangle-54x90': [45, 27],
};

function coolerScrews(scene: Scene, part: PlacedPart, spec: CoolerSpec): Fastener[] {
  const pattern = spec.patterns.find((candidate) => candidate === part.seat?.foot) ?? spec.patterns[0];
  if (!pattern) return [];
  const [hx, hy] = HALF_PITCH[pattern];
  const up = axisOfRotation(part.pose.rotation, 'z');
  const place = (points: readonly Vector3[], axis: Vector3): Fastener[] =>
    points.map((at, k) => ({
      name: `screw ${k + 1}`,
      use: 'cooler',
      at: transformPoint(part.pose, at),
      axis,
      drivers: usual,
    }));
  if (spec.style === 'tower') return place(towerScrews(spec, hy), up);
  const corners: Vector3[] = [
    [hx, hy, 0],
    [-hx, hy, 0],
    [-hx, -hy, 0],
    [hx, -hy, 0],
  ];
  // A pump block is screwed down from above; a low cooler, whose fins cover its holes, from behind the board.
  if (spec.style === 'liquid block')
    return place(
      corners.map(([x, y]) => [x, y, nominal(spec.height) / 2]),
      up,
    );
  return place(
    corners.map(([x, y]) => [x, y, -depthBelowLid(scene, part)]),
    negate(up),
  );
}

/**
 * The two screws of a tower's bar: before and behind the stack at the holes themselves, or, where fins stand over
 * them, between the two stacks beside the base.
 */
function towerScrews(spec: Extract<CoolerSpec, { style: 'tower' }>, hy: number): Vector3[] {
  const { stacks } = layOutTower(spec);
  const ox = spec.offset ? nominal(spec.offset[0]) : 0;
  const top = coolerFoot.baseHeight.value;
  const covered = [hy, -hy].some((y) => stacks.some((stack) => y > stack.y[0] && y < stack.y[1]));
  const [front, rear] = stacks;
  if (covered && front && rear) {
    const middle = (front.y[0] + rear.y[1]) / 2;
    const beside = coolerFoot.baseWidth.value / 2 + BESIDE_BASE_MM;
    return [
      [ox + beside, middle, top],
      [ox - beside, middle, top],
    ];
  }
  return [
    [0, hy, top],
    [0, -hy, top],
  ];
}

/** From the edge of the base to the middle of a screw beside it, mm; common practice. */
const BESIDE_BASE_MM = 8;

/** From the lid down to the far side of the board. */
function depthBelowLid(scene: Scene, part: PlacedPart): number {
  const board = scene.parts.find((candidate) => candidate.kind === 'board');
  if (board?.spec.kind !== 'board') return 0;
  const up = axisOfRotation(part.pose.rotation, 'z');
  const { translation: lid } = part.pose;
  const { translation: face } = board.pose;
  const above = up[0] * (lid[0] - face[0]) + up[1] * (lid[1] - face[1]) + up[2] * (lid[2] - face[2]);
  return above + nominalOr(board.spec.thickness, outlineOf(board.spec).thickness);
}
