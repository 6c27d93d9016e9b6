import { type Plan, planSchema } from '../../geometry/plan/plan-schema';

const made = { maker: 'Test' } as const;

function fan(on: string, mount: string, foot: string) {
  return {
    placement: { on, mount, foot },
    spec: { kind: 'fan', ...made, model: 'Round', size: 120, thickness: 25 },
  };
}

function module(slot: number) {
  return {
    placement: { on: 'board', mount: `memory ${slot}` },
    spec: { kind: 'memory', ...made, model: 'Low', form: 'DIMM', height: 34, thickness: 7 },
  };
}

/** An upright microATX build with everything in it, as many parts and boxes as a real plan has; invented numbers. */
export function demoLikeBuild(): Plan {
  return planSchema.parse({
    format: 1,
    name: 'Full bench build',
    parts: {
      enclosure: {
        placement: { at: [0, 0, 0] },
        spec: {
          kind: 'enclosure',
          ...made,
          model: 'Upright',
          interior: { length: 420, height: 420, trayToSide: 180, behindTray: 22 },
          walls: { side: { material: 'glass', thickness: 4 } },
          board: { fromTop: 60, standoff: 6.5, holes: 'BCFHJLMRS', slots: 4 },
          tray: { from: [0, 100], to: [330, 420], cutout: { from: [60, 250], to: [170, 370] } },
          supplyBays: [{ id: 'floor', form: 'ATX', face: 'rear', at: [46, 90] }],
          fanSeats: [
            { id: 'rear', sizes: [120], face: 'rear', at: [310, 110] },
            { id: 'front 1', sizes: [120, 140], face: 'front', at: [200, 90] },
            { id: 'front 2', sizes: [120, 140], face: 'front', at: [330, 90] },
            { id: 'top 1', sizes: [120], face: 'top', at: [110, 100] },
            { id: 'top 2', sizes: [120], face: 'top', at: [240, 100] },
          ],
          driveSeats: [{ id: 'tray 1', form: '2.5', face: 'tray back', at: [220, 180] }],
          vents: [
            { face: 'floor', from: [20, 20], to: [200, 160], open: 0.5 },
            { face: 'top', from: [40, 30], to: [320, 160], open: 0.6 },
          ],
          shroud: { height: 102, length: 260 },
          feet: { height: 10, width: 20, length: 40, inset: 20 },
        },
      },
      board: {
        placement: { on: 'enclosure', mount: 'board' },
        spec: {
          kind: 'board',
          ...made,
          model: 'Square',
          form: 'microATX',
          socket: { pattern: 'square-78', at: [75, 95] },
          memory: { form: 'DIMM', count: 4, at: [85, 160] },
          slots: [
            { position: 1, size: 'x1' },
            { position: 2, size: 'x16' },
            { position: 3, size: 'x1' },
            { position: 4, size: 'x4' },
          ],
          m2: [
            { id: '1', at: [144, 70], towards: '+y', lengths: [80], sink: 12 },
            { id: '2', at: [212, 90], towards: '+y', lengths: [80] },
          ],
          headers: [
            { type: 'main 24-pin', at: [70, 236], along: 'x' },
            { type: 'processor 8-pin', at: [10, 60] },
            { type: 'fan 4-pin', at: [8, 120] },
            { type: 'fan 4-pin', at: [236, 200] },
            { type: 'USB 3 20-pin', at: [120, 232], along: 'x' },
            { type: 'USB C internal', at: [145, 236], along: 'x' },
            { type: 'front panel', at: [238, 225] },
            { type: 'front audio', at: [238, 20] },
            { type: 'SATA upright', at: [180, 232], along: 'x' },
            { type: 'clear settings', at: [238, 150] },
          ],
          sinks: [
            { id: 'rear', from: [20, 20], to: [110, 40], height: 32 },
            { id: 'top', from: [6, 75], to: [22, 115], height: 28 },
          ],
          coinCell: [190, 210],
        },
      },
      processor: {
        placement: { on: 'board', mount: 'processor' },
        spec: {
          kind: 'processor',
          ...made,
          model: 'Six',
          socket: 'square-78',
          width: 38,
          depth: 45,
          class: 105,
        },
      },
      cooler: {
        placement: { on: 'processor', mount: 'lid' },
        spec: {
          kind: 'cooler',
          style: 'tower',
          ...made,
          model: 'Twin',
          patterns: ['square-78'],
          height: 156,
          width: 120,
          finBottom: 48,
          stacks: [{ depth: 40 }, { depth: 40 }],
          fans: [
            { place: 'front', size: 120, bottom: 36, raise: 15 },
            { place: 'middle', size: 120, bottom: 36 },
          ],
        },
      },
      memory: module(1),
      'memory-2': module(2),
      'memory-3': module(3),
      'memory-4': module(4),
      'm2-a': {
        placement: { on: 'board', mount: 'm2 1' },
        spec: { kind: 'drive', form: 'M.2', ...made, model: 'Slim', length: 80 },
      },
      'm2-b': {
        placement: { on: 'board', mount: 'm2 2' },
        spec: { kind: 'drive', form: 'M.2', ...made, model: 'Slim', length: 80 },
      },
      drive: {
        placement: { on: 'enclosure', mount: 'drive tray 1' },
        spec: { kind: 'drive', form: '2.5', ...made, model: 'Flat', height: 7 },
      },
      card: {
        placement: { on: 'board', mount: 'slot 2' },
        spec: {
          kind: 'card',
          ...made,
          model: 'Long',
          interface: 'x16',
          length: 330,
          height: 130,
          thickness: 50,
          bracketSlots: 2,
          fans: { count: 3, diameter: 90 },
          power: [
            { type: 'card 8-pin', edge: 'top', at: 180 },
            { type: 'card 8-pin', edge: 'top', at: 210 },
          ],
        },
      },
      plate: {
        placement: { on: 'enclosure', mount: 'supply floor' },
        spec: {
          kind: 'adapter',
          form: 'supply plate',
          ...made,
          model: 'Plate',
          opening: 'ATX',
          takes: 'SFX',
        },
      },
      supply: {
        placement: { on: 'plate', mount: 'supply' },
        spec: {
          kind: 'supply',
          ...made,
          model: 'Small',
          form: 'SFX-L',
          modular: true,
          fan: { side: '-y', size: 110 },
          plugs: [
            { type: 'main 24-pin', count: 1, sockets: 2 },
            { type: 'processor 8-pin', count: 2 },
            { type: 'card 8-pin', count: 3 },
            { type: 'drive power', count: 4 },
          ],
          watts: 750,
        },
      },
      fan: fan('enclosure', 'fan rear', 'blows out'),
      'fan-2': fan('enclosure', 'fan front 1', 'blows in'),
      'fan-3': fan('enclosure', 'fan front 2', 'blows in'),
      'fan-4': fan('enclosure', 'fan top 1', 'blows out'),
      'fan-5': fan('enclosure', 'fan top 2', 'blows out'),
    },
  });
}
