/** Outer size and volume of an enclosure: with and without what stands off it, since published litres differ in that. */
import { type Bounds, boundsOfBoxes } from '../../space/oriented-box';
import { buildEnclosure } from './enclosure';
import type { EnclosureSpec } from './fields';
import { layoutOf, type WallName } from './layout';
import { wallBounds } from './walls';

export interface OuterSize {
  /** Outer faces of the walls, enclosure frame, mm. */
  readonly walls: Bounds;
  /** Everything, feet, handle and blocks that stand out included, mm. */
  readonly overall: Bounds;
  /** Volume of the box round the walls, litres. */
  readonly litres: number;
  /** Volume of the box round everything, litres. */
  readonly litresOverall: number;
}

const CUBIC_MM_PER_LITRE = 1e6;

export function outerSizeOf(spec: EnclosureSpec): OuterSize {
  const layout = layoutOf(spec);
  const of = (wall: WallName) => wallBounds(layout, wall).bounds;
  const walls: Bounds = {
    min: [of('rear').min[0], of('floor').min[1], of('back').min[2]],
    max: [of('front').max[0], of('top').max[1], of('side').max[2]],
  };
  const overall = boundsOfBoxes(buildEnclosure(spec).boxes.map((body) => body.box)) ?? walls;
  return { walls, overall, litres: litresOf(walls), litresOverall: litresOf(overall) };
}

function litresOf({ min, max }: Bounds): number {
  return ((max[0] - min[0]) * (max[1] - min[1]) * (max[2] - min[2])) / CUBIC_MM_PER_LITRE;
}
