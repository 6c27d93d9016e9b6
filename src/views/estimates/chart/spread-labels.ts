/** Moves labels in a column apart until none covers another, each as little as possible. */

export interface ColumnLabel {
  readonly id: string;
  /** Where it would best stand, pixels downwards. */
  readonly at: number;
}

export function spreadLabels(
  labels: readonly ColumnLabel[],
  height: number,
  room: { readonly from: number; readonly to: number },
): ReadonlyMap<string, number> {
  const sorted = [...labels].sort((a, b) => a.at - b.at);
  const places: number[] = [];
  for (const { at } of sorted) {
    const before = places.at(-1);
    places.push(Math.max(at, before === undefined ? room.from : before + height));
  }
  for (let i = places.length - 1, below = room.to; i >= 0; i--) {
    const place = Math.min(places[i] ?? below, below);
    places[i] = place;
    below = place - height;
  }
  return new Map(sorted.map(({ id }, i) => [id, places[i] ?? 0]));
}
