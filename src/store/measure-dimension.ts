/** A value that a person has measured takes the place of what the sheet says. */
import { type Dimension, partSpecSchema, type StackUpTerm, withStatement } from '../../geometry';
import { formatMillimetres } from '../ui/numbers';
import { editPlan, planStore, undo } from './plan-store';
import { announce } from './status-store';

export interface Measured {
  readonly value: number;
  /** Half-width of its band; undefined for what is usual of a measured value. */
  readonly plusMinus: number | undefined;
}

/** One step of undo. Returns in words why the sheet cannot be true with that value, and then changes nothing. */
export function measureDimension(
  term: Pick<StackUpTerm, 'part' | 'partLabel' | 'path' | 'title'>,
  { value, plusMinus }: Measured,
): string | undefined {
  const part = planStore.getState().plan.parts[term.part];
  if (!part) return 'The part is no longer in the plan.';
  const dimension: Dimension = {
    value,
    source: 'measured',
    ...(plusMinus === undefined ? {} : { plusMinus }),
  };
  const read = partSpecSchema.safeParse(withStatement(part.spec, term.path, dimension));
  if (!read.success) return read.error.issues[0]?.message ?? 'The sheet cannot be true with that value.';
  const { data: spec } = read;
  editPlan((plan) => ({ ...plan, parts: { ...plan.parts, [term.part]: { ...part, spec } } }));
  const band = plusMinus === undefined ? '' : ` ± ${formatMillimetres(plusMinus)}`;
  announce(`${term.partLabel}, ${term.title}: measured ${formatMillimetres(value)}${band} mm.`, {
    label: 'Undo',
    run: undo,
  });
  return undefined;
}
