import { rotationFromAxes } from '../../space/rotation';
import { breathingSpace, plugAndBend } from '../../standards/assembly-practice';
import { leadBundle, mainsPlug, modularSockets } from '../../standards/device-plugs';
import { supplyOpeningRim } from '../../standards/enclosure-practice';
import { atxSupplyDetails } from '../../standards/supply-forms';
import type { AdjustmentValues, BodyBox, Feature, Foot, PartModel } from '../body';
import { centredSpan, type Extent, reservedBox, type Span, solidBox } from '../body-box';
import { nominal, nominalOr } from '../dimension';
import { type PlugType, supplyMountPattern } from '../patterns';
import { powerPlugShape } from '../power-plug-shape';
import { supplyFacePoints } from '../supply-face';
import { layOutPlugRows, rowPitch, supplySize } from './plug-rows';
import type { SupplySpec } from './spec';

/** Body of a supply in the frame of `spec.ts`: z right and y up seen from outside, x inwards from the screw face. */
export function buildSupply(spec: SupplySpec, _adjust: AdjustmentValues = {}): PartModel {
  const { width, height, depth } = supplySize(spec);
  const inlet = mainsInlet(width, height);
  const leads = spec.modular ? modularPlugs(spec) : fixedLeads(spec);
  return {
    boxes: [
      solidBox('case', 'supply case', { x: [0, depth], y: [0, height], z: [0, width] }),
      ...fanAir(spec),
      ...inlet.boxes,
      ...leads.boxes,
    ],
    mounts: [],
    feet: [screwFace(spec)],
    features: [...inlet.features, ...leads.features],
    adjustments: [],
  };
}

interface Piece {
  readonly boxes: readonly BodyBox[];
  readonly features: readonly Feature[];
}

/** The screw face: origin at its centre, z inwards, x up, y to the right seen from outside. */
function screwFace(spec: SupplySpec): Foot {
  const { width, height } = supplySize(spec);
  const needed = (index: number): boolean => !(spec.form.startsWith('SFX') && index === sfxFifthHole);
  return {
    id: 'screw face',
    label: 'Screw face',
    pattern: supplyMountPattern(spec.form),
    frame: {
      rotation: rotationFromAxes([0, 1, 0], [0, 0, 1], [1, 0, 0]),
      translation: [0, height / 2, width / 2],
    },
    points: supplyFacePoints(spec.form).map((point, index) => ({ ...point, needed: needed(index) })),
    outline: { min: [-height / 2, -width / 2], max: [height / 2, width / 2] },
  };
}

/** Place in the published list of the SFX hole that is on one side only. */
const sfxFifthHole = 1;

/** Air before the fan, as deep as the supply guide asks. */
function fanAir(spec: SupplySpec): readonly BodyBox[] {
  if (spec.fan === undefined) return [];
  const { width, height, depth } = supplySize(spec);
  const { side } = spec.fan;
  const size = nominal(spec.fan.size);
  const reach = side.endsWith('y') ? height : width;
  const gap = breathingSpace.supplyGrille.value;
  const out: Span = side.startsWith('+') ? [reach, reach + gap] : [-gap, 0];
  const x = centredSpan(depth / 2, size);
  const extent: Extent = side.endsWith('y')
    ? { x, y: out, z: centredSpan(width / 2, size) }
    : { x, y: centredSpan(height / 2, size), z: out };
  return [reservedBox('breathing space, fan', 'breathing space', 'fan', extent)];
}

/** The mains plug stands outside, on the left, clear of the rim an enclosure keeps; an angled plug needs least. */
function mainsInlet(width: number, height: number): Piece {
  const name = 'plug space, mains';
  const feature = 'mains inlet';
  const plugWidth = Math.min(mainsPlug.width.value, width / 2);
  const fromLeft = Math.max(width * mainsPlug.inletFromSide.value, supplyOpeningRim.value + plugWidth / 2);
  const extent: Extent = {
    x: [-Math.max(...plugAndBend.angledMainsPlug.value), 0],
    y: centredSpan(height / 2, mainsPlug.height.value),
    z: centredSpan(fromLeft, plugWidth),
  };
  return {
    boxes: [reservedBox(name, 'plug space', 'plug', extent, { feature })],
    features: [
      { id: feature, kind: 'power socket', label: 'Mains inlet', use: [name], approach: [], required: true },
    ],
  };
}

/** Supplies of drives may be left unplugged; without the others the machine does not run. */
const optionalPlugs: ReadonlySet<PlugType> = new Set(['drive power', 'peripheral 4-pin']);

/** One plug space a row of modular sockets; the leads of all rows turn in one bend space. */
function modularPlugs(spec: SupplySpec): Piece {
  const { width, height, depth } = supplySize(spec);
  const rows = layOutPlugRows(spec);
  if (rows.length === 0) return { boxes: [], features: [] };
  const plugEnd = depth + plugDepthOf(spec);
  const bendName = 'bend space, modular leads';
  const lowest = (height - rows.length * rowPitch + modularSockets.gap.value) / 2;
  const across = powerPlugShape('processor 8-pin').acrossOverLatch;
  const boxes: BodyBox[] = [];
  const features: Feature[] = [];
  for (const [index, row] of rows.entries()) {
    const id = `modular row ${index + 1}`;
    const name = `plug space, ${id}`;
    const from = lowest + index * rowPitch;
    const extent: Extent = {
      x: [depth, plugEnd],
      y: [from, from + across],
      z: centredSpan(width / 2, row.length),
    };
    boxes.push(reservedBox(name, 'plug space', 'plug', extent, { feature: id }));
    features.push({
      id,
      kind: 'power socket',
      label: `Modular sockets: ${row.types.join(', ')}`,
      use: [name, bendName],
      approach: [],
      required: row.types.some((type) => !optionalPlugs.has(type)),
    });
  }
  const longest = Math.max(...rows.map((row) => row.length));
  const bend: Extent = {
    x: [plugEnd, plugEnd + bendOf(spec)],
    y: [lowest, lowest + (rows.length - 1) * rowPitch + across],
    z: centredSpan(width / 2, longest),
  };
  boxes.push(reservedBox(bendName, 'bend space', 'plug', bend));
  return { boxes, features };
}

/** The bundle of fixed leads leaves where the ATX outline has its exit, as far as the case is high and wide. */
function fixedLeads(spec: SupplySpec): Piece {
  const { width, height, depth } = supplySize(spec);
  const diameter = Math.min(leadBundle.diameter.value, width, height);
  const fromSide = Math.max(atxSupplyDetails.harnessExitFromSide.value, diameter / 2);
  const fromTop = Math.min(
    Math.max(atxSupplyDetails.harnessExitFromTop.value, diameter / 2),
    height - diameter / 2,
  );
  const extent: Extent = {
    x: [depth, depth + plugDepthOf(spec) + bendOf(spec)],
    y: centredSpan(height - fromTop, diameter),
    z: centredSpan(width - fromSide, diameter),
  };
  const name = 'bend space, leads';
  const feature = 'leads';
  return {
    boxes: [reservedBox(name, 'bend space', 'plug', extent, { feature })],
    features: [
      { id: feature, kind: 'power socket', label: 'Fixed leads', use: [name], approach: [], required: true },
    ],
  };
}

const [plugDepthFallback, plugAndBendFallback] = plugAndBend.modularSupplyPlug.value;
const plugDepthOf = (spec: SupplySpec): number => nominalOr(spec.plugDepth, plugDepthFallback);
const bendOf = (spec: SupplySpec): number => nominalOr(spec.bend, plugAndBendFallback - plugDepthFallback);
