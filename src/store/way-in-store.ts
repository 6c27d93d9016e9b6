/** Which way is played in the drawing: that of a step of the assembly sheet, or of a part as the sheet has it. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

/** Key of a step, as its tick box has it; or the id of a part. */
export type WayWanted =
  | { readonly kind: 'step'; readonly key: string }
  | { readonly kind: 'part'; readonly part: string };

const wayInStore = createStore<{ readonly wanted: WayWanted | undefined }>()(() => ({ wanted: undefined }));

export function playStep(key: string): void {
  wayInStore.setState({ wanted: { kind: 'step', key } });
}

export function playPart(part: string): void {
  wayInStore.setState({ wanted: { kind: 'part', part } });
}

export function endPlaying(): void {
  wayInStore.setState({ wanted: undefined });
}

export function useWayWanted(): WayWanted | undefined {
  return useStore(wayInStore, ({ wanted }) => wanted);
}
