/** Directions of the enclosure in words: x rear to front, y floor to top, z tray to side panel. */
import type { Direction, Vector3 } from '../../../geometry';

const WORDS: Readonly<Record<Direction, string>> = {
  '-x': 'to the rear',
  '+x': 'to the front',
  '-y': 'downwards',
  '+y': 'upwards',
  '-z': 'to the tray',
  '+z': 'to the side panel',
};

/** A slanted direction is named by its components. */
export function directionWords(direction: Vector3): string {
  const axes = ['x', 'y', 'z'] as const;
  const along = axes.filter((_, index) => Math.abs(direction[index] ?? 0) > 1e-6);
  const [only] = along;
  if (along.length === 1 && only !== undefined) {
    const sign = (direction[axes.indexOf(only)] ?? 0) < 0 ? '-' : '+';
    return WORDS[`${sign}${only}`];
  }
  return `slanted (${direction.map((part) => part.toFixed(2)).join(', ')})`;
}
