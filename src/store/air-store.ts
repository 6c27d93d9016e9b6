/** Whether the drawing shows the air, at which load, and the picture last worked out for it. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { AirPicture, Profile } from '../../geometry';

export interface AirState {
  readonly shown: boolean;
  readonly profile: Profile;
  /** Of the plan on the screen or, while a newer one is worked on, of the one before. */
  readonly picture: AirPicture | undefined;
  /** Why there is none: 'no path for air: ...' */
  readonly problem: string | undefined;
}

export const airStore = createStore<AirState>()(() => ({
  shown: false,
  profile: { load: 'game' },
  picture: undefined,
  problem: undefined,
}));

let following = false;

/** What follows the plan is loaded with the first wish to see the air. */
export function showAir(profile: Profile = airStore.getState().profile): void {
  airStore.setState({ shown: true, profile });
  if (following) return;
  following = true;
  import('./follow-air').then(
    ({ followAir }) => followAir(),
    () => {
      // Offline before it was ever loaded.
      following = false;
      airStore.setState({ problem: 'this part of the page is not loaded yet' });
    },
  );
}

export function hideAir(): void {
  airStore.setState({ shown: false });
}

export function useAir<T>(selector: (state: AirState) => T): T {
  return useStore(airStore, selector);
}
