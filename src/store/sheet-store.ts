/**
 * The sheet that lies over the plan. It is kept here and not beside the button that opens it: the panels are laid out
 * anew when the window gets narrow, also on paper, and the sheet must outlive that.
 */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

export type SheetName = 'upgrade envelope' | 'measure list' | 'wanted gaps' | 'assembly sheet' | 'estimates';

const sheetStore = createStore<{ readonly open: SheetName | undefined }>()(() => ({ open: undefined }));

export function openSheet(name: SheetName): void {
  sheetStore.setState({ open: name });
}

export function closeSheet(): void {
  sheetStore.setState({ open: undefined });
}

export function useOpenSheet(): SheetName | undefined {
  return useStore(sheetStore, ({ open }) => open);
}
