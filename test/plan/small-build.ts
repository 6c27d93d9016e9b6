import type { Plan } from '../../geometry/plan/plan-schema';
import { planSchema } from '../../geometry/plan/plan-schema';

/**
 * An upright microATX build with round numbers, made for these tests. Board corner: x 2.11 (the rear panel's inner
 * face stands 2.11 mm behind the board edge: ATX 2.2 figure 4), y 330 - 20, standoffs 6.5.
 */
export function smallBuild(): Plan {
  return planSchema.parse({
    format: 1,
    name: 'Bench build',
    parts: {
      enclosure: {
        placement: { at: [0, 0, 0] },
        spec: {
          kind: 'enclosure',
          maker: 'Test',
          model: 'Upright',
          interior: { length: 380, height: 350, trayToSide: 175, behindTray: 20 },
          board: { fromTop: 20, standoff: 6.5, holes: 'BCFHJLMRS', slots: 4 },
          supplyBays: [{ id: 'floor', form: 'ATX', face: 'rear', at: [45, 78] }],
          fanSeats: [{ id: 'rear fan', sizes: [120], face: 'rear', at: [265, 110] }],
        },
      },
      board: {
        placement: { on: 'enclosure', mount: 'board' },
        spec: {
          kind: 'board',
          maker: 'Test',
          model: 'Square',
          form: 'microATX',
          socket: { pattern: 'square-78', at: [75, 95] },
          memory: { form: 'DIMM', count: 4, at: [70, 165] },
          slots: [
            { position: 1, size: 'x1' },
            { position: 2, size: 'x16' },
            { position: 4, size: 'x4' },
          ],
        },
      },
      processor: {
        placement: { on: 'board', mount: 'processor' },
        spec: {
          kind: 'processor',
          maker: 'Test',
          model: 'Six',
          socket: 'square-78',
          width: 37.5,
          depth: 45,
          height: 4,
          class: 105,
        },
      },
      cooler: {
        placement: { on: 'processor', mount: 'lid' },
        spec: {
          kind: 'cooler',
          style: 'tower',
          maker: 'Test',
          model: 'Tower',
          patterns: ['square-75', 'square-78'],
          height: 150,
          width: 120,
          finBottom: 45,
          stacks: [{ depth: 50 }],
          fans: [{ place: 'front', size: 120, bottom: 28, raise: 20 }],
        },
      },
      card: {
        placement: { on: 'board', mount: 'slot 2' },
        spec: {
          kind: 'card',
          maker: 'Test',
          model: 'Long',
          interface: 'x16',
          length: 300,
          height: 130,
          thickness: 50,
          bracketSlots: 2,
        },
      },
    },
  });
}
