/** What becomes of a part's body, mounts and feet when one of its dimensions is a little off. */
import type { AdjustmentValues, PartModel } from '../../parts/body';
import { buildPart } from '../../parts/build-part';
import type { PartSpec } from '../../parts/part-spec';
import { withDimension } from '../../parts/stated-dimensions/change-dimension';
import { dimensionsOf, type PartDimension } from '../../parts/stated-dimensions/stated-dimensions';
import { modelOf } from '../../plan/place-plan';
import type { Vector3 } from '../../space/vector';
import { type ChangedPart, compareModels, meets, type Touched } from './changed-part';

/** A dimension at the upper (1) or lower (-1) end of its band. */
export type Side = 1 | -1;

export interface VariedPart {
  readonly model: PartModel;
  /** Dimensions with a band that may touch what is asked about. */
  dimensionsTouching(wanted: Touched): readonly PartDimension[];
  atBandEnd(dimension: PartDimension, side: Side): ChangedPart;
  /** All that either end of its band moves, and how far at the most. */
  spreadOf(dimension: PartDimension): Spread;
  /** With several dimensions at given values, by path, mm. */
  withValues(values: ReadonlyMap<string, number>): ChangedPart;
}

export interface Spread extends Touched {
  readonly boxes: ReadonlySet<number>;
  /** Along each axis of the part, mm. */
  readonly shift: Vector3;
}

const NO_ADJUSTMENT: AdjustmentValues = {};
const known = new WeakMap<PartSpec, WeakMap<AdjustmentValues, VariedPart>>();

/** Bodies are built when first asked for and remembered with the spec and adjustment objects. */
export function variedPart(spec: PartSpec, adjust: AdjustmentValues = NO_ADJUSTMENT): VariedPart {
  const bySpec = known.get(spec) ?? new WeakMap<AdjustmentValues, VariedPart>();
  known.set(spec, bySpec);
  const before = bySpec.get(adjust);
  if (before) return before;
  const made = new RememberedVariations(spec, adjust);
  bySpec.set(adjust, made);
  return made;
}

/** Dimensions of one field of the sheet ('vents', 'interior'), which often touch the same few things. */
interface Group {
  readonly dimensions: readonly PartDimension[];
  touched?: ChangedPart;
}

/** Corners of bands remembered for one part: a plan asks for a few, sampling for any number. */
const MOST_CORNERS = 64;

class RememberedVariations implements VariedPart {
  readonly model: PartModel;
  private readonly spec: PartSpec;
  private readonly adjust: AdjustmentValues;
  private readonly groups: readonly Group[];
  private readonly ends: Readonly<Record<Side, Map<PartDimension, ChangedPart>>> = {
    1: new Map(),
    [-1]: new Map(),
  };
  private readonly spreads = new Map<PartDimension, Spread>();
  private readonly corners = new Map<string, ChangedPart>();

  constructor(spec: PartSpec, adjust: AdjustmentValues) {
    this.spec = spec;
    this.adjust = adjust;
    this.model = modelOf(spec, adjust);
    this.groups = groupedByField(dimensionsOf(spec).filter((dimension) => dimension.plusMinus > 0));
  }

  dimensionsTouching(wanted: Touched): readonly PartDimension[] {
    return this.groups
      .filter((group) => meets(this.touchedBy(group), wanted))
      .flatMap((group) => group.dimensions)
      .filter((dimension) => meets(this.spreadOf(dimension), wanted));
  }

  /** A body may be built another way at one end only: a row of plugs loses one. */
  spreadOf(dimension: PartDimension): Spread {
    const before = this.spreads.get(dimension);
    if (before) return before;
    const [upper, lower] = [this.atBandEnd(dimension, 1), this.atBandEnd(dimension, -1)];
    const along = (axis: 0 | 1 | 2) => Math.max(upper.shift[axis], lower.shift[axis]);
    const made: Spread = {
      boxes: new Set([...upper.boxes.keys(), ...lower.boxes.keys()]),
      mounts: new Set([...upper.mounts.keys(), ...lower.mounts.keys()]),
      feet: new Set([...upper.feet.keys(), ...lower.feet.keys()]),
      shift: [along(0), along(1), along(2)],
    };
    this.spreads.set(dimension, made);
    return made;
  }

  atBandEnd(dimension: PartDimension, side: Side): ChangedPart {
    const before = this.ends[side].get(dimension);
    if (before) return before;
    const value = dimension.nominal + side * dimension.plusMinus;
    const made = compareModels(this.model, this.buildWith([[dimension.path, value]]));
    this.ends[side].set(dimension, made);
    return made;
  }

  withValues(values: ReadonlyMap<string, number>): ChangedPart {
    const key = JSON.stringify([...values]);
    const before = this.corners.get(key);
    if (before) return before;
    const made = compareModels(this.model, this.buildWith([...values]));
    if (this.corners.size >= MOST_CORNERS) this.corners.clear();
    this.corners.set(key, made);
    return made;
  }

  /** One build answers for a whole group; unequal shares keep two changes from cancelling. */
  private touchedBy(group: Group): Touched {
    const [first, ...others] = group.dimensions;
    if (first && others.length === 0) return this.atBandEnd(first, 1);
    group.touched ??= compareModels(
      this.model,
      this.buildWith(
        group.dimensions.map(({ path, nominal, plusMinus }, index) => [
          path,
          nominal + plusMinus * (1 - index / (group.dimensions.length + Math.SQRT2)),
        ]),
      ),
    );
    return group.touched;
  }

  private buildWith(values: readonly (readonly [string, number])[]): PartModel {
    let spec = this.spec;
    for (const [path, value] of values) spec = withDimension(spec, path, value);
    return buildPart(spec, this.adjust);
  }
}

function groupedByField(dimensions: readonly PartDimension[]): readonly Group[] {
  const byField = new Map<string, PartDimension[]>();
  for (const dimension of dimensions) {
    const [field = ''] = dimension.path.split('.');
    const group = byField.get(field);
    if (group) group.push(dimension);
    else byField.set(field, [dimension]);
  }
  return [...byField.values()].map((group) => ({ dimensions: group }));
}
