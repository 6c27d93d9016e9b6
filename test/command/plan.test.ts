import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writePlan } from '../../geometry';
import { checkPlan, DOES_NOT_FIT, FITS, UNREADABLE } from '../../src/command/check-plan';
import { demoLikeBuild } from '../solver/demo-like-build';
import { edited } from '../solver/edited-plan';

const fitting = demoLikeBuild();
const clashing = edited(fitting, { card: { spec: { length: 400, boardLength: 280 } } });

describe('checking the text of a plan', () => {
  it('prints verdict, findings and clearances in aligned columns', () => {
    const { output, errors, status } = checkPlan(writePlan(fitting), false);
    expect(status).toBe(FITS);
    expect(errors).toEqual([]);
    expect(output).toMatch(/^Full bench build\nEverything fits\. Tightest: 4\.8 mm between/);
    expect(output).toMatch(/\n {2}caution Slot 3 \(x1\) is covered by the card and cannot be used\.\n/);
    const rows = output.slice(output.indexOf('Clearances, mm')).split('\n').slice(1);
    const column = rows[0]?.indexOf('from') ?? -1;
    expect(column).toBeGreaterThan(0);
    for (const row of rows) expect(row.slice(column - 2, column)).toBe('  ');
  });

  it('marks overlaps in words and says the ways out', () => {
    const { output, status } = checkPlan(writePlan(clashing), false);
    expect(status).toBe(DOES_NOT_FIT);
    expect(output).toContain('Does not fit yet.');
    expect(output).toMatch(/- A card up to [\d.]+ mm long fits; front fan 1 binds/);
    expect(output).toMatch(/Card tip +to front fan 1 {2}OVERLAP/);
  });

  it('gives machines the verdict, the findings and the clearances', () => {
    const { output, status } = checkPlan(writePlan(clashing), true);
    const report: unknown = JSON.parse(output);
    expect(status).toBe(DOES_NOT_FIT);
    expect(Object.keys(report as object)).toEqual(['verdict', 'findings', 'clearances']);
    expect(report).toMatchObject({ verdict: { fits: false, faults: 1 } });
  });

  it('names the field of a plan it cannot read', () => {
    const text = writePlan(fitting).replace('"length": 330', '"length": -330');
    const { output, errors, status } = checkPlan(text, false);
    expect(status).toBe(UNREADABLE);
    expect(output).toBe('');
    expect(errors.join('\n')).toMatch(/parts\.card\.spec\.length/);
    expect(checkPlan('{"format": 1, "na', false).status).toBe(UNREADABLE);
  });
});

describe('the command', () => {
  const run = promisify(execFile);
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'plan-'));
    writeFileSync(join(folder, 'fits.json'), writePlan(fitting));
    writeFileSync(join(folder, 'clashes.json'), writePlan(clashing));
    writeFileSync(join(folder, 'broken.json'), '{');
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  /** Status and output of the program itself. */
  async function plan(...args: readonly string[]) {
    const program = ['--import', 'tsx', 'src/command/plan.ts', ...args];
    try {
      const { stdout, stderr } = await run(process.execPath, program);
      return { status: 0, stdout, stderr };
    } catch (error) {
      const { code, stdout, stderr } = error as { code: number; stdout: string; stderr: string };
      return { status: code, stdout, stderr };
    }
  }

  it('ends with 0 when it fits, 1 when it does not, 2 when it cannot be read', async () => {
    const fits = await plan('check', join(folder, 'fits.json'));
    expect([fits.status, fits.stderr]).toEqual([0, '']);
    expect(fits.stdout).toContain('Everything fits.');
    const clash = await plan('check', '--json', join(folder, 'clashes.json'));
    expect(clash.status).toBe(1);
    expect(JSON.parse(clash.stdout)).toMatchObject({ verdict: { fits: false } });
    const broken = await plan('check', join(folder, 'broken.json'));
    expect(broken.status).toBe(2);
    expect(broken.stderr).toContain('broken.json');
    expect(broken.stdout).toBe('');
  });

  it('explains itself when asked for something else', async () => {
    const missing = await plan('check', join(folder, 'none.json'));
    expect(missing.status).toBe(2);
    expect(missing.stderr).toContain('none.json cannot be read');
    const unknown = await plan('draw', 'x.json');
    expect(unknown.status).toBe(2);
    expect(unknown.stderr).toContain('unknown command “draw”');
    expect(unknown.stderr).toContain('usage:');
  });
});
