/** Body boxes written by the ranges they span along the axes of the part's frame, mm. */
import { boxFromCorners } from '../space/oriented-box';
import type { BodyBox, Element, Role } from './body';

/** Least and greatest coordinate along an axis, in either order. */
export type Span = readonly [from: number, to: number];

/** An axis-aligned box in the frame of the part. */
export interface Extent {
  readonly x: Span;
  readonly y: Span;
  readonly z: Span;
}

type Extras = Partial<Pick<BodyBox, 'feature' | 'engages' | 'receives' | 'material' | 'removable'>>;

/** The span of a given length about a middle. */
export function centredSpan(middle: number, length: number): Span {
  return [middle - length / 2, middle + length / 2];
}

/** A box of material. */
export function solidBox(name: string, element: Element, { x, y, z }: Extent, extras: Extras = {}): BodyBox {
  return {
    name,
    role: 'solid',
    element,
    box: boxFromCorners([x[0], y[0], z[0]], [x[1], y[1], z[1]]),
    ...extras,
  };
}

/** A box that must stay free, for the reason its role names. */
export function reservedBox(
  name: string,
  role: Exclude<Role, 'solid'>,
  element: Element,
  extent: Extent,
  extras: Extras = {},
): BodyBox {
  return { ...solidBox(name, element, extent, extras), role };
}
