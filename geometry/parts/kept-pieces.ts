/** Pieces of bodies that were built before, kept for as long as the entries of the sheet they come from. */

/**
 * A builder that gives the very piece it gave before when it is asked about the same object and equal other inputs: of
 * a sheet in which one number changes, all other entries stay the same objects. The builder must be pure, and its
 * pieces are shared, so nobody may change them.
 */
export function keptPieces<O extends object, R extends readonly unknown[], T>(
  build: (entry: O, ...others: R) => T,
): (entry: O, ...others: R) => T {
  const kept = new WeakMap<O, { readonly others: R; readonly piece: T }[]>();
  return (entry, ...others) => {
    const ofEntry = kept.get(entry) ?? [];
    const known = ofEntry.find((one) => one.others.every((other, index) => other === others[index]));
    if (known) return known.piece;
    const piece = build(entry, ...others);
    if (ofEntry.length >= MOST_KEPT) ofEntry.shift();
    ofEntry.push({ others, piece });
    kept.set(entry, ofEntry);
    return piece;
  };
}

/** As the sheet stands, a dimension of another entry at either end of its band, and a few more. */
const MOST_KEPT = 8;
