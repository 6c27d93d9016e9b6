/** Conformance with the published component-height zones of a board. */
import type { BodyBox } from '../parts/body';
import type { Scene, SceneBox } from '../plan/scene';
import { type Bounds, boundsOfBox, type OrientedBox, transformBox } from '../space/oriented-box';
import { CONTACT_TOLERANCE_MM } from '../space/tolerance';
import { invert, type RigidTransform } from '../space/transform';
import type { ExaminedPart } from './examined-part';
import type { Finding } from './finding';
import { atStart, millimetresInWords, nameOfBox, within } from './part-names';

/**
 * The worst of what one part has to do with the zones of a board: a part mounted on the board that rises above its
 * zone, or a piece of the enclosure inside one. Undefined when it keeps all of them.
 */
export function zoneFinding(scene: Scene, board: ExaminedPart, other: ExaminedPart): Finding | undefined {
  const isEnclosure = other.placed.kind === 'enclosure';
  const mounted = other.chain.some((link) => link.carrier === board.index);
  // Cards, and risers in their place, stand in the zones by their own standard, which is another one.
  const isCard = other.placed.kind === 'card' || other.placed.kind === 'adapter';
  if (!isEnclosure && (!mounted || isCard)) return undefined;
  const toBoard = invert(board.placed.pose);
  const zones = zonesOf(board, isEnclosure ? isForChassis : isForComponents);
  if (zones.length === 0) return undefined;
  return isEnclosure
    ? obstruction(scene, board, other, zones, toBoard)
    : rise(scene, board, other, zones, toBoard);
}

/** A zone in the board's frame. */
interface Zone {
  readonly body: BodyBox;
  readonly bounds: Bounds;
}

function zonesOf(board: ExaminedPart, isWanted: (body: BodyBox) => boolean): readonly Zone[] {
  return board.placed.model.boxes
    .filter((body) => body.role === 'zone' && isWanted(body))
    .map((body) => ({ body, bounds: boundsOfBox(body.box) }));
}

function isForChassis(zone: BodyBox): boolean {
  return zone.name.includes('chassis') && !zone.name.includes('recommended');
}

function isForComponents(zone: BodyBox): boolean {
  return !zone.name.includes('chassis');
}

interface Worst {
  readonly zone: Zone;
  readonly solid: SceneBox;
  readonly by: number;
}

function worstOf(
  scene: Scene,
  other: ExaminedPart,
  zones: readonly Zone[],
  toBoard: RigidTransform,
  measure: (zone: Bounds, solid: Bounds) => number,
): Worst | undefined {
  let worst: Worst | undefined;
  for (const number of other.solids) {
    const solid = scene.boxes[number];
    if (!solid || solid.body.element === 'standoff') continue;
    const bounds = boundsIn(toBoard, solid.box);
    for (const zone of zones) {
      if (!sharesFootprint(zone.bounds, bounds)) continue;
      const by = measure(zone.bounds, bounds);
      if (by > CONTACT_TOLERANCE_MM && (worst === undefined || by > worst.by)) worst = { zone, solid, by };
    }
  }
  return worst;
}

function rise(
  scene: Scene,
  board: ExaminedPart,
  other: ExaminedPart,
  zones: readonly Zone[],
  toBoard: RigidTransform,
): Finding | undefined {
  const worst = worstOf(scene, other, zones, toBoard, (zone, solid) => solid.max[2] - zone.max[2]);
  if (!worst) return undefined;
  const subject = nameOfBox(other.placed.kind, other.name, worst.solid.body);
  const usual = other.placed.kind === 'cooler' ? ' Most tower coolers do.' : '';
  const limit = worst.zone.bounds.max[2];
  return {
    ...shared(board, other, worst),
    weight: 'note',
    sentence: `${atStart(subject)} rises ${millimetresInWords(worst.by)} above the ${limit.toFixed(1)} mm that the board’s form allows there.${usual}`,
    waysOut: [],
  };
}

function obstruction(
  scene: Scene,
  board: ExaminedPart,
  enclosure: ExaminedPart,
  zones: readonly Zone[],
  toBoard: RigidTransform,
): Finding | undefined {
  // What lies behind the component side (tray, standoffs, walls beside the board) is not above the zone.
  const worst = worstOf(scene, enclosure, zones, toBoard, (zone, solid) => {
    if (isUnder(zone)) return solid.min[2] < zone.max[2] ? solid.max[2] - zone.min[2] : 0;
    return solid.max[2] <= zone.min[2] + CONTACT_TOLERANCE_MM
      ? 0
      : zone.max[2] - Math.max(solid.min[2], zone.min[2]);
  });
  if (!worst) return undefined;
  const subject = nameOfBox(enclosure.placed.kind, enclosure.name, worst.solid.body);
  const side = isUnder(worst.zone.bounds) ? 'under' : 'above';
  return {
    ...shared(board, enclosure, worst),
    weight: 'caution',
    sentence: `${atStart(subject)} stands ${millimetresInWords(worst.by)} inside the height that an enclosure has to leave free ${side} ${within(board.name)}.`,
    waysOut: [],
  };
}

function shared(board: ExaminedPart, other: ExaminedPart, worst: Worst) {
  return {
    id: `zone/${board.placed.id}/${other.placed.id}`,
    kind: 'zone' as const,
    parts: [other.placed.id, board.placed.id],
    faces: [
      { part: other.placed.id, box: worst.solid.body.name },
      { part: board.placed.id, box: worst.zone.body.name },
    ],
    millimetres: -worst.by,
    overlaps: [],
  };
}

/** The clear space on the solder side is entered from below. */
function isUnder(zone: Bounds): boolean {
  return zone.max[2] <= CONTACT_TOLERANCE_MM;
}

function boundsIn(frame: RigidTransform, box: OrientedBox): Bounds {
  return boundsOfBox(transformBox(frame, box));
}

function sharesFootprint(a: Bounds, b: Bounds): boolean {
  return ([0, 1] as const).every(
    (axis) => Math.min(a.max[axis], b.max[axis]) - Math.max(a.min[axis], b.min[axis]) > CONTACT_TOLERANCE_MM,
  );
}
