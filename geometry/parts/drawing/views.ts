/**
 * From which sides a part of each kind is drawn. Views are orthographic: a point of the part's frame lands at (u, v),
 * mm, u to the right and v up on the paper; depth grows towards the viewer.
 */
import type { Bounds } from '../../space/oriented-box';
import type { Vector3 } from '../../space/vector';
import type { PartKind, PartSpec } from '../part-spec';

/** An axis of the part's frame, forwards or backwards. */
export interface SignedAxis {
  readonly axis: 0 | 1 | 2;
  readonly sign: 1 | -1;
}

export interface PartView {
  readonly name: 'front' | 'from above' | 'from the left';
  readonly right: SignedAxis;
  readonly up: SignedAxis;
  /** From the part to the viewer. */
  readonly towards: SignedAxis;
}

const plus = (axis: 0 | 1 | 2): SignedAxis => ({ axis, sign: 1 });
const minus = (axis: 0 | 1 | 2): SignedAxis => ({ axis, sign: -1 });
const opposite = ({ axis, sign }: SignedAxis): SignedAxis => ({ axis, sign: sign === 1 ? -1 : 1 });

interface Front {
  readonly right: SignedAxis;
  readonly up: SignedAxis;
  readonly towards: SignedAxis;
}

/** The side that says most, as sheets draw it; right, up and towards make a right-handed frame. */
function frontOf(kind: PartKind, form: string | undefined): Front {
  switch (kind) {
    case 'board':
    case 'processor':
      return { right: plus(1), up: minus(0), towards: plus(2) };
    case 'cooler':
      return { right: plus(1), up: plus(2), towards: plus(0) };
    case 'card':
    case 'memory':
    case 'drive':
      return { right: plus(0), up: plus(2), towards: minus(1) };
    case 'supply':
      return { right: plus(2), up: plus(1), towards: minus(0) };
    case 'adapter':
      return form === 'supply plate'
        ? { right: plus(2), up: plus(1), towards: minus(0) }
        : { right: plus(0), up: plus(2), towards: minus(1) };
    case 'enclosure':
    case 'fan':
    case 'radiator':
      return { right: plus(0), up: plus(1), towards: plus(2) };
  }
}

/** Front, from above and from the left, in that order. */
export function viewsOf(spec: PartSpec): readonly [PartView, PartView, PartView] {
  const { right, up, towards } = frontOf(spec.kind, 'form' in spec ? spec.form : undefined);
  return [
    { name: 'front', right, up, towards },
    { name: 'from above', right, up: opposite(towards), towards: up },
    { name: 'from the left', right: towards, up, towards: opposite(right) },
  ];
}

/** A point of the part on the paper, with its depth towards the viewer. */
export function inView(view: PartView, point: Vector3): readonly [u: number, v: number, depth: number] {
  return [along(view.right, point), along(view.up, point), along(view.towards, point)];
}

export function along({ axis, sign }: SignedAxis, point: Vector3): number {
  return sign * point[axis];
}

/** Both ends of bounds along an axis of the view, smaller first. */
export function rangeAlong({ axis, sign }: SignedAxis, bounds: Bounds): readonly [number, number] {
  const ends = [sign * bounds.min[axis], sign * bounds.max[axis]] as const;
  return sign === 1 ? ends : [ends[1], ends[0]];
}
