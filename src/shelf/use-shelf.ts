import { useStore } from 'zustand';
import type { ShelfEntry } from './shelf-entry';
import { shelfStore } from './shelf-store';

export function useShelf(): readonly ShelfEntry[] {
  return useStore(shelfStore, (state) => state.entries);
}
