/** Which entries of the shelf are shown, and in which order. */
import type { PartKind } from '../../geometry';
import type { Remarks } from '../store/stored-records';
import type { SeatVerdict } from '../workers/shelf-request';
import { longestEdge, massOf } from './entry-figures';
import { searchShelf } from './search-shelf';
import type { ShelfEntry } from './shelf-entry';

export const shelfOrders = ['shelf', 'most room', 'tightest', 'length', 'price', 'mass'] as const;
export type ShelfOrder = (typeof shelfOrders)[number];

export interface ShelfWish {
  readonly typed: string;
  readonly kind: PartKind | undefined;
  /** Largest edge that is wanted, mm. */
  readonly longest: number | undefined;
  readonly favourites: boolean;
  /** Only what is known to have a seat without a fault. */
  readonly fitting: boolean;
  readonly order: ShelfOrder;
}

export interface ShelfKnowledge {
  readonly remarks: ReadonlyMap<string, Remarks>;
  /** By id of the entry; those that are missing are not known yet. */
  readonly verdicts: ReadonlyMap<string, SeatVerdict>;
}

/** All that match, whether they fit or not: what there should be a verdict about. */
export function matchShelf(
  entries: readonly ShelfEntry[],
  { typed, kind, longest, favourites }: Omit<ShelfWish, 'fitting' | 'order'>,
  remarks: ShelfKnowledge['remarks'],
): readonly ShelfEntry[] {
  const isFree = kind === undefined && longest === undefined && !favourites;
  const narrowed = isFree
    ? entries
    : entries.filter(
        ({ id, spec }) =>
          (kind === undefined || spec.kind === kind) &&
          (!favourites || remarks.get(id)?.favourite === true) &&
          (longest === undefined || longestEdge(spec) <= longest),
      );
  return searchShelf(narrowed, typed);
}

/** Of those that match, what is shown, in the order that is wanted. */
export function arrangeShelf(
  matching: readonly ShelfEntry[],
  { fitting, order }: Pick<ShelfWish, 'fitting' | 'order'>,
  { remarks, verdicts }: ShelfKnowledge,
): readonly ShelfEntry[] {
  const wanted = fitting ? matching.filter(({ id }) => verdicts.get(id)?.fits === true) : matching;
  return order === 'shelf' ? wanted : sortedBy(wanted, figureOf(order, { remarks, verdicts }));
}

/** The smallest first; undefined last. */
function figureOf(
  order: Exclude<ShelfOrder, 'shelf'>,
  { remarks, verdicts }: ShelfKnowledge,
): (entry: ShelfEntry) => number | undefined {
  switch (order) {
    case 'tightest':
      return ({ id }) => verdicts.get(id)?.tightest?.millimetres;
    case 'most room':
      return ({ id }) => {
        const gap = verdicts.get(id)?.tightest?.millimetres;
        return gap === undefined ? undefined : -gap;
      };
    case 'length':
      return ({ spec }) => longestEdge(spec);
    case 'price':
      return ({ id }) => remarks.get(id)?.price?.amount;
    case 'mass':
      return ({ id, spec }) => massOf(spec, remarks.get(id));
  }
}

/** Entries with the same figure keep their order. */
function sortedBy(
  entries: readonly ShelfEntry[],
  figure: (entry: ShelfEntry) => number | undefined,
): readonly ShelfEntry[] {
  return entries
    .map((entry) => ({ entry, value: figure(entry) ?? Number.POSITIVE_INFINITY }))
    .sort((a, b) => (a.value < b.value ? -1 : a.value > b.value ? 1 : 0))
    .map(({ entry }) => entry);
}
