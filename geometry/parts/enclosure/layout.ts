/** The inside of an enclosure and where a board stands in it, in the enclosure frame (`fields.ts`), mm. */

import type { Bounds } from '../../space/oriented-box';
import {
  multiplyRotations,
  type Rotation,
  rotationFromAxes,
  rotationFromDegrees,
} from '../../space/rotation';
import { compose, type RigidTransform, translationBy } from '../../space/transform';
import type { Vector3 } from '../../space/vector';
import { enclosureSheets } from '../../standards/assembly-practice';
import { boardSheet } from '../../standards/board-form-factors';
import { rearAperture, rearApertureBox, rearPanelInnerFaceY } from '../../standards/rear-aperture';
import type { Element } from '../body';
import { nominal, nominalOr } from '../dimension';
import type { EnclosureSpec } from './fields';

export type WallName = 'rear' | 'front' | 'top' | 'floor' | 'side' | 'back';

/** What each wall is called in findings. */
export const wallElements: Readonly<Record<WallName, Element>> = {
  rear: 'rear wall',
  front: 'front wall',
  top: 'top wall',
  floor: 'floor',
  side: 'side panel',
  back: 'back panel',
};

/** The sheet the board stands on: its mounting face lies across `axis` at `at`, components on the side of `sense`. */
export interface TrayPlane {
  readonly axis: 0 | 1 | 2;
  readonly sense: 1 | -1;
  readonly at: number;
  readonly thickness: number;
}

export interface EnclosureLayout {
  /** Everything between the inner faces of the six walls, the tray included. */
  readonly interior: Bounds;
  readonly thickness: Readonly<Record<WallName, number>>;
  readonly tray: TrayPlane;
  /** Board mount: origin at the standoff tip under the rear top corner, axes of the board. */
  readonly boardMount: RigidTransform;
  /** Frame of a board of standard thickness standing there (origin on its component side). */
  readonly board: RigidTransform;
}

/** An upright board: down is board x, forward is board y, towards the side panel is board z. */
const uprightBoard: Rotation = rotationFromAxes([0, -1, 0], [1, 0, 0], [0, 0, 1]);

/**
 * Least room above an upright board when the sheet is silent: the aperture reaches past the board's top edge, and a
 * ring round it stays free (microATX 1.2, figure 4 note).
 */
export const DEFAULT_FROM_TOP_MM = rearAperture.keepOutRing.value - rearApertureBox.value.x[0];

/** Where the board's own directions point when the enclosure turns it. */
export function boardRotation(spec: EnclosureSpec): Rotation {
  return multiplyRotations(rotationFromDegrees(spec.board.rotate ?? [0, 0, 0]), uprightBoard);
}

export function layoutOf(spec: EnclosureSpec): EnclosureLayout {
  const inside = spec.interior;
  const trayThickness = nominalOr(spec.tray?.thickness, enclosureSheets.structuralPlate.value);
  const interior: Bounds = {
    min: [0, 0, -trayThickness - nominal(inside.behindTray)],
    max: [nominal(inside.length), nominal(inside.height), nominal(inside.trayToSide)],
  };
  const rotation = boardRotation(spec);
  const corner = boardCorner(spec);
  const normal: Vector3 = [rotation[2], rotation[5], rotation[8]];
  const axis = dominantAxis(normal);
  const standoff = nominal(spec.board.standoff);
  const boardMount = compose({ rotation, translation: corner }, translationBy([0, 0, standoff]));
  return {
    interior,
    thickness: wallThicknesses(spec),
    tray: { axis, sense: normal[axis] > 0 ? 1 : -1, at: corner[axis], thickness: trayThickness },
    boardMount,
    board: compose(boardMount, translationBy([0, 0, boardSheet.thickness.value])),
  };
}

/** The rear top corner of a board, laid down on the tray face. */
export function boardCorner(spec: EnclosureSpec): Vector3 {
  const { corner, fromTop, fromRear } = spec.board;
  if (corner) return [nominal(corner[0]), nominal(corner[1]), nominal(corner[2])];
  const down = nominalOr(fromTop, DEFAULT_FROM_TOP_MM);
  return [nominalOr(fromRear, -rearPanelInnerFaceY.value), nominal(spec.interior.height) - down, 0];
}

/** Inner faces of the six walls: the space that parts share with the tray. */
export function interiorOf(spec: EnclosureSpec): Bounds {
  return layoutOf(spec).interior;
}

export function dominantAxis(v: Vector3): 0 | 1 | 2 {
  const [x, y, z] = [Math.abs(v[0]), Math.abs(v[1]), Math.abs(v[2])];
  if (x >= y && x >= z) return 0;
  return y >= z ? 1 : 2;
}

function wallThicknesses(spec: EnclosureSpec): Record<WallName, number> {
  const sheet = nominalOr(spec.walls?.sheet, enclosureSheets.structuralPlate.value);
  const of = (wall: WallName) => nominalOr(spec.walls?.[wall]?.thickness, sheet);
  return {
    rear: of('rear'),
    front: of('front'),
    top: of('top'),
    floor: of('floor'),
    side: of('side'),
    back: of('back'),
  };
}
