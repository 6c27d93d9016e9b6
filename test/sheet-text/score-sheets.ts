/** Holds the reader against what a careful person took from each made-up sheet, written down before there was a reader. */
import { readdirSync, readFileSync } from 'node:fs';
import { z } from 'zod';
import { partKinds } from '../../geometry';
import { readSheetText } from '../../geometry/sheet-text/read-sheet-text';
import type { SheetReading } from '../../geometry/sheet-text/reading';

const folder = new URL('./sheets/', import.meta.url);

const valueSchema = z.union([
  z.number(),
  z.string(),
  z.boolean(),
  z.strictObject({ value: z.number(), plusMinus: z.number() }),
]);

const truthSchema = z.strictObject({
  kind: z.enum(partKinds),
  language: z.string(),
  set: z.enum(['dev', 'held-out', 'second held-out', 'third held-out']),
  /** What the sheet states beyond doubt, by field. */
  values: z.record(z.string(), valueSchema),
  /** Fields the sheet says something about that has to be asked. */
  asks: z.array(z.string()),
});

export type Truth = z.infer<typeof truthSchema>;

export interface Sheet {
  readonly name: string;
  readonly text: string;
  readonly truth: Truth;
}

export function readSheets(): readonly Sheet[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.txt'))
    .map((file) => {
      const name = file.replace('.txt', '');
      const truth: unknown = JSON.parse(readFileSync(new URL(`${name}.json`, folder), 'utf8'));
      return { name, text: readFileSync(new URL(file, folder), 'utf8'), truth: truthSchema.parse(truth) };
    });
}

export type Verdict = 'right' | 'asked' | 'missed' | 'wrong' | 'not asked';

export interface Score {
  readonly sheet: string;
  readonly set: Truth['set'];
  readonly path: string;
  readonly verdict: Verdict;
  readonly met: string;
  /** Whether the sheet leaves this open, so that asking is the right answer. */
  readonly isQuestion: boolean;
}

/** Rounding of the conversion, in shares of the value: an inch is exact, a printed truth has a few places. */
const SAME_SHARE = 0.0003;

export function scoreSheet(sheet: Sheet): readonly Score[] {
  const { values, asks } = sheet.truth;
  const reading = readSheetText(sheet.text, sheet.truth.kind);
  const read = new Map(reading.values.map((one) => [one.path, one]));
  const asked = askedPaths(reading);
  const score = (path: string, verdict: Verdict, met = '', isQuestion = false): Score => ({
    sheet: sheet.name,
    set: sheet.truth.set,
    path,
    verdict,
    met,
    isQuestion,
  });
  const scores = Object.entries(values).map(([path, truth]) => {
    const found = read.get(path);
    if (found === undefined) return score(path, asked.has(path) ? 'asked' : 'missed');
    const wanted = typeof truth === 'object' ? truth : { value: truth, plusMinus: undefined };
    const isRight = isSame(found.value, wanted.value) && isSame(found.plusMinus, wanted.plusMinus);
    return score(path, isRight ? 'right' : 'wrong', `${String(found.value)} ± ${found.plusMinus ?? '-'}`);
  });
  const silent = [...read].filter(([path]) => !Object.hasOwn(values, path));
  return [
    ...scores,
    ...silent.map(([path, found]) => score(path, 'wrong', String(found.value))),
    ...asks
      .filter((path) => !read.has(path))
      .map((path) => score(path, asked.has(path) ? 'right' : 'not asked', 'a question', true)),
  ];
}

function askedPaths(reading: SheetReading): ReadonlySet<string> {
  return new Set(
    reading.questions.flatMap(({ answers }) => answers.flatMap(({ fills }) => fills.map(({ path }) => path))),
  );
}

function isSame(a: unknown, b: unknown): boolean {
  if (typeof a !== 'number' || typeof b !== 'number') return a === b;
  return Math.abs(a - b) <= SAME_SHARE * Math.abs(b) + 1e-9;
}
