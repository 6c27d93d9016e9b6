/** What a path is made of, as shares of its playback and in words. */
import { type InsertionPath, length, type Motion } from '../../../geometry';

type Path = Pick<InsertionPath, 'motions' | 'reach'>;

function sizeOf(motion: Motion, reach: number): number {
  return motion.kind === 'slide' ? length(motion.by) : Math.abs(motion.degrees) * (Math.PI / 180) * reach;
}

/** Shares at which a motion begins or ends, up to `last`. */
export function stationsOf({ motions, reach }: Path, last: number): readonly number[] {
  const sizes = motions.map((motion) => sizeOf(motion, reach));
  const total = sizes.reduce((sum, size) => sum + size, 0);
  const stations = [0];
  let gone = 0;
  for (const size of sizes) {
    gone += size;
    if (total > 0 && gone / total < last - 1e-6) stations.push(gone / total);
  }
  return [...stations, last];
}

/** 'Sliding, 120 mm to go', 'Turning, 14° to go', 'Seated'. */
export function momentWords({ motions, reach }: Path, t: number): string {
  const sizes = motions.map((motion) => sizeOf(motion, reach));
  const total = sizes.reduce((sum, size) => sum + size, 0);
  if (total === 0 || t >= 1 - 1e-6) return 'Seated';
  let gone = t * total;
  for (const [k, motion] of motions.entries()) {
    const size = sizes[k] ?? 0;
    if (gone < size - 1e-9) {
      const left = 1 - gone / size;
      return motion.kind === 'slide'
        ? `Sliding, ${(left * size).toFixed(0)} mm to go`
        : `Turning, ${(left * Math.abs(motion.degrees)).toFixed(0)}° to go`;
    }
    gone -= size;
  }
  return 'Seated';
}
