/** When equipment counts as standing firmly. */
import { citing } from './published';

const safety = citing({
  document:
    'IEC 62368-1 Audio/video, information and communication technology equipment, safety requirements',
  publisher: 'IEC',
});
const hands = { via: 'a product-safety mailing list' };

export const stabilityTests = {
  /** Degrees it may be tilted without falling over. */
  tilt: safety(10, 'one source', undefined, hands),
  /** Sideways push, share of the weight and most, N. */
  push: safety({ shareOfWeight: 0.13, most: 250 } as const, 'one source', undefined, hands),
  /** Times the carried weight that a handle must bear. */
  handleFactor: safety([3, 4] as const, 'one source', undefined, { via: 'a white paper on the handle test' }),
} as const;
