import { type PartSpec, partSpecSchema } from '../../../geometry/parts/part-spec';
import { microAtxBoard } from '../board/sample-boards';
import { microAtxTower, sandwich } from '../enclosure/sample-enclosures';

/** Invented sheets of every kind and form that say as little as they may. */
export function everyKind(): readonly PartSpec[] {
  const by = { maker: 'Test', model: 'Silent' };
  const stack = { patterns: ['square-78'], height: 150, width: 120, finBottom: 45 };
  return [
    microAtxTower,
    sandwich,
    microAtxBoard,
    { kind: 'processor', socket: 'square-78', width: 37.5, depth: 45, class: 65 },
    {
      kind: 'cooler',
      style: 'tower',
      ...stack,
      stacks: [{ depth: 50 }],
      fans: [{ place: 'front', size: 120, bottom: 28 }],
    },
    { kind: 'cooler', style: 'top flow', ...stack, height: 70, depth: 120, fan: { size: 120 } },
    {
      kind: 'cooler',
      style: 'liquid block',
      patterns: ['square-78'],
      width: 70,
      depth: 70,
      height: 50,
      tubes: { diameter: 12, length: 400, bendRadius: 40, leaves: '+y' },
    },
    { kind: 'memory', form: 'DIMM', thickness: 3.9 },
    { kind: 'memory', form: 'SO-DIMM', thickness: 3.8 },
    { kind: 'drive', form: '3.5', height: 26 },
    { kind: 'drive', form: '2.5', height: 7 },
    { kind: 'drive', form: 'M.2', length: 80 },
    { kind: 'card', interface: 'x16', length: 270, height: 130, thickness: 50, bracketSlots: 2 },
    { kind: 'supply', form: 'ATX', plugs: [{ type: 'main 24-pin', count: 1 }], modular: true, watts: 650 },
    { kind: 'supply', form: 'SFX', plugs: [{ type: 'main 24-pin', count: 1 }], modular: false, watts: 450 },
    { kind: 'fan', size: 120 },
    { kind: 'radiator', row: '240' },
    { kind: 'adapter', form: 'supply plate', opening: 'ATX', takes: 'SFX' },
    { kind: 'adapter', form: 'riser socket' },
    { kind: 'adapter', form: 'riser plug' },
  ].map((spec) => partSpecSchema.parse({ ...by, ...spec }));
}
