/** Overlap of axis-aligned extents, mm; touching is not overlap. */
import { CONTACT_TOLERANCE_MM } from '../space/tolerance';
import type { Extent, Span } from './body-box';

function spansOverlap(a: Span, b: Span): boolean {
  return Math.min(a[1], b[1]) - Math.max(a[0], b[0]) > CONTACT_TOLERANCE_MM;
}

/** Whether two extents share volume. Spans must run from small to large. */
export function extentsOverlap(a: Extent, b: Extent): boolean {
  return spansOverlap(a.x, b.x) && spansOverlap(a.y, b.y) && spansOverlap(a.z, b.z);
}

/** The smallest extent that holds all; spans must run from small to large. */
export function hullOf(first: Extent, ...rest: readonly Extent[]): Extent {
  const join = (a: Span, b: Span): Span => [Math.min(a[0], b[0]), Math.max(a[1], b[1])];
  return rest.reduce<Extent>((a, b) => ({ x: join(a.x, b.x), y: join(a.y, b.y), z: join(a.z, b.z) }), first);
}

/** Whether an extent has volume. */
export function hasVolume({ x, y, z }: Extent): boolean {
  return [x, y, z].every(([from, to]) => to - from > CONTACT_TOLERANCE_MM);
}
