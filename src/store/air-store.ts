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

export function useAir<T>(selector: (state: AirState) => T): T {
  return useStore(airStore, selector);
}
