/** Where the pieces of a tower cooler stand, in the frame of `spec.ts`, mm. */
import { coolerFoot } from '../../standards/cooler-proportions';
import { fanThickness } from '../../standards/fans';
import { centredSpan, type Extent, type Span } from '../body-box';
import type { Contradiction } from '../contradiction';
import { type Dimension, nominal, nominalOr } from '../dimension';
import { extentsOverlap, hasVolume, hullOf } from '../extent-overlap';

export type FanPlace = 'front' | 'middle' | 'rear';

/** The dimensions a layout is made of; a tower spec has them all. */
export interface TowerDimensions {
  readonly height: Dimension;
  readonly width: Dimension;
  readonly finBottom: Dimension;
  readonly stacks: readonly { readonly depth: Dimension }[];
  readonly gap?: Dimension | undefined;
  readonly offset?: readonly [Dimension, Dimension] | undefined;
  readonly fans: readonly {
    readonly place: FanPlace;
    readonly size: number;
    readonly thickness?: Dimension | undefined;
    readonly bottom: Dimension;
  }[];
}

export interface TowerLayout {
  /** Contact plate, heat pipes running along it and rising to the stacks: narrower than the fins. */
  readonly foot: readonly { readonly name: string; readonly extent: Extent }[];
  readonly stacks: readonly Extent[];
  readonly fans: readonly { readonly place: FanPlace; readonly extent: Extent }[];
}

/** A twin tower without a middle fan keeps the gap of a usual fan and this much room round it. */
const roomRoundMiddleFan = 2;

function gapOf(tower: TowerDimensions): number {
  const middle = tower.fans.find((fan) => fan.place === 'middle');
  const thickness = nominalOr(middle?.thickness, fanThickness.usual.value);
  return nominalOr(tower.gap, thickness + roomRoundMiddleFan);
}

/** Spans of the stacks along the air, front first. */
function stackSpans(tower: TowerDimensions, middle: number): readonly Span[] {
  const depths = tower.stacks.map((stack) => nominal(stack.depth));
  const gap = gapOf(tower);
  const total = depths.reduce((sum, depth) => sum + depth, gap * (depths.length - 1));
  let front = middle + total / 2;
  return depths.map((depth) => {
    const span: Span = [front - depth, front];
    front -= depth + gap;
    return span;
  });
}

function fanSpan(place: FanPlace, thickness: number, spans: readonly Span[]): Span {
  const first = spans[0] ?? [0, 0];
  const last = spans.at(-1) ?? first;
  if (place === 'front') return [first[1], first[1] + thickness];
  if (place === 'rear') return [last[0] - thickness, last[0]];
  return centredSpan((first[0] + last[1]) / 2, thickness);
}

function footOf(tower: TowerDimensions, stacks: readonly Extent[]): TowerLayout['foot'] {
  const finBottom = nominal(tower.finBottom);
  const baseTop = Math.min(coolerFoot.baseHeight.value, finBottom);
  const base: Extent = {
    x: centredSpan(0, coolerFoot.baseWidth.value),
    y: centredSpan(0, coolerFoot.baseDepth.value),
    z: [0, baseTop],
  };
  const pipe = coolerFoot.heatPipe.value;
  const risers = stacks.map((stack): Extent => {
    const middle = (stack.y[0] + stack.y[1]) / 2;
    const depth = Math.min(2 * pipe, stack.y[1] - stack.y[0]);
    const x = centredSpan(
      (stack.x[0] + stack.x[1]) / 2,
      Math.min(stack.x[1] - stack.x[0], coolerFoot.baseWidth.value),
    );
    return { x, y: centredSpan(middle, depth), z: [baseTop, finBottom] };
  });
  const rises = risers.every((riser) => riser.y[0] >= base.y[0] && riser.y[1] <= base.y[1]);
  const runTop = rises ? baseTop : Math.min(baseTop + pipe, finBottom);
  const run: Extent = { ...hullOf(base, ...risers), z: [baseTop, runTop] };
  const pieces = [
    { name: 'base', extent: base },
    { name: 'heat pipes, run', extent: run },
    ...risers.map((riser, index) => ({
      name: `heat pipes, rise ${index + 1}`,
      extent: { ...riser, z: [runTop, finBottom] as const },
    })),
  ];
  return pieces.filter((piece) => hasVolume(piece.extent));
}

/** Places all pieces; `raise` is how far each fan, by place, has been slid up. */
export function layOutTower(
  tower: TowerDimensions,
  raise: Readonly<Partial<Record<FanPlace, number>>> = {},
): TowerLayout {
  const [offsetX, offsetY] = tower.offset ?? [0, 0];
  const middleX = nominal(offsetX);
  const spans = stackSpans(tower, nominal(offsetY));
  const stacks = spans.map(
    (y): Extent => ({
      x: centredSpan(middleX, nominal(tower.width)),
      y,
      z: [nominal(tower.finBottom), nominal(tower.height)],
    }),
  );
  const fans = tower.fans.map((fan) => {
    const bottom = nominal(fan.bottom) + (raise[fan.place] ?? 0);
    const extent: Extent = {
      x: centredSpan(middleX, fan.size),
      y: fanSpan(fan.place, nominalOr(fan.thickness, fanThickness.usual.value), spans),
      z: [bottom, bottom + fan.size],
    };
    return { place: fan.place, extent };
  });
  return { foot: footOf(tower, stacks), stacks, fans };
}

/** What in a tower's numbers cannot be true together. */
export function towerContradictions(tower: TowerDimensions): readonly Contradiction[] {
  const found: Contradiction[] = [];
  const height = nominal(tower.height);
  const finBottom = nominal(tower.finBottom);
  if (finBottom >= height) {
    const message = `"Lower face of the fins" (${finBottom} mm) must be below "Height" (${height} mm)`;
    return [{ path: ['finBottom'], message }];
  }
  const { foot, fans } = layOutTower(tower);
  for (const [index, fan] of tower.fans.entries()) {
    const path = ['fans', index];
    if (tower.fans.findIndex((other) => other.place === fan.place) !== index) {
      found.push({ path: [...path, 'place'], message: `two fans have the "Place" ${fan.place}` });
    }
    if (fan.place === 'middle') found.push(...middleFanContradictions(tower, index));
    const extent = fans[index]?.extent;
    const hit = extent && foot.find((piece) => extentsOverlap(piece.extent, extent));
    if (hit) {
      const lower = nominal(fan.bottom);
      const message = `"Lower edge above the lid" of the ${fan.place} fan (${lower} mm) puts it inside the ${hit.name} under "Lower face of the fins" (${finBottom} mm)`;
      found.push({ path: [...path, 'bottom'], message });
    }
  }
  return found;
}

function middleFanContradictions(tower: TowerDimensions, index: number): readonly Contradiction[] {
  const path = ['fans', index];
  if (tower.stacks.length < 2) {
    const message = '"Place" middle needs two entries in "Fin stacks, front first"';
    return [{ path: [...path, 'place'], message }];
  }
  const gap = gapOf(tower);
  const thickness = nominalOr(tower.fans[index]?.thickness, fanThickness.usual.value);
  if (thickness <= gap) return [];
  const message = `"Thickness" of the middle fan (${thickness} mm) is more than "Gap between the stacks" (${gap} mm)`;
  return [{ path: [...path, 'thickness'], message }];
}
