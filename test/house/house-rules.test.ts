import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { inspectHouse, type Rule } from './inspect-house';
import { readHouse } from './read-house';

const fixture = (name: string) => fileURLToPath(new URL(`./fixtures/${name}`, import.meta.url));
const packageFile = fileURLToPath(new URL('../../package.json', import.meta.url));

/** For every rule, what a house that breaks it must hear, word for word. */
const expected: Record<Rule, string[]> = {
  direction: [
    'geometry/space/box.ts:1 geometry/space may not import geometry/plan/plan.ts',
    'src/store/store.ts:1 src/store may not import src/views/panel.ts',
    'src/ui/button.ts:1 src/ui may not import test/pretend.ts',
  ],
  'public-face': [
    'src/app/bad.ts:1 src/app may import geometry only by geometry/index.ts, not geometry/solver/solve.ts',
  ],
  'node-module': [
    "geometry/space/read.ts:1 geometry/space may not use Node's node:fs",
    "src/ui/path.ts:1 src/ui may not use Node's path",
  ],
  package: [
    'geometry/solver/schema.ts:1 geometry/solver may not use the package zod',
    'geometry/space/scene.ts:1 geometry/space may not use the package three',
  ],
  'undeclared-package': [
    'src/ui/list.ts:1 nowhere-declared is not among the packages that src/ui can rely on',
    'src/ui/test-library.ts:1 vitest is not among the packages that src/ui can rely on',
  ],
  unresolved: [
    'src/ui/list.ts:1 ./item.js leads to no file of the house',
    'src/ui/list.ts:2 /src/ui/item leads to no file of the house',
  ],
  'computed-import': [
    'src/views/panels.ts:1 imports a module whose name is computed',
    'src/views/panels.ts:2 imports a module whose name is computed',
  ],
  reference: ['geometry/space/box.ts:1 pulls in types by a reference comment'],
  'export-all': [
    'geometry/index.ts:1 exports all of another module',
    'geometry/index.ts:2 exports all of another module',
  ],
  'unknown-folder': [
    'geometry/helpers/box.ts:0 stands in no folder that the house knows',
    'src/main.ts:0 stands in no folder that the house knows',
  ],
  'large-file': ['geometry/space/too-long.ts:0 has 401 lines; 400 are the most'],
  syntax: ['src/ui/broken.ts:0 Unexpected token'],
  cycle: [
    'geometry/space/box.ts:0 geometry/space/box.ts -> geometry/space/frame.ts -> geometry/space/pose.ts -> geometry/space/box.ts',
  ],
  'folder-cycle': ['src/shelf:0 src/shelf -> src/store -> src/shelf'],
};

describe('every rule is heard when it is broken', () => {
  test.each(Object.entries(expected))('%s', (rule, lines) => {
    const complaints = inspectHouse(readHouse(fixture(rule), packageFile));
    expect(complaints.map(({ file, line, message }) => `${file}:${line} ${message}`)).toEqual(lines);
    expect(new Set(complaints.map((complaint) => complaint.rule))).toEqual(new Set([rule]));
  });
});

test('a sound house hears nothing', () => {
  const house = readHouse(fixture('sound'), packageFile);
  expect(house.files.size).toBe(11);
  expect(inspectHouse(house)).toEqual([]);
});
