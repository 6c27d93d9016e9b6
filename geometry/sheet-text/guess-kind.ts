/** Which kind of part a text is a sheet of. A guess: it is shown and asked, never acted upon. */
import { type PartKind, partKinds } from '../parts/part-spec';
import { readSheetText } from './read-sheet-text';

/** Sheets say what they are of early on. */
const GUESSED_FROM = 20_000;
const LEAST_READ = 2;

/** The kind whose reader makes most of the text; undefined when none makes clearly more than the others. */
export function guessKind(text: string): PartKind | undefined {
  const start = text.slice(0, GUESSED_FROM);
  const [first, second] = partKinds
    .map((kind) => {
      const { values, questions } = readSheetText(start, kind);
      return { kind, read: values.length + questions.length / 2 };
    })
    .toSorted((a, b) => b.read - a.read);
  if (!first || first.read < LEAST_READ || first.read - (second?.read ?? 0) < 1) return undefined;
  return first.kind;
}
