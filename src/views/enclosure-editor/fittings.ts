/** What is placed on the faces of an enclosure, as things that can be moved on the drawing. */
import { type EnclosureSpec, nominal } from '../../../geometry';

type Face = NonNullable<EnclosureSpec['vents']>[number]['face'];
type Pair = readonly [number, number];

export interface Fitting {
  /** Path of its entry in the spec: 'fanSeats.0'. */
  readonly path: string;
  readonly label: string;
  readonly face: Face;
  /** Corners on the face, mm, along its two axes in world order. */
  readonly from: Pair;
  readonly to: Pair;
  /** Fields that move with it along each of the two axes. */
  readonly moves: readonly [readonly MovingField[], readonly MovingField[]];
}

export interface MovingField {
  readonly path: string;
  readonly value: number;
}

/** The axis that stands across a face, and the two along it in world order. */
export function axesOfFace(
  spec: EnclosureSpec,
  face: Face,
): readonly [across: number, first: number, second: number] {
  switch (face) {
    case 'rear':
    case 'front':
      return [0, 1, 2];
    case 'top':
    case 'floor':
      return [1, 0, 2];
    case 'side':
    case 'back':
      return [2, 0, 1];
    case 'tray':
    case 'tray back':
      return lies(spec) ? [1, 0, 2] : [2, 0, 1];
  }
}

/** Whether the board lies: its turn about x is a quarter. */
function lies({ board }: EnclosureSpec): boolean {
  return Math.abs((board.rotate?.[0] ?? 0) % 180) === 90;
}

/** Outlines of screw faces and bodies, mm, only to be seen and taken hold of. */
const supplyOutline: Readonly<Record<string, Pair>> = {
  ATX: [86, 150],
  SFX: [63.5, 125],
  'SFX-L': [63.5, 125],
  TFX: [65, 85],
  'Flex ATX': [40.5, 81.5],
};
const driveOutline: Readonly<Record<string, Pair>> = { '3.5': [147, 101.6], '2.5': [100, 69.85] };

export function fittingsOf(spec: EnclosureSpec): readonly Fitting[] {
  return [
    ...(spec.fanSeats ?? []).map((seat, i) => {
      const size = Math.max(...seat.sizes);
      return seated(`fanSeats.${i}`, `Fan seat ${seat.id}`, seat, [size, size]);
    }),
    ...spec.supplyBays.map((bay, i) =>
      seated(
        `supplyBays.${i}`,
        `Supply bay ${bay.id}`,
        bay,
        turned(supplyOutline[bay.form] ?? [60, 60], bay.turn),
      ),
    ),
    ...(spec.driveSeats ?? []).map((seat, i) =>
      seated(`driveSeats.${i}`, `Drive seat ${seat.id}`, seat, [20, 20], driveOutline[seat.form]),
    ),
    ...(spec.radiatorRails ?? []).map((rail, i) =>
      seated(`radiatorRails.${i}`, `Radiator rail ${rail.id}`, rail, [30, 30]),
    ),
    ...(spec.vents ?? []).map((vent, i) =>
      rectangle(`vents.${i}`, `Vent ${i + 1} (${vent.face})`, vent.face, vent),
    ),
    ...(spec.tray?.cutout ? [rectangle('tray.cutout', 'Processor cut-out', 'tray', spec.tray.cutout)] : []),
    ...(spec.tray?.openings ?? []).map((opening, i) =>
      rectangle(`tray.openings.${i}`, `Lead opening ${i + 1}`, 'tray', opening),
    ),
  ];
}

type Seat = EnclosureSpec['supplyBays'][number];

function turned([a, b]: Pair, turn: number | undefined): Pair {
  return (turn ?? 0) % 180 === 90 ? [b, a] : [a, b];
}

function seated(
  path: string,
  label: string,
  { face, at, turn }: Pick<Seat, 'face' | 'at' | 'turn'>,
  size: Pair,
  fromEnd?: Pair,
): Fitting {
  const [a, b] = [nominal(at[0]), nominal(at[1])];
  const [low, high]: readonly [Pair, Pair] =
    fromEnd && (turn ?? 0) === 0
      ? [
          [a, b - fromEnd[1] / 2],
          [a + fromEnd[0], b + fromEnd[1] / 2],
        ]
      : [
          [a - size[0] / 2, b - size[1] / 2],
          [a + size[0] / 2, b + size[1] / 2],
        ];
  return {
    path,
    label,
    face,
    from: low,
    to: high,
    moves: [[{ path: `${path}.at.0`, value: a }], [{ path: `${path}.at.1`, value: b }]],
  };
}

type Corner = NonNullable<EnclosureSpec['vents']>[number]['from'];

function rectangle(
  path: string,
  label: string,
  face: Face,
  { from, to }: { readonly from: Corner; readonly to: Corner },
): Fitting {
  const corner = (c: Corner): Pair => [nominal(c[0]), nominal(c[1])];
  const [a, b] = [corner(from), corner(to)];
  const fields = (i: 0 | 1): readonly MovingField[] => [
    { path: `${path}.from.${i}`, value: a[i] },
    { path: `${path}.to.${i}`, value: b[i] },
  ];
  return { path, label, face, from: a, to: b, moves: [fields(0), fields(1)] };
}
