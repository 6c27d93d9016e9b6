/** The figures of a fitting just added: usual sizes, in the middle of its face, assumed until somebody says better. */
import { boundsOfBoxes, type EnclosureSpec, modelOf } from '../../../geometry';
import type { FilledValue } from '../part-form/fill-draft';
import { axesOfFace } from './fittings';

export const newFittings = [
  'fan seat',
  'vent',
  'supply bay',
  'drive seat',
  'radiator rail',
  'glass side panel',
  'feet',
  'handle',
] as const;
export type NewFitting = (typeof newFittings)[number];

type Face = NonNullable<EnclosureSpec['vents']>[number]['face'];

export function needsFace(kind: NewFitting): boolean {
  return kind !== 'glass side panel' && kind !== 'feet' && kind !== 'handle';
}

/** Usual, no source. */
const usual = {
  fan: 120,
  radiator: '240',
  ventHalf: 40,
  ventOpen: 0.6,
  glass: 4,
  feet: { height: 12, width: 20, length: 40, inset: 6 },
  handle: { height: 45, length: 150, width: 30 },
} as const;

export function newFitting(spec: EnclosureSpec, kind: NewFitting, face: Face): readonly FilledValue[] {
  const [a, b] = middleOf(spec, face);
  const size = (path: string, value: number): FilledValue => ({ path, value, source: 'assumed' });
  const seat = (
    list: string,
    count: number,
    id: string,
    more: readonly FilledValue[],
  ): readonly FilledValue[] => [
    { path: `${list}.${count}.id`, value: id },
    ...more,
    { path: `${list}.${count}.face`, value: face },
    size(`${list}.${count}.at.0`, a),
    size(`${list}.${count}.at.1`, b),
  ];
  switch (kind) {
    case 'fan seat': {
      const count = spec.fanSeats?.length ?? 0;
      const more = [{ path: `fanSeats.${count}.sizes.0`, value: usual.fan }];
      return seat('fanSeats', count, freeName(spec.fanSeats, `${face} fan`), more);
    }
    case 'supply bay': {
      const count = spec.supplyBays.length;
      return seat('supplyBays', count, freeName(spec.supplyBays, face), [
        { path: `supplyBays.${count}.form`, value: 'SFX' },
      ]);
    }
    case 'drive seat': {
      const count = spec.driveSeats?.length ?? 0;
      return seat('driveSeats', count, freeName(spec.driveSeats, face), [
        { path: `driveSeats.${count}.form`, value: '2.5' },
      ]);
    }
    case 'radiator rail': {
      const count = spec.radiatorRails?.length ?? 0;
      return seat('radiatorRails', count, freeName(spec.radiatorRails, face), [
        { path: `radiatorRails.${count}.rows.0`, value: usual.radiator },
      ]);
    }
    case 'vent': {
      const path = `vents.${spec.vents?.length ?? 0}`;
      return [
        { path: `${path}.face`, value: face },
        size(`${path}.from.0`, a - usual.ventHalf),
        size(`${path}.from.1`, b - usual.ventHalf),
        size(`${path}.to.0`, a + usual.ventHalf),
        size(`${path}.to.1`, b + usual.ventHalf),
        { path: `${path}.open`, value: usual.ventOpen },
      ];
    }
    case 'glass side panel':
      return [{ path: 'walls.side.material', value: 'glass' }, size('walls.side.thickness', usual.glass)];
    case 'feet':
      return Object.entries(usual.feet).map(([key, value]) => size(`feet.${key}`, value));
    case 'handle':
      return Object.entries(usual.handle).map(([key, value]) => size(`handle.${key}`, value));
  }
}

/** Middle of the inside along the two axes of a face, to the whole millimetre. */
function middleOf(spec: EnclosureSpec, face: Face): readonly [number, number] {
  const [, first, second] = axesOfFace(spec, face);
  const walls = modelOf(spec).boxes.filter(({ element }) => element === 'floor' || element === 'side panel');
  const bounds = boundsOfBoxes(walls.map(({ box }) => box));
  const middle = (axis: number) =>
    bounds ? Math.round(((bounds.min[axis as 0] ?? 0) + (bounds.max[axis as 0] ?? 0)) / 2) : 0;
  return [middle(first), middle(second)];
}

function freeName(list: readonly { readonly id: string }[] | undefined, wanted: string): string {
  const taken = new Set((list ?? []).map(({ id }) => id));
  if (!taken.has(wanted)) return wanted;
  for (let number = 2; ; number++) if (!taken.has(`${wanted} ${number}`)) return `${wanted} ${number}`;
}
