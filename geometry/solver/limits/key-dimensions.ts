/** The dimensions of each kind of part that a builder asks limits of, by path. */
import type { PartSpec } from '../../parts/part-spec';
import { dimensionsOf } from '../../parts/stated-dimensions/stated-dimensions';

/** How large may it be? Sizes of what goes into an enclosure. */
export function sizesOf(spec: PartSpec): readonly string[] {
  const here = new Set(dimensionsOf(spec).map(({ path }) => path));
  return wantedSizes(spec).filter((path) => here.has(path));
}

function wantedSizes(spec: PartSpec): readonly string[] {
  switch (spec.kind) {
    case 'card':
      return ['length', 'height', 'thickness'];
    case 'cooler':
      return spec.style === 'tower' ? ['height', 'width', 'stacks.0.depth'] : ['height', 'width', 'depth'];
    case 'memory':
      return ['height', 'thickness'];
    case 'supply':
      return ['depth'];
    case 'radiator':
      return ['thickness', 'length'];
    case 'fan':
      return ['thickness'];
    case 'drive':
      return spec.form === 'M.2' ? ['sink', 'above'] : ['height', 'length'];
    case 'processor':
    case 'board':
    case 'adapter':
    case 'enclosure':
      return [];
  }
}

/** How small may it be? Sizes of the enclosure itself. */
export const enclosureSizes = [
  'interior.length',
  'interior.height',
  'interior.trayToSide',
  'interior.behindTray',
] as const;
