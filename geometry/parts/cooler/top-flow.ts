import { coolerFoot } from '../../standards/cooler-proportions';
import { breathingGapOfBlades, sweptDiameterOfFrame } from '../../standards/fan-breathing';
import { fanThickness } from '../../standards/fans';
import type { BodyBox } from '../body';
import { centredSpan, type Extent, reservedBox, solidBox } from '../body-box';
import type { Contradiction } from '../contradiction';
import { type Dimension, nominal, nominalOr } from '../dimension';
import { hasVolume } from '../extent-overlap';

/** The dimensions a top-flow cooler is made of; its spec has them all. */
export interface TopFlowDimensions {
  readonly height: Dimension;
  readonly width: Dimension;
  readonly depth: Dimension;
  readonly finBottom: Dimension;
  readonly offset?: readonly [Dimension, Dimension] | undefined;
  readonly fan: {
    readonly size: number;
    readonly thickness?: Dimension | undefined;
    readonly under?: boolean | undefined;
  };
}

/** The usual fan of these coolers is a slim one. */
const thicknessOf = (cooler: TopFlowDimensions): number =>
  nominalOr(cooler.fan.thickness, fanThickness.slim.value);

/** Heights above the lid: the fins, and the fan on or under them. */
function levels(cooler: TopFlowDimensions) {
  const thickness = thicknessOf(cooler);
  const top = nominal(cooler.height);
  const finBottom = nominal(cooler.finBottom);
  return cooler.fan.under
    ? { fins: [finBottom, top] as const, fan: [finBottom - thickness, finBottom] as const, top }
    : { fins: [finBottom, top - thickness] as const, fan: [top - thickness, top] as const, top };
}

/**
 * Base and heat pipes below the fins. A fan on top leaves the middle free for pipes that rise straight up; a fan
 * under the fins makes them go round its rear edge.
 */
function footOf(
  cooler: TopFlowDimensions,
  x: number,
  y: number,
): readonly { name: string; extent: Extent }[] {
  const { fins, fan } = levels(cooler);
  const pipe = coolerFoot.heatPipe.value;
  const width = centredSpan(0, coolerFoot.baseWidth.value);
  const top = Math.min(coolerFoot.baseHeight.value, cooler.fan.under ? fan[0] : fins[0]);
  const base: Extent = { x: width, y: centredSpan(0, coolerFoot.baseDepth.value), z: [0, top] };
  const pieces = [{ name: 'base', extent: base }];
  if (!cooler.fan.under) {
    const riser: Extent = {
      x: centredSpan(x, coolerFoot.baseWidth.value),
      y: centredSpan(y, 2 * pipe),
      z: [top, fins[0]],
    };
    pieces.push({ name: 'heat pipes, rise', extent: riser });
  } else {
    const rear = Math.min(y - cooler.fan.size / 2, base.y[0]) - pipe;
    const run: Extent = { x: width, y: [rear, base.y[0]], z: [Math.max(0, top - pipe), top] };
    const riser: Extent = { x: width, y: [rear, rear + pipe], z: [top, fins[0]] };
    pieces.push({ name: 'heat pipes, run', extent: run }, { name: 'heat pipes, rise', extent: riser });
  }
  return pieces.filter((piece) => hasVolume(piece.extent));
}

/** Boxes of a cooler whose fan blows at the board, in the frame of `spec.ts`. */
export function buildTopFlow(cooler: TopFlowDimensions): readonly BodyBox[] {
  const [offsetX, offsetY] = cooler.offset ?? [0, 0];
  const x = nominal(offsetX);
  const y = nominal(offsetY);
  const { fins, fan, top } = levels(cooler);
  const { size } = cooler.fan;
  const swept = sweptDiameterOfFrame(size);
  const place = (width: number, depth: number, z: readonly [number, number]): Extent => ({
    x: centredSpan(x, width),
    y: centredSpan(y, depth),
    z,
  });
  return [
    ...footOf(cooler, x, y).map(({ name, extent }) => solidBox(name, 'cooler base', extent)),
    solidBox('fin stack 1', 'fin stack', place(nominal(cooler.width), nominal(cooler.depth), fins)),
    solidBox('top fan', 'fan', place(size, size, fan)),
    reservedBox(
      'breathing space, top fan',
      'breathing space',
      'fan',
      place(swept, swept, [top, top + breathingGapOfBlades(swept)]),
    ),
  ];
}

/** What in the numbers of a top-flow cooler cannot be true together. */
export function topFlowContradictions(cooler: TopFlowDimensions): readonly Contradiction[] {
  const { fins, fan } = levels(cooler);
  const height = nominal(cooler.height);
  const finBottom = nominal(cooler.finBottom);
  const thickness = thicknessOf(cooler);
  if (fins[0] >= fins[1]) {
    const withFan = cooler.fan.under ? '' : ` and the fan's "Thickness" (${thickness} mm)`;
    const message = `"Height" (${height} mm) leaves no fins above "Lower face of the fins" (${finBottom} mm)${withFan}`;
    return [{ path: ['height'], message }];
  }
  const base = coolerFoot.baseHeight.value;
  if (cooler.fan.under && fan[0] < base) {
    const message = `"Lower face of the fins" (${finBottom} mm) leaves no room for the fan's "Thickness" (${thickness} mm) above the base (${base} mm)`;
    return [{ path: ['finBottom'], message }];
  }
  return [];
}
