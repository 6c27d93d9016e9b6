/** Fixed blocks, feet and handle of an enclosure, in the enclosure frame (`fields.ts`), mm. */

import { boxFromCorners } from '../../space/oriented-box';
import type { Vector3 } from '../../space/vector';
import { handleBarThickness } from '../../standards/enclosure-practice';
import type { BodyBox, Element } from '../body';
import { type Dimension, nominal } from '../dimension';
import type { EnclosureSpec } from './fields';
import type { EnclosureLayout } from './layout';

export function fittingsOf(spec: EnclosureSpec, layout: EnclosureLayout): BodyBox[] {
  return [...blocksOf(spec), ...feetOf(spec, layout), ...handleOf(spec, layout)];
}

function solid(name: string, element: Element, from: Vector3, to: Vector3): BodyBox {
  return { name, role: 'solid', element, box: boxFromCorners(from, to) };
}

function blocksOf(spec: EnclosureSpec): BodyBox[] {
  const point = (p: readonly [Dimension, Dimension, Dimension]): Vector3 => [
    nominal(p[0]),
    nominal(p[1]),
    nominal(p[2]),
  ];
  return (spec.blocks ?? []).map((block) =>
    solid(`block ${block.id}`, 'cage', point(block.from), point(block.to)),
  );
}

/** The outer faces of the walls along x, y and z. */
function outerFaces(layout: EnclosureLayout) {
  const { interior, thickness } = layout;
  return {
    rear: interior.min[0] - thickness.rear,
    front: interior.max[0] + thickness.front,
    floor: interior.min[1] - thickness.floor,
    top: interior.max[1] + thickness.top,
    back: interior.min[2] - thickness.back,
    side: interior.max[2] + thickness.side,
  };
}

/** Four feet under the corners, `inset` in from the outer edges. */
function feetOf(spec: EnclosureSpec, layout: EnclosureLayout): BodyBox[] {
  if (!spec.feet) return [];
  const [height, width] = [nominal(spec.feet.height), nominal(spec.feet.width)];
  const [length, inset] = [nominal(spec.feet.length), nominal(spec.feet.inset)];
  const outer = outerFaces(layout);
  const alongX = [outer.rear + inset, outer.front - inset - length];
  const alongZ = [outer.back + inset, outer.side - inset - width];
  return alongX
    .flatMap((x) => alongZ.map((z) => [x, z] as const))
    .map(([x, z], i) =>
      solid(`foot ${i + 1}`, 'foot', [x, outer.floor - height, z], [x + length, outer.floor, z + width]),
    );
}

/** A bar on two posts in the middle of the top; the gap below the bar is left for the hand. */
function handleOf(spec: EnclosureSpec, layout: EnclosureLayout): BodyBox[] {
  if (!spec.handle) return [];
  const [height, length, width] = [
    nominal(spec.handle.height),
    nominal(spec.handle.length),
    nominal(spec.handle.width),
  ];
  const outer = outerFaces(layout);
  const bar = Math.min(handleBarThickness.value, height / 2);
  const post = Math.min(handleBarThickness.value, length / 3);
  const x0 = (outer.rear + outer.front - length) / 2;
  const z0 = (outer.back + outer.side - width) / 2;
  const under = outer.top + height - bar;
  return [
    solid('handle bar', 'handle', [x0, under, z0], [x0 + length, outer.top + height, z0 + width]),
    solid('handle post 1', 'handle', [x0, outer.top, z0], [x0 + post, under, z0 + width]),
    solid('handle post 2', 'handle', [x0 + length - post, outer.top, z0], [x0 + length, under, z0 + width]),
  ];
}
