/**
 * Keeps the whole built page in the browser, so that it opens and plans without a network, and offers a newer version
 * when one has been fetched. Loaded after the first drawing; a browser without service workers does without.
 */
import { Workbox } from 'workbox-window';
import { announce } from '../store/status-store';

/** Fetching the whole page must not compete with the first drawing and its first answers. */
const AFTER_START_MS = 4000;

export function keepOffline(): void {
  setTimeout(() => void register(), AFTER_START_MS);
}

async function register(): Promise<void> {
  const worker = new Workbox('./sw.js');
  worker.addEventListener('waiting', () => {
    announce('A newer version of Elbowroom is ready.', {
      label: 'Use it',
      run: () => {
        worker.addEventListener('controlling', () => location.reload());
        worker.messageSkipWaiting();
      },
    });
  });
  // Refused in a private window or by a policy: the page works as before, with a network.
  await worker.register().catch(() => undefined);
}
