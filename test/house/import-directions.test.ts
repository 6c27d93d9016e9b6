import { expect, test } from 'vitest';
import { type House, inspectHouse } from './inspect-house';

/**
 * Who may import whom, written out by hand from the plan of the house, apart from the checker's own table.
 * 'geometry' is its public face.
 */
const allowed: Record<string, string[]> = {
  'geometry/space': [],
  'geometry/standards': ['geometry/space'],
  'geometry/parts': ['geometry/space', 'geometry/standards'],
  'geometry/plan': ['geometry/space', 'geometry/standards', 'geometry/parts'],
  'geometry/sheet-text': ['geometry/space', 'geometry/standards', 'geometry/parts', 'geometry/plan'],
  'geometry/solver': ['geometry/space', 'geometry/standards', 'geometry/parts', 'geometry/plan'],
  'geometry/estimates': ['geometry/space', 'geometry/standards', 'geometry/parts', 'geometry/plan'],
  'src/ui': ['geometry'],
  'src/store': ['geometry', 'src/ui', 'src/shelf', 'src/sharing', 'src/workers', 'src/report'],
  'src/shelf': ['geometry', 'src/ui', 'src/store', 'src/sharing', 'src/workers', 'src/report'],
  'src/sharing': ['geometry', 'src/ui', 'src/store', 'src/shelf', 'src/workers', 'src/report'],
  'src/workers': ['geometry', 'src/ui', 'src/store', 'src/shelf', 'src/sharing', 'src/report'],
  'src/report': ['geometry', 'src/ui', 'src/store', 'src/shelf', 'src/sharing', 'src/workers'],
  'src/command': ['geometry', 'src/ui', 'src/store', 'src/shelf', 'src/sharing', 'src/workers', 'src/report'],
  'src/viewport': [
    'geometry',
    'src/ui',
    'src/store',
    'src/shelf',
    'src/sharing',
    'src/workers',
    'src/report',
  ],
  'src/views': ['geometry', 'src/ui', 'src/store', 'src/shelf', 'src/sharing', 'src/workers', 'src/report'],
  'src/app': [
    'geometry',
    'src/ui',
    'src/store',
    'src/shelf',
    'src/sharing',
    'src/workers',
    'src/report',
    'src/viewport',
    'src/views',
  ],
  geometry: [
    'geometry/space',
    'geometry/standards',
    'geometry/parts',
    'geometry/plan',
    'geometry/sheet-text',
    'geometry/solver',
    'geometry/estimates',
  ],
};
const rooms = [...Object.keys(allowed), 'test', 'e2e', '.ci'];

/** Every way of reaching for another module that TypeScript and the bundler know. */
const syntaxes: Record<string, (path: string) => string> = {
  import: (path) => `import { x } from '${path}';`,
  'import for its effect': (path) => `import '${path}';`,
  'import type': (path) => `import type { X } from '${path}';`,
  'import of a type among values': (path) => `import { type X } from '${path}';`,
  'import as a namespace': (path) => `import * as x from '${path}';`,
  're-export': (path) => `export { x } from '${path}';`,
  're-export of a type': (path) => `export type { X } from '${path}';`,
  'import when needed': (path) => `export const later = () => import('${path}');`,
  'import when needed, in backticks': (path) => `export const later = () => import(\`${path}\`);`,
  'type of an import': (path) => `export type X = import('${path}').X;`,
  'typeof an import': (path) => `export type X = typeof import('${path}');`,
  'typeof an import, deep in a type': (path) =>
    `export function f<T extends { a: Promise<typeof import('${path}')>[] }>(t: T): T { return t; }`,
  'import by assignment': (path) => `import x = require('${path}');`,
  require: (path) => `declare const require: (p: string) => unknown; require('${path}');`,
  augmentation: (path) => `declare module '${path}' { interface X { y: 1 } } export {};`,
  worker: (path) => `new Worker(new URL('${path}.ts', import.meta.url));`,
};

const fileOf = (room: string, name: string) =>
  room === 'geometry' ? 'geometry/index.ts' : `${room}/${name}.ts`;

/** The path from a file of one room to a file of another. */
function pathBetween(from: string, to: string): string {
  const up = fileOf(from, 'a')
    .split('/')
    .slice(1)
    .map(() => '..')
    .join('/');
  return `${up}/${fileOf(to, 'target').replace(/\.ts$/, '')}`;
}

function complaintsAbout(from: string, to: string, write: (path: string) => string): string[] {
  const house: House = {
    files: new Map([
      [fileOf(from, 'source'), write(pathBetween(from, to))],
      [fileOf(to, 'target'), 'export const x = 1; export type X = 1;'],
    ]),
    packages: new Set(),
    developmentPackages: new Set(),
  };
  return inspectHouse(house).map((complaint) => `${complaint.rule} ${complaint.message}`);
}

/** What must be heard when a file of one room imports a file of another. */
function expectedComplaints(from: string, to: string): string[] {
  if (allowed[from]!.includes(to)) return [];
  const target = fileOf(to, 'target');
  return from.startsWith('src/') && to.startsWith('geometry/')
    ? [`public-face ${from} may import geometry only by geometry/index.ts, not ${target}`]
    : [`direction ${from} may not import ${target}`];
}

test.each(Object.keys(allowed))('what %s may import, however it is written', (from) => {
  const others = rooms.filter((to) => to !== from);
  expect(others.some((to) => !allowed[from]!.includes(to))).toBe(true);
  for (const to of others)
    for (const [name, write] of Object.entries(syntaxes))
      expect(complaintsAbout(from, to, write), `${name} of ${to}`).toEqual(expectedComplaints(from, to));
});
