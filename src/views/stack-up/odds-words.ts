/** Probabilities as a person says them: of so many builds, one. */

/** Below this nobody would ever see it, and beyond it the normal distribution says nothing about real parts. */
const NEVER = 1e-6;

/** Who of all builds: the words that stand before a verb, and whether it is many. */
export interface Share {
  readonly builds: string;
  readonly many: boolean;
}

/** 'about 1 build in 13', 'about 7 builds in 10', 'all but about 1 build in 40'. */
export function shareOfBuilds(probability: number): Share {
  if (probability < NEVER) return { builds: 'fewer than 1 build in a million', many: false };
  if (probability > 1 - NEVER) return { builds: 'practically every build', many: false };
  if (probability < 1 / 3) return { builds: `about 1 build in ${roundCount(1 / probability)}`, many: false };
  if (probability <= 0.9) return { builds: `about ${Math.round(probability * 10)} builds in 10`, many: true };
  return { builds: `all but about 1 build in ${roundCount(1 / (1 - probability))}`, many: true };
}

/** 'about 1 build in 13 touches'. */
export function touching(probability: number): string {
  const { builds, many } = shareOfBuilds(probability);
  return `${builds} ${many ? 'touch' : 'touches'}`;
}

/** 'about 6 builds in 10 fall short of the 3.0 mm wanted'. */
export function fallingShort(probability: number, wanted: string): string {
  const { builds, many } = shareOfBuilds(probability);
  return `${builds} ${many ? 'fall' : 'falls'} short of the ${wanted} mm wanted`;
}

/** To two figures: more would pretend to know. */
function roundCount(count: number): string {
  const digits = Math.max(0, Math.floor(Math.log10(count)) - 1);
  const unit = 10 ** digits;
  return (Math.round(count / unit) * unit).toLocaleString('en-GB');
}
