/**
 * The house: which folder may import which. Types count: a file that knows another's types knows the other.
 *
 * geometry: space <- standards <- parts <- plan <- solver, estimates, sheet-text <- index (the public face)
 * src:      geometry's face <- ui <- store, shelf, sharing, workers, report, command <- viewport, views <- app
 */

/** Floors of geometry, from the ground up. Nothing on one floor knows its neighbour. */
const geometryFloors: readonly (readonly string[])[] = [
  ['space'],
  ['standards'],
  ['parts'],
  ['plan'],
  ['solver', 'estimates', 'sheet-text'],
];

/** Floors of src, from the ground up. Folders of one floor are listed together. */
const srcFloors: readonly (readonly string[])[] = [
  ['ui'],
  ['store', 'shelf', 'sharing', 'workers', 'report', 'command'],
  ['viewport', 'views'],
  ['app'],
];

/** Packages that geometry may use, and where. */
const geometryPackages: ReadonlyMap<string, readonly string[]> = new Map([
  ['zod', ['geometry/parts', 'geometry/plan']],
  ['simple-statistics', ['geometry/solver']],
  ['flatqueue', ['geometry/solver']],
]);

/** The one file of geometry that src may import. */
export const publicFace = 'geometry/index.ts';

/** The most lines that a file of geometry or src may have. */
export const mostLines = 400;

/**
 * The part of the house that a file belongs to: 'geometry/plan', 'src/views', 'geometry' for the public face,
 * 'test', 'e2e', 'tools' for what stands at the top and in .ci. Undefined for a folder that the house does not
 * know.
 */
export function roomOf(path: string): string | undefined {
  if (path === publicFace) return 'geometry';
  const [top, folder, ...deeper] = path.split('/');
  if (top === 'test' || top === 'e2e') return top;
  if (top !== 'geometry' && top !== 'src') return folder === undefined || top === '.ci' ? 'tools' : undefined;
  if (folder === undefined || deeper.length === 0) return undefined;
  const floors = top === 'geometry' ? geometryFloors : srcFloors;
  return floorOf(floors, folder) >= 0 ? `${top}/${folder}` : undefined;
}

function floorOf(floors: readonly (readonly string[])[], folder: string): number {
  return floors.findIndex((floor) => floor.includes(folder));
}

function srcMayImport(from: string, to: string): boolean {
  // The command is a program, not a library.
  if (to === 'command') return false;
  const [low, high] = [floorOf(srcFloors, to), floorOf(srcFloors, from)];
  if (low < high) return true;
  // On the middle floor neighbours may use one another, so long as that goes one way (see folder cycles).
  // The viewport and the views meet only in app.
  return low === high && srcFloors[low]?.includes('store') === true;
}

/** Whether a file of one room may import a file of another. The public face is checked apart. */
export function mayImport(from: string, to: string): boolean {
  if (from === to || from === 'test' || from === 'e2e') return true;
  if (from === 'tools') return to === 'tools';
  const [fromTop, fromFolder = ''] = from.split('/');
  const [toTop, toFolder = ''] = to.split('/');
  if (fromTop === 'geometry' && toTop === 'geometry')
    return (
      fromFolder === '' ||
      (toFolder !== '' && floorOf(geometryFloors, toFolder) < floorOf(geometryFloors, fromFolder))
    );
  if (fromTop === 'src' && toTop === 'src') return srcMayImport(fromFolder, toFolder);
  return fromTop === 'src' && toTop === 'geometry';
}

/** Whether a file of this room may use Node's own modules. */
export function mayUseNode(room: string): boolean {
  return room === 'src/command' || isOutside(room);
}

/** Whether a file of this room may use this package, given that it is declared. */
export function mayUsePackage(room: string, name: string): boolean {
  return room.startsWith('geometry') ? geometryPackages.get(name)?.includes(room) === true : true;
}

/** Rooms that never ship: they may use development packages and import freely. */
export function isOutside(room: string): boolean {
  return room === 'test' || room === 'e2e' || room === 'tools';
}
