/**
 * Liquid-cooling radiators by fan pattern, mm. A name such as 240 counts the fans and not the body: the end tanks
 * make the body 30 to 40 mm longer. No standard covers them.
 */
import { fromMemory, noStandard } from './cited-documents';
import { type FanFrame, fanRowHoleColumns } from './fans';
import { citing, type Published } from './published';

export type RadiatorPattern = 120 | 240 | 360 | 140 | 280;

export interface RadiatorSize {
  readonly fanFrame: FanFrame & (120 | 140);
  readonly fans: number;
  /** Outer length over both tanks, outer width, thickness without fans. */
  readonly length: Published<number>;
  readonly width: Published<number>;
  readonly thickness: Published<number>;
}

const seen = citing(noStandard);
const slim = seen(27, 'one source', undefined, {
  via: 'one article',
  note: '27 to 30 seen; also 30, 38, 45 and 60',
});
const width120 = seen(120, 'two sources', undefined, {
  via: 'spec sheets and open drawings',
  note: '120 to 123 seen',
});
const width140 = seen(140, 'two sources', undefined, {
  via: 'spec sheets and open drawings',
  note: '140 to 143 seen',
});

export const radiators: Readonly<Record<RadiatorPattern, RadiatorSize>> = {
  120: {
    fanFrame: 120,
    fans: 1,
    length: seen(155, 'one source', undefined, { via: 'one open drawing', note: 'tank 35' }),
    width: width120,
    thickness: slim,
  },
  240: {
    fanFrame: 120,
    fans: 2,
    length: seen(275, 'two sources', undefined, {
      via: 'spec sheets and open drawings',
      note: '275 to 277 seen',
    }),
    width: width120,
    thickness: slim,
  },
  360: {
    fanFrame: 120,
    fans: 3,
    length: seen(395, 'derived', undefined, { note: '275 + 120; 394 to 397 remembered' }),
    width: width120,
    thickness: slim,
  },
  140: {
    fanFrame: 140,
    fans: 1,
    length: seen(175, 'derived', undefined, { note: '315 - 140; no drawing read' }),
    width: width140,
    thickness: slim,
  },
  280: {
    fanFrame: 140,
    fans: 2,
    length: seen(315, 'two sources', undefined, {
      via: 'spec sheets and open drawings',
      note: '312 to 315 seen',
    }),
    width: width140,
    thickness: slim,
  },
};

/** Distance between the outermost hole columns of a pattern. */
export function outermostHoleColumns(pattern: RadiatorPattern): number {
  const { fanFrame, fans } = radiators[pattern];
  const columns = fanRowHoleColumns(fanFrame, fans);
  return (columns.at(-1) ?? 0) - (columns[0] ?? 0);
}

/** Ports and pump block of an open drawing; use only as a start for a part without a drawing. */
export const liquidCoolerSeen = {
  portFromEnd: seen(20, 'one source', undefined, { via: 'one open drawing' }),
  portSpacing: seen(30, 'one source', undefined, { via: 'one open drawing', note: 'about the centreline' }),
  portDiameter: seen(12, 'one source', undefined, { via: 'one open drawing' }),
  fittingHeight: seen(15, 'one source', undefined, { via: 'one open drawing' }),
  pumpBlock: seen({ width: 70, depth: 70, height: 35 } as const, 'one source', undefined, {
    via: 'one open drawing',
  }),
  tubeOuterDiameter: fromMemory(12),
  tubeInnerDiameter: fromMemory(6),
} as const;
