/** Sound levels, decibels. */

/** Level of several sources that have nothing to do with one another: 10 log10 of the sum of 10^(L/10). */
export function sumOfLevels(levels: readonly number[]): number {
  return 10 * Math.log10(levels.reduce((sum, level) => sum + 10 ** (level / 10), 0));
}

/** Change of level with fan speed: `perDecade` log10 of the ratio of the speeds; 50 to 60 is usual. */
export function levelChangeBySpeed(ratio: number, perDecade: number): number {
  return perDecade * Math.log10(ratio);
}

/** Level at another distance from a small source in the open: minus 20 log10 of the ratio of the distances. */
export function levelAtDistance(level: number, from: number, to: number): number {
  return level - 20 * Math.log10(to / from);
}

/** Sound pressure level at `metres` from a source of a given power level that stands on a floor: half a sphere. */
export function levelFromPower(powerLevel: number, metres: number): number {
  return powerLevel - 10 * Math.log10(2 * Math.PI * metres ** 2);
}

/** Frequency of the tone of the blades, Hz. */
export function bladeTone(revolutionsPerMinute: number, blades: number): number {
  return (revolutionsPerMinute * blades) / 60;
}

/** How a level beside a machine reads, by common practice. */
export function wordForLevel(level: number): 'hardly heard' | 'quiet' | 'plain to hear' | 'loud' {
  if (level < 25) return 'hardly heard';
  if (level < 38) return 'quiet';
  return level < 45 ? 'plain to hear' : 'loud';
}
