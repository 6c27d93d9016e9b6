/** Sums of stated and published lengths that remember how far they may be off and what they are made of. */
import { defaultPlusMinus } from '../../standards/general-tolerances';
import type { Published } from '../../standards/published';
import { type Dimension, nominal, sourceOf } from '../dimension';

/** A length with its band, mm, and the words for its terms. */
export interface Reckoned {
  readonly value: number;
  /** Half-width, terms added up: nobody knows how they vary together. */
  readonly plusMinus: number;
  readonly isAssumed: boolean;
  readonly how: string;
}

/** Half of the whole millimetre that makers print their limits in. */
const PRINTED_PLUS_MINUS_MM = 0.5;

/** A limit as published: the general tolerance of its size, and no finer than it was printed. */
export function published(dimension: Dimension, name: string): Reckoned {
  const value = nominal(dimension);
  const own = typeof dimension === 'number' ? undefined : dimension.plusMinus;
  const isWhole = Number.isInteger(value);
  const usual = Math.max(defaultPlusMinus(sourceOf(dimension), value), isWhole ? PRINTED_PLUS_MINUS_MM : 0);
  return {
    value,
    plusMinus: own ?? usual,
    isAssumed: sourceOf(dimension) === 'assumed',
    how: `${name} ${value}`,
  };
}

/** A value of a document; without a tolerance of its own it is taken as exact beside a published limit. */
export function ofStandard({ value, plusMinus = 0 }: Published<number>, name: string): Reckoned {
  return { value, plusMinus, isAssumed: false, how: name };
}

export function fixed(value: number, name: string): Reckoned {
  return { value, plusMinus: 0, isAssumed: false, how: name };
}

/** What nobody has published: a usual value with a wide band. */
export function assumed(value: number, plusMinus: number, name: string): Reckoned {
  return { value, plusMinus, isAssumed: true, how: name };
}

export function sumOf(...terms: readonly Reckoned[]): Reckoned {
  return {
    value: terms.reduce((sum, { value }) => sum + value, 0),
    plusMinus: terms.reduce((sum, { plusMinus }) => sum + plusMinus, 0),
    isAssumed: terms.some(({ isAssumed }) => isAssumed),
    how: terms.map(({ how }) => how).join(' + '),
  };
}

export function less(whole: Reckoned, ...terms: readonly Reckoned[]): Reckoned {
  const rest = sumOf(...terms);
  return {
    value: whole.value - rest.value,
    plusMinus: whole.plusMinus + rest.plusMinus,
    isAssumed: whole.isAssumed || rest.isAssumed,
    how: `${whole.how} − ${terms.map(({ how }) => how).join(' − ')}`,
  };
}

/** As a dimension of a spec. The band is kept within what a spec takes. */
export function asDimension({ value, plusMinus, isAssumed, how }: Reckoned): Dimension {
  return {
    value: Number(value.toFixed(4)),
    plusMinus: Number(Math.min(plusMinus, 100).toFixed(2)),
    source: isAssumed ? 'assumed' : 'sheet',
    note: how.length > 190 ? `${how.slice(0, 189)}…` : how,
  };
}
