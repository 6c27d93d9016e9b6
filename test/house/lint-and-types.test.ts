import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const top = fileURLToPath(new URL('../..', import.meta.url));

function run(program: string, args: string[], cwd: string): { code: number | null; output: string } {
  const result = spawnSync(join(top, 'node_modules/.bin', program), args, { cwd, encoding: 'utf8' });
  return { code: result.status, output: result.stdout };
}

/**
 * Lints a text as if it stood in the project under each of the names, with the project's own settings.
 *
 * @returns the names under which the linter complained by this rule
 */
function whereHeard(rule: string, text: string, paths: string[]): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'lint-'));
  try {
    copyFileSync(join(top, 'biome.json'), join(folder, 'biome.json'));
    for (const path of paths) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    const args = ['lint', '--vcs-enabled=false', '--max-diagnostics=none', '--reporter=json', '.'];
    const { diagnostics } = JSON.parse(run('biome', args, folder).output);
    return diagnostics
      .filter(({ category }: { category: string }) => category.endsWith(`/${rule}`))
      .map(({ location }: { location: { path: string } }) => location.path.replace(/^\.\//, ''));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe('the linter knows where a rule holds', () => {
  const cases: [rule: string, text: string, where: string[], whereNot: string[]][] = [
    [
      'noDefaultExport',
      'export default 1;\n',
      ['geometry/plan/a.ts', 'src/ui/a.ts', 'test/a.ts', 'e2e/a.ts'],
      ['vite.config.ts'],
    ],
    [
      'noExplicitAny',
      'export const a: any = 1;\n',
      ['geometry/space/a.ts', 'src/views/a.tsx', 'test/bench/a.ts'],
      [],
    ],
    [
      'noNonNullAssertion',
      'export const a = [1][0]!;\n',
      ['geometry/standards/a.ts', 'geometry/solver/a.ts', 'src/ui/a.ts'],
      ['geometry/space/a.ts', 'test/space/a.ts', 'e2e/a.ts'],
    ],
    [
      'noConsole',
      "console.log('a');\n",
      ['geometry/space/a.ts', 'src/store/a.ts', 'src/app/main.tsx'],
      ['src/command/plan.ts', 'test/bench/run.ts', '.ci/a.mjs'],
    ],
    [
      'noRestrictedGlobals',
      'export const a = process.env;\n',
      ['src/store/a.ts', 'src/app/a.tsx'],
      ['src/command/plan.ts', 'test/a.ts'],
    ],
    [
      'useImportType',
      "import { A } from './b';\n\nexport const a = (b: A) => b;\n",
      ['geometry/plan/a.ts', 'src/ui/a.ts'],
      [],
    ],
    ['useAltText', 'export const A = () => <img src="a.png" />;\n', ['src/ui/a.tsx'], []],
    [
      'useKeyWithClickEvents',
      'export const A = () => <div onClick={() => undefined}>a</div>;\n',
      ['src/ui/a.tsx'],
      [],
    ],
    ['useFilenamingConvention', 'export const a = 1;\n', ['src/ui/ManyParts.ts'], ['src/ui/many-parts.ts']],
  ];
  test.each(cases)('%s', (rule, text, where, whereNot) => {
    expect(whereHeard(rule, text, [...where, ...whereNot]).sort()).toEqual(where.sort());
  });
});

test('geometry is compiled without a page and without Node, and lists may run out', () => {
  const { code, output } = run('tsc', ['--project', 'test/house/fixtures/types', '--pretty', 'false'], top);
  expect(code).not.toBe(0);
  const errors = output.split('\n').filter((line) => line.startsWith('test/house/fixtures/types/'));
  const seen = errors.map((line) =>
    line.replace(/^.*\/types\/(.*?)\((\d+),\d+\): error (TS\d+):.*$/, '$1:$2 $3'),
  );
  expect(seen).toEqual([
    'node.ts:1 TS2591',
    'node.ts:3 TS2591',
    'page.ts:1 TS2584',
    'page.ts:2 TS2584',
    'unchecked-index.ts:3 TS2322',
  ]);
});
