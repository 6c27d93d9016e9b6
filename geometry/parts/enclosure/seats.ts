/** What an enclosure offers to mount things on, in the enclosure frame (`fields.ts`), mm. */

import { boxFromCorners, transformBox } from '../../space/oriented-box';
import { driveForms } from '../../standards/drives';
import { standoffWidth } from '../../standards/enclosure-practice';
import { type HoleLetter, holePositions } from '../../standards/mounting-holes';
import { type RadiatorPattern, radiators } from '../../standards/radiators';
import type { BodyBox, Mount, PatternPoint } from '../body';
import { nominal } from '../dimension';
import { fanHolePoints } from '../fan/fan';
import {
  boardPattern,
  driveMountPattern,
  fanMountPattern,
  type RadiatorRow,
  radiatorMountPattern,
  riserMountPattern,
  supplyMountPattern,
} from '../patterns';
import { supplyFacePointsBothWays } from '../supply-face';
import { seatFrame } from './faces';
import type { EnclosureSpec, Face } from './fields';
import type { EnclosureLayout } from './layout';

export const boardMountId = 'board';

/** A hole letter the published tables know; undefined for any other character. */
export function holeLetter(letter: string): HoleLetter | undefined {
  return letter in holePositions ? (letter as HoleLetter) : undefined;
}

/** Where standoffs stand on the board mount: lettered holes of the shared board frame. */
export function standoffPoints(spec: EnclosureSpec): PatternPoint[] {
  return [...spec.board.holes].flatMap((letter) => {
    const known = holeLetter(letter);
    if (known === undefined) return [];
    const { x, y } = holePositions[known].value;
    return [{ id: letter, at: [x, y] as const }];
  });
}

/** One standoff for each letter, from the tray to the underside of the board. */
export function standoffsOf(spec: EnclosureSpec, layout: EnclosureLayout): BodyBox[] {
  const half = standoffWidth.value / 2;
  const height = nominal(spec.board.standoff);
  return standoffPoints(spec).map(({ id, at: [x, y] }) => ({
    name: `standoff ${id}`,
    role: 'solid',
    element: 'standoff',
    receives: [boardMountId],
    box: transformBox(
      layout.boardMount,
      boxFromCorners([x - half, y - half, -height], [x + half, y + half, 0]),
    ),
  }));
}

/** Warm air leaves at the rear and the top, cool air enters elsewhere: common practice, no source. */
const blowsOutFrom: ReadonlySet<Face> = new Set<Face>(['rear', 'top']);

/** Every mount. Ids: 'board', then 'supply', 'fan', 'radiator', 'drive' with the label of the seat, and 'riser'. */
export function mountsOf(spec: EnclosureSpec, layout: EnclosureLayout): Mount[] {
  return [
    {
      id: boardMountId,
      label: 'Board place',
      patterns: [boardPattern],
      frame: layout.boardMount,
      points: standoffPoints(spec),
    },
    ...spec.supplyBays.map(
      (bay): Mount => ({
        id: `supply ${bay.id}`,
        label: `Supply bay ${bay.id}`,
        patterns: [supplyMountPattern(bay.form)],
        frame: seatFrame(layout, bay),
        turns: [0, 180],
        points: supplyFacePointsBothWays(bay.form),
      }),
    ),
    ...(spec.fanSeats ?? []).map(
      (seat): Mount => ({
        id: `fan ${seat.id}`,
        label: `Fan seat ${seat.id}`,
        patterns: seat.sizes.map(fanMountPattern),
        ...(blowsOutFrom.has(seat.face) ? { prefers: 'blows out' } : {}),
        frame: seatFrame(layout, seat, seat.outside === true),
        points: seat.sizes.flatMap((size) =>
          fanHolePoints(size).map(({ id, at }) => ({ id: `${size} ${id}`, at })),
        ),
      }),
    ),
    ...(spec.radiatorRails ?? []).map(
      (rail): Mount => ({
        id: `radiator ${rail.id}`,
        label: `Radiator rail ${rail.id}`,
        patterns: rail.rows.map(radiatorMountPattern),
        frame: seatFrame(layout, rail),
        turns: [0, 180],
        points: rail.rows.flatMap(radiatorPoints),
      }),
    ),
    ...(spec.driveSeats ?? []).map(
      (seat): Mount => ({
        id: `drive ${seat.id}`,
        label: `Drive seat ${seat.id}`,
        patterns: [driveMountPattern(seat.form)],
        frame: seatFrame(layout, seat),
        points: drivePoints(seat.form),
      }),
    ),
    ...(spec.riser
      ? [
          {
            id: 'riser',
            label: 'Riser socket',
            patterns: [riserMountPattern],
            frame: seatFrame(layout, spec.riser),
          } satisfies Mount,
        ]
      : []),
  ];
}

/** Screw holes of a rail for a row of fans, about the middle of the row: x along it. */
function radiatorPoints(row: RadiatorRow): PatternPoint[] {
  const { fanFrame, fans } = radiators[radiatorPatterns[row]];
  return Array.from({ length: fans }, (_, i) => (i - (fans - 1) / 2) * fanFrame).flatMap((x, i) =>
    fanHolePoints(fanFrame).map(({ id, at }) => ({
      id: `${row} fan ${i + 1} ${id}`,
      at: [x + at[0], at[1]] as const,
    })),
  );
}

const radiatorPatterns: Readonly<Record<RadiatorRow, RadiatorPattern>> = {
  '120': 120,
  '140': 140,
  '240': 240,
  '280': 280,
  '360': 360,
};

/** Bottom screw holes of a drive from the middle of its connector end: x to the far end, y across. */
export function drivePoints(form: '3.5' | '2.5'): PatternPoint[] {
  const { width, holes } = driveForms[`${form} in`];
  return holes.value
    .filter((hole) => hole.face === 'bottom')
    .map((hole, i) => ({ id: `${i + 1}`, at: [hole.along, hole.across - width.value / 2] as const }));
}
