/** A small machine for the tests of the app: an enclosure, a board in it, a processor on it, a fan standing free. */
import { type Plan, readPlanValue } from '../../geometry';

const value = {
  format: 1,
  name: 'Harbour office',
  parts: {
    enclosure: {
      spec: {
        kind: 'enclosure',
        maker: 'Quayside',
        model: 'Locker 30',
        interior: { length: 400, height: 360, trayToSide: 170, behindTray: 25 },
        board: { standoff: 6.5, holes: 'BCFHJLMRS', slots: 4 },
        supplyBays: [],
        fanSeats: [{ id: 'front', sizes: [120], face: 'front', at: [150, 80] }],
      },
      placement: { at: [0, 0, 0] },
    },
    board: {
      spec: {
        kind: 'board',
        maker: 'Quayside',
        model: 'Plank M',
        form: 'microATX',
        socket: { pattern: 'square-75', at: [85, 90] },
        memory: { form: 'DIMM', count: 2, at: [75, 165] },
        slots: [{ position: 1, size: 'x16' }],
      },
      placement: { on: 'enclosure', mount: 'board' },
    },
    processor: {
      spec: {
        kind: 'processor',
        maker: 'Quayside',
        model: 'Core 65',
        socket: 'square-75',
        width: 37.5,
        depth: 37.5,
        class: 65,
      },
      placement: { on: 'board', mount: 'processor' },
    },
    fan: {
      spec: { kind: 'fan', maker: 'Quayside', model: 'Breeze', size: 120 },
      placement: { at: [300, 200, 80] },
    },
  },
};

/** A fresh copy, so that no test sees another's edits. */
export function samplePlan(): Plan {
  const read = readPlanValue(structuredClone(value));
  if (!read.ok) throw new Error(read.problems.map(({ path, message }) => `${path} ${message}`).join('\n'));
  return read.plan;
}
