import { readFileSync } from 'node:fs';
import { type PartSpec, partKinds } from '../../geometry';
import { readShelf } from '../../src/shelf/shelf-entry';

/** Every spec on the shelf that comes with the page, by the name of its entry. */
export const everyShelfEntry: readonly (readonly [id: string, spec: PartSpec])[] = partKinds.flatMap((kind) =>
  readShelf(kind, JSON.parse(readFileSync(`public/shelf/${kind}.json`, 'utf8'))).entries.map(
    ({ id, spec }) => [id, spec] as const,
  ),
);
