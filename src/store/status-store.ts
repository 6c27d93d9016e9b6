/** What the page has to say at the moment: one line, read out politely, perhaps with something to press. */
import { createStore } from 'zustand/vanilla';

export interface StatusAction {
  readonly label: string;
  readonly run: () => void;
}

interface StatusState {
  readonly message: string;
  readonly action: StatusAction | undefined;
  /** Rises with each message, so that the same words twice are said twice. */
  readonly count: number;
}

export const statusStore = createStore<StatusState>()(() => ({ message: '', action: undefined, count: 0 }));

export function announce(message: string, action?: StatusAction): void {
  statusStore.setState((state) => ({ message, action, count: state.count + 1 }));
}

export function clearStatus(): void {
  statusStore.setState({ message: '', action: undefined });
}
