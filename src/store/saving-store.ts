/** Whether what is on the screen is safe, and if not, why. */
import { createStore } from 'zustand/vanilla';

export type SavingState =
  /** Nothing to save: no own plan is open. */
  | { readonly kind: 'idle' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'saved' }
  /** Nothing can be saved; the plan lives in this tab only and can still be exported. */
  | { readonly kind: 'off'; readonly why: string }
  /** Another tab has saved the same plan since, or deleted it; nothing is written until a person chooses. */
  | { readonly kind: 'overtaken'; readonly by: 'newer revision' | 'deletion' };

export const savingStore = createStore<SavingState>()(() => ({ kind: 'idle' }) as SavingState);

export function setSaving(state: SavingState): void {
  savingStore.setState(state, true);
}
