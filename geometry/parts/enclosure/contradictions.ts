/** Dimensions of an enclosure that cannot all be true. Each message names the fields with their values. */

import { type Bounds, boundsOfBox, boxFromCorners, transformBox } from '../../space/oriented-box';
import { transformPoint } from '../../space/transform';
import type { Vector3 } from '../../space/vector';
import { boardSheet } from '../../standards/board-form-factors';
import { rearApertureBox } from '../../standards/rear-aperture';
import { supplyForms } from '../../standards/supply-forms';
import type { Contradiction } from '../contradiction';
import { nominal } from '../dimension';
import { type Axis, axesAcross, facePlaneOf, seatFrame } from './faces';
import type { EnclosureSpec } from './fields';
import { furnishingContradictions } from './furnishing-contradictions';
import { boardCorner, type EnclosureLayout, layoutOf } from './layout';
import { slotRowsOf } from './openings';
import { holeLetter, standoffPoints } from './seats';

type Spec = EnclosureSpec;

export function enclosureContradictions(spec: Spec): readonly Contradiction[] {
  const turned = boardTurnContradictions(spec);
  // Everything below needs a board place whose axes lie along the walls.
  if (turned.length > 0) return turned;
  const layout = layoutOf(spec);
  return [
    ...letterContradictions(spec),
    ...boardPlaceContradictions(spec, layout),
    ...slotContradictions(spec, layout),
    ...seatContradictions(spec, layout),
    ...furnishingContradictions(spec, layout),
    ...repeatedIds(spec),
  ];
}

const axisNames = ['x', 'y', 'z'] as const;
const ROUND_OFF_MM = 1e-6;

function boardTurnContradictions({ board }: Spec): Contradiction[] {
  const turn = board.rotate;
  const found: Contradiction[] = [];
  if (turn?.some((degrees) => !Number.isFinite(degrees) || degrees % 90 !== 0)) {
    const message = `"Board turned by" (${turn.join(', ')}) must be whole quarters of a turn: the walls stand square`;
    found.push({ path: ['board', 'rotate'], message });
  }
  if (board.corner && board.fromTop !== undefined) {
    const message =
      '"Rear top corner" and "Top wall to the board edge" both say where the board stands: give one';
    found.push({ path: ['board', 'fromTop'], message });
  }
  if (turn?.some((degrees) => degrees % 360 !== 0) && !board.corner) {
    const message =
      '"Board turned by" needs "Rear top corner": a turned board has no upper edge to measure from';
    found.push({ path: ['board', 'corner'], message });
  }
  return found;
}

function letterContradictions({ board }: Spec): Contradiction[] {
  const letters = [...board.holes];
  const unknown = letters.filter((letter) => holeLetter(letter) === undefined);
  const twice = letters.filter((letter, i) => letters.indexOf(letter) !== i);
  const found: Contradiction[] = [];
  const path = ['board', 'holes'];
  if (unknown.length > 0) {
    const message = `"Standoffs by letter" names ${unknown.join(', ')}: no board form has such a hole`;
    found.push({ path, message });
  }
  if (twice.length > 0) {
    found.push({ path, message: `"Standoffs by letter" names ${twice.join(', ')} more than once` });
  }
  return found;
}

function boardPlaceContradictions(spec: Spec, layout: EnclosureLayout): Contradiction[] {
  const path = spec.board.corner ? ['board', 'corner'] : ['board', 'fromTop'];
  const field = spec.board.corner ? '"Rear top corner"' : '"Top wall to the board edge"';
  const found: Contradiction[] = [];
  const corner = boardCorner(spec);
  if (layout.tray.axis === 2 && layout.tray.sense === 1 && Math.abs(corner[2]) > ROUND_OFF_MM) {
    const message = `"Rear top corner" (z ${corner[2]}) must be 0: "Tray to side panel" is measured from the face the board stands on`;
    found.push({ path, message });
  }
  const outside = standoffPoints(spec).filter(({ at: [x, y] }) => {
    const foot: Vector3 = [x, y, -nominal(spec.board.standoff)];
    return !holds(layout.interior, transformPoint(layout.boardMount, foot));
  });
  if (outside.length > 0) {
    const letters = outside.map((point) => point.id).join(', ');
    const message = `${field} puts standoff ${letters} outside "Interior" (${sizeOf(layout.interior)} mm)`;
    found.push({ path, message });
  }
  if (!apertureFits(layout)) {
    const message = `${field} puts the rear aperture (${(-rearApertureBox.value.x[0]).toFixed(2)} mm past the board's top edge) beyond "Interior" (${sizeOf(layout.interior)} mm)`;
    found.push({ path, message });
  }
  const upper = transformPoint(layout.boardMount, [0, 0, boardSheet.thickness.value]);
  if (!holds(layout.interior, upper)) {
    const message = `"Standoff height" (${nominal(spec.board.standoff)} mm) puts the board outside "Interior" (${sizeOf(layout.interior)} mm)`;
    found.push({ path: ['board', 'standoff'], message });
  }
  return found;
}

