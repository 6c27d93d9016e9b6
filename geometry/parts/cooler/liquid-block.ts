import type { FaceName } from '../../space/face-names';
import { liquidCoolerSeen } from '../../standards/radiators';
import type { BodyBox, Feature } from '../body';
import { centredSpan, type Extent, reservedBox, type Span, solidBox } from '../body-box';
import type { Contradiction } from '../contradiction';
import { type Dimension, nominal } from '../dimension';

/** The dimensions a liquid block is made of; its spec has them all. */
export interface LiquidBlockDimensions {
  readonly width: Dimension;
  readonly depth: Dimension;
  readonly height: Dimension;
  readonly offset?: readonly [Dimension, Dimension] | undefined;
  readonly tubes: {
    readonly diameter: Dimension;
    readonly bendRadius: Dimension;
    readonly leaves: Exclude<FaceName, '-z' | '+z'>;
  };
}

/** Room between the two tubes where they leave the block, in tube diameters: the fittings stand side by side. */
const tubeSpacingInDiameters = 1.5;

/** A block with its pump, two tube stubs and the room in which the tubes turn. */
export function buildLiquidBlock(spec: LiquidBlockDimensions): {
  boxes: readonly BodyBox[];
  features: readonly Feature[];
} {
  const height = nominal(spec.height);
  const [x, y] = spec.offset ?? [0, 0];
  const block: Extent = {
    x: centredSpan(nominal(x), nominal(spec.width)),
    y: centredSpan(nominal(y), nominal(spec.depth)),
    z: [0, height],
  };
  const diameter = nominal(spec.tubes.diameter);
  const spacing = tubeSpacingInDiameters * diameter;
  const stub = liquidCoolerSeen.fittingHeight.value;
  const turn = nominal(spec.tubes.bendRadius) + diameter / 2;
  const z = centredSpan(Math.max(height / 2, diameter / 2), diameter);
  const beyond = (from: number, to: number, across: Span) =>
    beyondSide(block, spec.tubes.leaves, [from, to], across, z);
  const boxes = [
    solidBox('pump block', 'pump block', block),
    ...[-1, 1].map((side, index) =>
      solidBox(`tube ${index + 1}`, 'tube', beyond(0, stub, centredSpan((side * spacing) / 2, diameter))),
    ),
    reservedBox(
      'bend space, tubes',
      'bend space',
      'tube',
      beyond(stub, stub + turn, centredSpan(0, spacing + diameter)),
      { feature: 'tubes' },
    ),
  ];
  const features: Feature[] = [
    {
      id: 'tubes',
      kind: 'tube fitting',
      label: 'Tubes',
      use: ['bend space, tubes'],
      approach: [],
      required: true,
    },
  ];
  return { boxes, features };
}

/** An extent outside one side of a block: `away` from that side, `across` about the middle of the side. */
function beyondSide(
  block: Extent,
  side: LiquidBlockDimensions['tubes']['leaves'],
  away: Span,
  across: Span,
  z: Span,
): Extent {
  const along = side.endsWith('x') ? block.x : block.y;
  const other = side.endsWith('x') ? block.y : block.x;
  const middle = (other[0] + other[1]) / 2;
  const lateral: Span = [middle + across[0], middle + across[1]];
  const outward: Span = side.startsWith('+')
    ? [along[1] + away[0], along[1] + away[1]]
    : [along[0] - away[1], along[0] - away[0]];
  return side.endsWith('x') ? { x: outward, y: lateral, z } : { x: lateral, y: outward, z };
}

/** What in the numbers of a block cannot be true together. */
export function liquidBlockContradictions(block: LiquidBlockDimensions): readonly Contradiction[] {
  const diameter = nominal(block.tubes.diameter);
  const height = nominal(block.height);
  const alongX = block.tubes.leaves.endsWith('y');
  const side = nominal(alongX ? block.width : block.depth);
  const found: Contradiction[] = [];
  if (diameter > height) {
    const message = `"Outer diameter" of the tubes (${diameter} mm) is more than "Block height" (${height} mm)`;
    found.push({ path: ['tubes', 'diameter'], message });
  }
  const both = (1 + tubeSpacingInDiameters) * diameter;
  if (both > side) {
    const field = alongX ? 'Block width' : 'Block depth';
    const message = `two tubes of "Outer diameter" ${diameter} mm need ${both} mm, more than "${field}" (${side} mm)`;
    found.push({ path: ['tubes', 'diameter'], message });
  }
  return found;
}
