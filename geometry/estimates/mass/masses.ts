/** Mass of every part and where it sits, g and mm in the world frame. */
import type { Material } from '../../parts/body';
import { nominal } from '../../parts/dimension';
import type { PlacedPart, Scene, SceneBox } from '../../plan/scene';
import { boundsOfBoxes, volumeOfBox } from '../../space/oriented-box';
import { add, scale, type Vector3, zeroVector } from '../../space/vector';
import type { AssumptionValues } from '../assumptions';
import type { EstimateInput } from '../estimate';
import { believable, readRating } from '../ratings';

export interface PartMass {
  readonly part: PlacedPart;
  readonly grams: number;
  /** Centre of its solids, world frame, mm. */
  readonly at: Vector3;
  readonly missing: readonly string[];
  readonly input: EstimateInput;
}

/** Relative densities, g/cm3: only their ratios matter. From tables, remembered. */
const densities: Readonly<Record<Material, number>> = {
  steel: 7.85,
  aluminium: 2.7,
  glass: 2.5,
  mesh: 3.5,
  plastic: 1.1,
};

/** Parts with a mass, stated or usual; an enclosure without one has none to give. */
export function partMasses(scene: Scene, values: AssumptionValues): readonly PartMass[] {
  return scene.parts.flatMap((part, index) => {
    const solids = scene.boxes.filter((box) => box.part === index && box.body.role === 'solid');
    const at = centreOfSolids(solids);
    if (!at) return [];
    const reading = readRating(part, 'mass', part.spec.mass, 'g', believable.mass);
    const grams = reading.known ? reading.value * values.sheetMass : usualMass(part, solids, values);
    if (grams === undefined) return [];
    const assumed: EstimateInput = {
      name: `${part.label}, mass`,
      value: Math.round(grams),
      unit: 'g',
      source: 'assumed',
    };
    return [
      {
        part,
        grams,
        at,
        missing: reading.known ? [] : [reading.because],
        input: reading.known ? reading.input : assumed,
      },
    ];
  });
}

/** Parts whose mass cannot even be guessed. */
export function partsWithoutMass(scene: Scene): readonly PlacedPart[] {
  return scene.parts.filter(
    (part) =>
      part.kind === 'enclosure' && !readRating(part, 'mass', part.spec.mass, 'g', believable.mass).known,
  );
}

function centreOfSolids(solids: readonly SceneBox[]): Vector3 | undefined {
  let weight = 0;
  let sum: Vector3 = zeroVector;
  for (const { body, box } of solids) {
    const share = volumeOfBox(box) * densities[body.material ?? 'steel'];
    weight += share;
    sum = add(sum, scale(box.centre, share));
  }
  return weight > 0 ? scale(sum, 1 / weight) : undefined;
}

function usualMass(
  part: PlacedPart,
  solids: readonly SceneBox[],
  values: AssumptionValues,
): number | undefined {
  const bounds = boundsOfBoxes(solids.map(({ box }) => box));
  const litres = bounds
    ? [0, 1, 2].reduce((product, i) => product * ((bounds.max[i] ?? 0) - (bounds.min[i] ?? 0)), 1) / 1e6
    : 0;
  const { spec } = part;
  switch (spec.kind) {
    case 'enclosure':
      return undefined;
    case 'processor':
      return values.processorMass;
    case 'board': {
      const sheet = solids.find(({ body }) => body.element === 'circuit board');
      const area = sheet ? (4 * sheet.box.half[0] * sheet.box.half[1]) / 1e4 : 0;
      return area * values.boardMass;
    }
    case 'memory':
      return values.memoryMass;
    case 'card':
      return litres * values.cardMass;
    case 'cooler':
      return litres * values.coolerMass;
    case 'drive':
      return spec.form === 'M.2'
        ? values.moduleDriveMass
        : spec.form === '2.5'
          ? values.drive25Mass
          : values.drive35Mass;
    case 'supply':
      return litres * values.supplyMass;
    case 'fan': {
      const thickness = spec.thickness === undefined ? 25 : nominal(spec.thickness);
      return ((spec.size * spec.size * thickness) / 1e6) * values.fanMass;
    }
    case 'radiator':
      return litres * values.radiatorMass;
    case 'adapter':
      return values.adapterMass;
  }
}
