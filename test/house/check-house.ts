import { fileURLToPath } from 'node:url';
import { inspectHouse } from './inspect-house';
import { readHouse } from './read-house';

const top = fileURLToPath(new URL('../..', import.meta.url));
const house = readHouse(top, `${top}/package.json`);

// A check that sees no file would pass without having looked.
const seen = ['geometry/', 'src/'].map(
  (room) => [...house.files.keys()].filter((path) => path.startsWith(room) && /\.tsx?$/.test(path)).length,
);
console.log(`Files of geometry looked at: ${seen[0]}; of src: ${seen[1]}.`);

const complaints = inspectHouse(house);
for (const { file, line, rule, message } of complaints)
  console.log(`${file}${line > 0 ? `:${line}` : ''}: ${rule}: ${message}`);
if (seen.includes(0)) console.log('One of the two has no file, so nothing was checked there.');
process.exitCode = complaints.length > 0 || seen.includes(0) ? 1 : 0;
