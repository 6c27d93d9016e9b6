/** Vents, tray, shroud, blocks, feet and handle of an enclosure that cannot be where the sheet says. */
import type { Contradiction } from '../contradiction';
import { type Dimension, nominal } from '../dimension';
import { facePlaneOf } from './faces';
import type { EnclosureSpec } from './fields';
import type { EnclosureLayout } from './layout';
import { wallBounds } from './walls';

type Spec = EnclosureSpec;
type Corner = readonly [Dimension, Dimension];

export function furnishingContradictions(spec: Spec, layout: EnclosureLayout): Contradiction[] {
  return [
    ...ventContradictions(spec, layout),
    ...trayContradictions(spec),
    ...shroudContradictions(spec),
    ...blockContradictions(spec),
    ...outsideContradictions(spec, layout),
  ];
}

function ventContradictions(spec: Spec, layout: EnclosureLayout): Contradiction[] {
  return (spec.vents ?? []).flatMap(({ face, from, to }, i) => {
    const flat = flatRectangle(['vents', i], from, to);
    if (flat.length > 0) return flat;
    const plane = facePlaneOf(layout, face);
    const outside = [plane.first, plane.second].some((axis, c) => {
      const values = [from[c], to[c]].map((value) => nominal(value ?? 0));
      return (
        Math.min(...values) < layout.interior.min[axis] || Math.max(...values) > layout.interior.max[axis]
      );
    });
    if (!outside) return [];
    const message = `"Vents" (${cornerText(from)} to ${cornerText(to)} on ${face}) reach beyond "Interior"`;
    return [{ path: ['vents', i, 'to'], message }];
  });
}

function trayContradictions({ tray }: Spec): Contradiction[] {
  if (!tray) return [];
  const { from, to, cutout, openings = [] } = tray;
  const found: Contradiction[] = [];
  if (from && to && (nominal(from[0]) >= nominal(to[0]) || nominal(from[1]) >= nominal(to[1]))) {
    const message = `"Tray" must run from the smaller to the larger coordinates: ${cornerText(from)} to ${cornerText(to)}`;
    found.push({ path: ['tray', 'to'], message });
  }
  if (cutout) found.push(...flatRectangle(['tray', 'cutout'], cutout.from, cutout.to));
  openings.forEach((opening, i) => {
    found.push(...flatRectangle(['tray', 'openings', i], opening.from, opening.to));
  });
  return found;
}

function shroudContradictions({ shroud, interior }: Spec): Contradiction[] {
  if (!shroud) return [];
  const found: Contradiction[] = [];
  const atMost = (
    field: 'height' | 'length',
    title: string,
    limit: 'height' | 'length',
    limitTitle: string,
  ) => {
    if (nominal(shroud[field]) <= nominal(interior[limit])) return;
    const message = `"${title}" (${nominal(shroud[field])} mm) is larger than "${limitTitle}" (${nominal(interior[limit])} mm)`;
    found.push({ path: ['shroud', field], message });
  };
  atMost('height', 'Height of its upper face', 'height', 'Inner height');
  atMost('length', 'Length from the rear wall', 'length', 'Inner length');
  const thickness = shroud.thickness === undefined ? 0 : nominal(shroud.thickness);
  const room = Math.min(nominal(shroud.height), nominal(interior.trayToSide));
  if (thickness >= room || nominal(shroud.height) <= MINIMUM_SHROUD_MM) {
    const message = `"Supply shroud" is thicker (${thickness} mm) than the room it covers (${room} mm)`;
    found.push({ path: ['shroud', 'thickness'], message });
  }
  return found;
}

/** A shroud lower than a sheet's thickness covers nothing. */
const MINIMUM_SHROUD_MM = 2;

function blockContradictions(spec: Spec): Contradiction[] {
  return (spec.blocks ?? []).flatMap(({ id, from, to }, i) => {
    const flat = from.some((value, axis) => nominal(value) === nominal(to[axis] ?? 0));
    return flat ? [{ path: ['blocks', i, 'to'], message: `"Fixed blocks" ${id} has no thickness` }] : [];
  });
}

/** Feet and handle must fit under and on the outer faces. */
function outsideContradictions(spec: Spec, layout: EnclosureLayout): Contradiction[] {
  const length = wallBounds(layout, 'front').bounds.max[0] - wallBounds(layout, 'rear').bounds.min[0];
  const width = wallBounds(layout, 'side').bounds.max[2] - wallBounds(layout, 'back').bounds.min[2];
  const found: Contradiction[] = [];
  const { feet, handle } = spec;
  if (feet) {
    const inset = nominal(feet.inset);
    const tooMuch = (size: Dimension, outer: number) => 2 * (inset + nominal(size)) > outer;
    if (tooMuch(feet.length, length)) {
      const message = `two "Feet" of "Length" ${nominal(feet.length)} mm at "Inset" ${inset} mm do not fit under ${length.toFixed(1)} mm`;
      found.push({ path: ['feet', 'length'], message });
    }
    if (tooMuch(feet.width, width)) {
      const message = `two "Feet" of "Width" ${nominal(feet.width)} mm at "Inset" ${inset} mm do not fit under ${width.toFixed(1)} mm`;
      found.push({ path: ['feet', 'width'], message });
    }
  }
  if (handle && (nominal(handle.length) > length || nominal(handle.width) > width)) {
    const message = `"Handle" (${nominal(handle.length)} x ${nominal(handle.width)} mm) is larger than the top (${length.toFixed(1)} x ${width.toFixed(1)} mm)`;
    found.push({ path: ['handle', 'length'], message });
  }
  return found;
}

function flatRectangle(path: readonly (string | number)[], from: Corner, to: Corner): Contradiction[] {
  const flat = from.some((value, i) => nominal(value) === nominal(to[i] ?? 0));
  const message = `"From" ${cornerText(from)} and "To" ${cornerText(to)} enclose no area`;
  return flat ? [{ path: [...path, 'to'], message }] : [];
}

function cornerText(corner: Corner): string {
  return `(${nominal(corner[0])}, ${nominal(corner[1])})`;
}
