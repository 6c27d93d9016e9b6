/** Tries parts of the shelf in the open plan, beside the page. */
import { answerShelf } from './answer-shelf';
import type { ShelfRequest } from './shelf-request';

addEventListener('message', ({ data }: MessageEvent<ShelfRequest>) => postMessage(answerShelf(data)));
