import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { House } from './inspect-house';

const rooms = ['geometry', 'src', 'test', 'e2e', '.ci'];
const fixtures = 'test/house/fixtures';

function listFiles(top: string, folder: string): string[] {
  if (!existsSync(join(top, folder))) return [];
  return readdirSync(join(top, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (path === fixtures) return [];
    return entry.isDirectory() ? listFiles(top, path) : [path];
  });
}

function namesIn(list: unknown): Set<string> {
  return new Set(list !== null && typeof list === 'object' ? Object.keys(list) : []);
}

/**
 * Reads a house from disk: its rooms, and the code files that stand at the top.
 *
 * @param top the folder to read
 * @param packageFile the package.json that says which packages there are
 */
export function readHouse(top: string, packageFile: string): House {
  const atTop = readdirSync(top, { withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => entry.name);
  const paths = [...atTop, ...rooms.flatMap((room) => listFiles(top, room))];
  const { dependencies, devDependencies } = JSON.parse(readFileSync(packageFile, 'utf8'));
  return {
    files: new Map(
      paths.map((path) => [path, /\.[cm]?[jt]sx?$/.test(path) ? readFileSync(join(top, path), 'utf8') : '']),
    ),
    packages: namesIn(dependencies),
    developmentPackages: namesIn(devDependencies),
  };
}
