import { fanSizeSchema, m2LengthSchema, radiatorRowSchema } from '../../parts/patterns';

/** Fan frames that a spec knows, mm. */
export const fanSizes: readonly number[] = fanSizeSchema.options.map((option) => option.value);

/** Fan rows of radiators, mm. */
export const radiatorRows: readonly number[] = radiatorRowSchema.options.map(Number);

/** Lengths of M.2 modules, mm. */
export const m2Lengths: readonly number[] = m2LengthSchema.options.map((option) => option.value);
