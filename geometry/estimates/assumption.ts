/** Something a model takes for granted: a middle, how far it may be off, in words, and how it was chosen. */

export type Topic = 'power' | 'air' | 'heat' | 'sound' | 'mass' | 'money' | 'brief';

export interface Assumption {
  /** A plain clause: 'fan grilles are 60 % open'. */
  readonly says: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  /** Where the number comes from; 'memory' and 'common practice' say so. */
  readonly source: string;
}

/** Written as value, lowest, highest. */
export function assume(
  says: string,
  [value, low, high]: readonly [value: number, low: number, high: number],
  unit: string,
  source = 'from memory, no source',
): Assumption {
  return { says, value, low, high, unit, source };
}

export const practice = 'common practice, no source';
