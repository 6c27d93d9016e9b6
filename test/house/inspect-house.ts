import { builtinModules } from 'node:module';
import { posix } from 'node:path';
import { findCycles } from './find-cycles';
import { isOutside, mayImport, mayUseNode, mayUsePackage, mostLines, publicFace, roomOf } from './house-map';
import { readImports } from './read-imports';

export type Rule =
  | 'direction'
  | 'public-face'
  | 'node-module'
  | 'package'
  | 'undeclared-package'
  | 'unresolved'
  | 'computed-import'
  | 'reference'
  | 'export-all'
  | 'unknown-folder'
  | 'large-file'
  | 'syntax'
  | 'cycle'
  | 'folder-cycle';

export interface Complaint {
  readonly rule: Rule;
  readonly file: string;
  /** Counted from 1; 0 when the complaint is about the whole file. */
  readonly line: number;
  readonly message: string;
}

/** A house to inspect: all its files by path from the top, with forward slashes. */
export interface House {
  /** Text by path; files that are not code (styles, pictures) may have an empty text. */
  readonly files: ReadonlyMap<string, string>;
  /** Names under "dependencies" in package.json. */
  readonly packages: ReadonlySet<string>;
  /** Names under "devDependencies" in package.json. */
  readonly developmentPackages: ReadonlySet<string>;
}

const codeFile = /\.[cm]?[jt]sx?$/;
const endings = ['', '.ts', '.tsx', '.d.ts', '/index.ts', '/index.tsx'];

/** The file that a relative path leads to. A query (`?worker`, `?url`) is the bundler's affair. */
function resolveFile(house: House, from: string, specifier: string): string | undefined {
  if (specifier.startsWith('/')) return undefined;
  const [path = ''] = specifier.split('?');
  const target = posix.join(posix.dirname(from), path);
  return endings.map((ending) => target + ending).find((candidate) => house.files.has(candidate));
}

function packageName(specifier: string): string {
  const [first = '', second = ''] = specifier.split('/');
  return first.startsWith('@') ? `${first}/${second}` : first;
}

function inspectPackage(house: House, room: string, specifier: string): [Rule, string] | undefined {
  const name = packageName(specifier);
  if (specifier.startsWith('node:') || builtinModules.includes(name))
    return mayUseNode(room) ? undefined : ['node-module', `${room} may not use Node's ${specifier}`];
  const declared = house.packages.has(name) || (isOutside(room) && house.developmentPackages.has(name));
  if (!declared) return ['undeclared-package', `${name} is not among the packages that ${room} can rely on`];
  return mayUsePackage(room, name) ? undefined : ['package', `${room} may not use the package ${name}`];
}

function inspectTarget(room: string, target: string): [Rule, string] | undefined {
  const targetRoom = roomOf(target);
  if (targetRoom === undefined || !mayImport(room, targetRoom))
    return ['direction', `${room} may not import ${target}`];
  if (room.startsWith('src/') && targetRoom.startsWith('geometry') && target !== publicFace)
    return ['public-face', `${room} may import geometry only by ${publicFace}, not ${target}`];
  return undefined;
}

function inspectFile(house: House, file: string, text: string, edges: Set<string>): Complaint[] {
  const complaints: Complaint[] = [];
  const complain = (rule: Rule, line: number, message: string) =>
    complaints.push({ rule, file, line, message });
  const room = roomOf(file);
  if (room === undefined) {
    complain('unknown-folder', 0, 'stands in no folder that the house knows');
    return complaints;
  }
  const reading = readImports(file, text);
  for (const error of reading.syntaxErrors) complain('syntax', 0, error);

  for (const { specifier, line } of reading.imports) {
    if (specifier === undefined) {
      if (!isOutside(room)) complain('computed-import', line, 'imports a module whose name is computed');
      continue;
    }
    const relative = /^[./]/.test(specifier);
    const target = relative ? resolveFile(house, file, specifier) : undefined;
    if (target !== undefined) edges.add(target);
    if (relative && target === undefined) {
      if (!isOutside(room)) complain('unresolved', line, `${specifier} leads to no file of the house`);
      continue;
    }
    const fault = target === undefined ? inspectPackage(house, room, specifier) : inspectTarget(room, target);
    if (fault) complain(fault[0], line, fault[1]);
  }
  if (isOutside(room)) return complaints;

  for (const line of reading.references) complain('reference', line, 'pulls in types by a reference comment');
  for (const line of reading.exportAlls) complain('export-all', line, 'exports all of another module');
  const lines = text.replace(/\n$/, '').split('\n').length;
  if (lines > mostLines) complain('large-file', 0, `has ${lines} lines; ${mostLines} are the most`);
  return complaints;
}

function foldersOf(graph: ReadonlyMap<string, ReadonlySet<string>>): Map<string, Set<string>> {
  const folders = new Map<string, Set<string>>();
  for (const [file, targets] of graph) {
    const from = roomOf(file);
    if (from === undefined || isOutside(from)) continue;
    const known = folders.get(from) ?? new Set();
    for (const target of targets) {
      const to = roomOf(target);
      if (to !== undefined && to !== from) known.add(to);
    }
    folders.set(from, known);
  }
  return folders;
}

/** Every fault of a house, ordered by file and line. */
export function inspectHouse(house: House): Complaint[] {
  const graph = new Map<string, Set<string>>();
  const complaints: Complaint[] = [];
  for (const [file, text] of house.files) {
    if (!codeFile.test(file)) continue;
    const edges = new Set<string>();
    complaints.push(...inspectFile(house, file, text, edges));
    graph.set(file, edges);
  }
  for (const way of findCycles(graph))
    complaints.push({ rule: 'cycle', file: way[0] ?? '', line: 0, message: way.join(' -> ') });
  for (const way of findCycles(foldersOf(graph)))
    complaints.push({ rule: 'folder-cycle', file: way[0] ?? '', line: 0, message: way.join(' -> ') });
  return complaints.sort((a, b) => a.file.localeCompare(b.file) || a.line - b.line);
}
