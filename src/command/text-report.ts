/** A solution as aligned text for a terminal. Lengths in mm. */
import type { Clearance, Finding, Solution } from '../../geometry';

type Reported = Pick<Solution, 'verdict' | 'findings' | 'clearances'>;

export function textReport(name: string, { verdict, findings, clearances }: Reported): string {
  const sections = [
    [name, verdict.headline, ...(verdict.detail === '' ? [] : [verdict.detail])],
    findings.length === 0 ? ['No findings.'] : ['Findings', ...findings.flatMap(findingLines)],
    clearances.length === 0
      ? ['No clearances.']
      : ['Clearances, mm', ...aligned([['gap', 'wanted', 'from', 'to'], ...clearances.map(clearanceRow)])],
  ];
  return sections.map((lines) => lines.join('\n')).join('\n\n');
}

/** Widest weight word and a space. */
const WEIGHT_WIDTH = 'caution '.length;

function findingLines({ weight, sentence, waysOut }: Finding): readonly string[] {
  const indent = ' '.repeat(WEIGHT_WIDTH);
  return [`  ${weight.padEnd(WEIGHT_WIDTH)}${sentence}`, ...waysOut.map((way) => `  ${indent}- ${way}`)];
}

function clearanceRow({ millimetres, wanted, title, towards, fit }: Clearance): readonly string[] {
  const gap = millimetres.toFixed(1).replace(/^-0\.0$/, '0.0');
  const mark = fit === 'interference fit' ? `${towards}  OVERLAP` : towards;
  return [gap, wanted.toFixed(1), title, mark];
}

/** Columns of equal width, numbers to the right. */
function aligned(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => (row[column] ?? '').length)),
  );
  return rows.map((row) => {
    const cells = row.map((cell, column) => {
      const width = widths[column] ?? 0;
      return column < 2 ? cell.padStart(width) : cell.padEnd(width);
    });
    return `  ${cells.join('  ').trimEnd()}`;
  });
}
