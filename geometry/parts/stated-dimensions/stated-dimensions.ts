/** Every length that a part is built from, with its band, its source and what it is measured from. */
import { defaultPlusMinus } from '../../standards/general-tolerances';
import type { Published } from '../../standards/published';
import { type Dimension, type DimensionSource, nominal, sigmasOf, sourceOf } from '../dimension';
import type { PartSpec } from '../part-spec';
import { type FieldPath, type QuantityField, quantityFields } from './quantity-fields';
import { valuesStandingIn } from './standing-in';

export interface PartDimension {
  /** 'interior.trayToSide', 'fanSeats.0.at.1': unique within the part. */
  readonly path: string;
  readonly title: string;
  /** The faces or points it is measured between. */
  readonly datum: string | undefined;
  /** mm. */
  readonly nominal: number;
  /** Half-width of its band, mm. */
  readonly plusMinus: number;
  /** The sheet gives no band: the general tolerance for its source and size stands in. */
  readonly isDefault: boolean;
  readonly source: DimensionSource;
  /** How many standard deviations the band stands for. */
  readonly sigmas: 2 | 3;
  /** False where the field is empty and a published value stands in. */
  readonly isStated: boolean;
  /** A place along an axis, not a size. */
  readonly isPosition: boolean;
}

const known = new WeakMap<PartSpec, readonly PartDimension[]>();

/** In the order of the schema. Worked out once for each spec object. */
export function dimensionsOf(spec: PartSpec): readonly PartDimension[] {
  const before = known.get(spec);
  if (before) return before;
  const standingIn = valuesStandingIn(spec);
  const dimensions = quantityFields(spec)
    .filter((field) => field.unit === 'mm')
    .flatMap((field) => {
      const path = keyOfPath(field.path);
      if (field.stated !== undefined) return [stated(path, field, field.stated)];
      const published = standingIn[path];
      return published ? [standing(path, field, published)] : [];
    });
  known.set(spec, dimensions);
  return dimensions;
}

/** One of them. Throws RangeError when the part has no such dimension. */
export function dimensionAt(spec: PartSpec, path: string): PartDimension {
  const found = dimensionsOf(spec).find((dimension) => dimension.path === path);
  if (!found) throw new RangeError(`a ${spec.kind} of this sheet has no dimension ${path}`);
  return found;
}

export function keyOfPath(path: FieldPath): string {
  return path.join('.');
}

function stated(path: string, field: QuantityField, dimension: Dimension): PartDimension {
  const value = nominal(dimension);
  const source = sourceOf(dimension);
  const own = typeof dimension === 'number' ? undefined : dimension.plusMinus;
  return {
    path,
    title: field.title,
    datum: field.datum,
    nominal: value,
    plusMinus: own ?? usualBand(source, value, field.isPosition),
    isDefault: own === undefined,
    source,
    sigmas: sigmasOf(dimension),
    isStated: true,
    isPosition: field.isPosition,
  };
}

function standing(path: string, field: QuantityField, published: Published<number>): PartDimension {
  const source = isWritten(published) ? 'standard' : 'assumed';
  const { value, plusMinus } = published;
  return {
    path,
    title: field.title,
    datum: field.datum,
    nominal: value,
    plusMinus: plusMinus ?? usualBand(source, value, field.isPosition),
    isDefault: plusMinus === undefined,
    source,
    sigmas: 3,
    isStated: false,
    isPosition: field.isPosition,
  };
}

/** Whether a document stands behind the value; practice and memory are assumptions. */
function isWritten({ confidence }: Published<number>): boolean {
  return confidence !== 'common practice' && confidence !== 'memory';
}

/** A size of nothing (no recess, no room behind the tray) is a way of building, not a length that varies. */
function usualBand(source: DimensionSource, value: number, isPosition: boolean): number {
  return value === 0 && !isPosition ? 0 : defaultPlusMinus(source, value);
}
