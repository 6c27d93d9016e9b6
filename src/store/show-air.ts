/** Shows and hides the air in the drawing. What follows the plan is loaded with the first wish to see it. */
import type { Profile } from '../../geometry';
import { airStore } from './air-store';

let following = false;

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
