import { useStore } from 'zustand';
import type { Remarks } from '../store/stored-records';
import type { ShelfEntry } from './shelf-entry';
import { shelfStore } from './shelf-store';

export function useShelf(): readonly ShelfEntry[] {
  return useStore(shelfStore, (state) => state.entries);
}

/** What is remarked on entries, by their id. */
export function useRemarks(): ReadonlyMap<string, Remarks> {
  return useStore(shelfStore, (state) => state.remarks);
}