/** The aperture lies in a wall: what sticks out of the interior along the wall could not be cut. */
function apertureFits(layout: EnclosureLayout): boolean {
  const { x, y, z } = rearApertureBox.value;
  const flat = boundsOfBox(
    transformBox(layout.board, boxFromCorners([x[0], y[0], z[0]], [x[1], y[1], z[1]])),
  );
  const across = ([0, 1, 2] as const).filter((axis) => flat.max[axis] - flat.min[axis] > ROUND_OFF_MM);
  return across.every((axis) => within(flat, layout.interior, axis));
}

/** Openings of slots must lie in the wall they are cut from. */
function slotContradictions(spec: Spec, layout: EnclosureLayout): Contradiction[] {
  const found: Contradiction[] = [];
  const rows = slotRowsOf(spec, layout);
  const rowOf = (rowName: string) => rows.find(({ name }) => name === rowName);
  const tooFar = (slots: number, rowName: string): boolean => {
    const last = rowOf(rowName)?.frames[slots - 1];
    return last !== undefined && !holds(layout.interior, last.translation);
  };
  const board = rowOf('slot cover')?.brackets;
  if (board && board.wing > board.reach) {
    const message = `"Slot openings" (${spec.board.slots}) need ${board.wing.toFixed(2)} mm above the seat of a card for the lowest bracket; "Tray to side panel" and "Standoff height" leave ${board.reach.toFixed(2)} mm`;
    found.push({ path: ['board', 'slots'], message });
  }
  if (tooFar(spec.board.slots, 'slot cover')) {
    const message = `"Slot openings" (${spec.board.slots}) reach beyond "Interior" (${sizeOf(layout.interior)} mm)`;
    found.push({ path: ['board', 'slots'], message });
  }
  if (spec.riser && tooFar(spec.riser.slots, 'riser slot cover')) {
    const message = `"Riser socket" with ${spec.riser.slots} slots reaches beyond "Interior" (${sizeOf(layout.interior)} mm)`;
    found.push({ path: ['riser', 'slots'], message });
  }
  return found;
}

/** The face of a supply and the frame of a fan must lie on the wall they are screwed to. */
function seatContradictions(spec: Spec, layout: EnclosureLayout): Contradiction[] {
  const check = (
    list: 'supplyBays' | 'fanSeats',
    index: number,
    title: string,
    half: readonly [number, number],
  ): Contradiction[] => {
    const place = spec[list]?.[index];
    if (!place) return [];
    const plane = facePlaneOf(layout, place.face);
    const area = boundsOfBox(
      transformBox(seatFrame(layout, place), boxFromCorners([-half[0], -half[1], 0], [half[0], half[1], 0])),
    );
    if (axesAcross(plane.axis).every((axis) => within(area, layout.interior, axis))) return [];
    const message = `"${title}" ${place.id} (${place.at.map(nominal).join(', ')} on ${place.face}) reaches beyond "Interior" (${sizeOf(layout.interior)} mm)`;
    return [{ path: [list, index, 'at'], message }];
  };
  return [
    ...spec.supplyBays.flatMap((bay, i) => {
      const { width, height } = supplyForms[bay.form];
      return check('supplyBays', i, 'Supply bays', [height.value / 2, width.value / 2]);
    }),
    ...(spec.fanSeats ?? []).flatMap((seat, i) => {
      const half = Math.max(...seat.sizes) / 2;
      return check('fanSeats', i, 'Fan seats', [half, half]);
    }),
  ];
}

function repeatedIds(spec: Spec): Contradiction[] {
  const lists = ['supplyBays', 'fanSeats', 'radiatorRails', 'driveSeats', 'blocks'] as const;
  return lists.flatMap((list) => {
    const ids = (spec[list] ?? []).map((entry) => entry.id);
    return ids.flatMap((id, i) =>
      ids.indexOf(id) === i
        ? []
        : [{ path: [list, i, 'id'], message: `"${id}" is used twice: names must differ` }],
    );
  });
}

function holds(bounds: Bounds, point: Vector3): boolean {
  return ([0, 1, 2] as const).every(
    (axis) =>
      point[axis] >= bounds.min[axis] - ROUND_OFF_MM && point[axis] <= bounds.max[axis] + ROUND_OFF_MM,
  );
}

function within(inner: Bounds, outer: Bounds, axis: Axis): boolean {
  return (
    inner.min[axis] >= outer.min[axis] - ROUND_OFF_MM && inner.max[axis] <= outer.max[axis] + ROUND_OFF_MM
  );
}

function sizeOf({ min, max }: Bounds): string {
  return axisNames.map((_, i) => ((max[i] ?? 0) - (min[i] ?? 0)).toFixed(1)).join(' x ');
}
