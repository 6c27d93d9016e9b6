/**
 * The span of figures that a field can have on a real sheet. A figure outside is not taken: it is a slip, another unit
 * or another thing. Common practice, no source, widened so that every part of the shelf lies well within.
 */
import type { PartKind } from '../parts/part-spec';

type Span = readonly [least: number, most: number];

const mass: Readonly<Record<PartKind, Span>> = {
  enclosure: [500, 40_000],
  board: [100, 4000],
  processor: [5, 300],
  cooler: [60, 3000],
  memory: [5, 300],
  drive: [3, 1500],
  card: [50, 4500],
  supply: [300, 6000],
  fan: [10, 800],
  radiator: [100, 3500],
  adapter: [5, 2000],
};

const byKind: Readonly<Record<PartKind, Readonly<Record<string, Span>>>> = {
  card: {
    length: [100, 420],
    height: [60, 180],
    thickness: [8, 90],
    bracketSlots: [1, 4],
    sustained: [1, 800],
    peak: [1, 1600],
    'fans.count': [1, 4],
    'fans.diameter': [40, 130],
    sound: [5, 75],
    limit: [50, 120],
  },
  cooler: {
    height: [20, 190],
    width: [40, 200],
    depth: [20, 200],
    watts: [30, 500],
    'fan.count': [1, 3],
    'fan.size': [40, 200],
    'fan.thickness': [8, 40],
    'eachFan.speed': [200, 7000],
    'eachFan.flow': [10, 400],
    'eachFan.pressure': [1, 150],
    'eachFan.sound': [5, 75],
    'tubes.length': [150, 800],
    'tubes.diameter': [6, 20],
    pumpWatts: [0.5, 40],
    pumpSound: [5, 60],
  },
  supply: {
    width: [60, 155],
    height: [35, 90],
    depth: [80, 230],
    watts: [100, 2500],
    'fan.size': [40, 150],
    sound: [5, 75],
  },
  fan: {
    size: [40, 200],
    thickness: [8, 55],
    speed: [200, 9000],
    flow: [3, 500],
    pressure: [0.5, 250],
    sound: [5, 75],
    watts: [0.1, 60],
  },
  radiator: { length: [130, 480], width: [80, 200], thickness: [15, 90] },
  board: { width: [150, 345], depth: [150, 335], 'memory.count': [1, 8] },
  memory: { height: [17, 70], thickness: [2, 14], capacity: [1, 512], watts: [0.5, 30] },
  drive: { height: [4, 43], length: [60, 150], capacity: [30, 64_000], watts: [0.3, 30] },
  processor: {
    width: [25, 80],
    depth: [25, 85],
    height: [2, 12],
    class: [5, 500],
    sustained: [5, 1000],
    peak: [5, 1500],
    limit: [60, 125],
  },
  enclosure: {
    'limits.coolerHeight': [25, 200],
    'limits.cardLength': [150, 480],
    'limits.cardLengthWithFrontFan': [150, 480],
    'limits.supplyDepth': [90, 320],
    'limits.outerLength': [150, 700],
    'limits.outerWidth': [60, 400],
    'limits.outerHeight': [100, 700],
    'interior.behindTray': [2, 80],
    'board.slots': [1, 8],
  },
  adapter: {},
};

/** Undefined for a field the reader never fills. */
export function plausibleSpan(kind: PartKind, path: string): Span | undefined {
  return path === 'mass' ? mass[kind] : byKind[kind][path];
}

export function isPlausible(kind: PartKind, path: string, value: number): boolean {
  const span = plausibleSpan(kind, path);
  return span === undefined || (value >= span[0] && value <= span[1]);
}
