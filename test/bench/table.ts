export interface BenchOptions {
  /** Print Markdown tables instead of aligned text. */
  readonly markdown: boolean;
}

/** Prints a titled table, the first row being the head; all but the first column are right-aligned. */
export function printTable(title: string, rows: readonly (readonly string[])[], options: BenchOptions): void {
  if (options.markdown) {
    const [head = [], ...body] = rows.map((row) => `| ${row.join(' | ')} |`);
    const rule = `| ${(rows[0] ?? []).map((_, column) => (column === 0 ? '---' : '---:')).join(' | ')} |`;
    console.log([`### ${title}`, '', head, rule, ...body, ''].flat().join('\n'));
    return;
  }
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => (row[column] ?? '').length)),
  );
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) =>
        column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0),
      )
      .join('  ');
  console.log([title, ...rows.map(line), ''].join('\n'));
}

/** A number with three significant digits. */
export function short(value: number): string {
  if (value >= 1000) return value.toFixed(0);
  return Number.isFinite(value) ? String(Number(value.toPrecision(3))) : '-';
}
