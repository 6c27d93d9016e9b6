/** Paste, see what was read, answer what is open, fill the form. Nothing leaves the page, and nothing is guessed. */
import { useDeferredValue, useMemo, useRef, useState } from 'react';
import { guessKind, kindName, type PartKind, type ReadValue, readSheetText } from '../../../geometry';
import { countOf } from '../../ui/numbers';
import { asObject } from '../part-form/draft';
import type { FilledValue } from '../part-form/fill-draft';
import type { FormHandle } from '../part-form/part-form';
import { fieldTitle, valueText } from './field-words';
import { filledValues, keptAsAssumed } from './filled-values';
import { limitsRead } from './limits-read';
import { type Answers, ReadingList } from './reading-list';
import { SheetTextBox, type TextBoxHandle } from './sheet-text-box';

interface PasteSheetPaneProps {
  readonly form: FormHandle;
  readonly text: string;
  readonly onText: (text: string) => void;
  /** The form is of a part that is not there yet: what it holds so far is another part's. */
  readonly isNew: boolean;
  readonly onKind?: ((kind: PartKind) => void) | undefined;
  readonly onLimits?: ((limits: readonly FilledValue[]) => void) | undefined;
  readonly onDone: (told: string) => void;
}

const NO_ANSWERS: Answers = new Map();
/** Shorter texts are read as they come; the kind is guessed of those with something in them. */
const WORTH_GUESSING = 20;

export function PasteSheetPane({ form, text, onText, isNew, onKind, onLimits, onDone }: PasteSheetPaneProps) {
  const [answers, setAnswers] = useState(NO_ANSWERS);
  const box = useRef<TextBoxHandle>(null);
  const readText = useDeferredValue(text);
  const { kind, draft } = form;
  const style = asObject(draft).style ?? asObject(draft).form;
  const reading = useMemo(
    () =>
      readText.trim() === ''
        ? undefined
        : readSheetText(readText, kind, typeof style === 'string' && !isNew ? { style } : {}),
    [readText, kind, style, isNew],
  );
  const guess = useMemo(
    () => (readText.length > WORTH_GUESSING ? guessKind(readText) : undefined),
    [readText],
  );
  const answered: readonly ReadValue[] = (reading?.questions ?? []).flatMap(({ id, answers: all }) => {
    const chosen = answers.get(id);
    return chosen === undefined ? [] : (all[chosen]?.fills ?? []);
  });
  const chosen = [...(reading?.values ?? []), ...answered];
  const fill = () => {
    const read = filledValues(kind, draft, chosen, readText);
    const unplaced = form.fill([...(isNew ? keptAsAssumed(draft, chosen) : []), ...read.values]);
    const limits = onLimits ? limitsRead(chosen, readText) : [];
    if (limits.length > 0) onLimits?.(limits);
    const kept = (path: string) => onLimits !== undefined && path.startsWith('limits.');
    const homeless = [...read.homeless, ...chosen.filter(({ path }) => unplaced.includes(path))].filter(
      ({ path }) => !kept(path),
    );
    const panel =
      limits.length > 0 ? ' What the maker promises stands in the panel of published limits.' : '';
    onDone(`${toldOf(chosen.length - homeless.length, homeless)}${panel}`);
  };
  return (
    <div className="sheet-pane">
      <SheetTextBox
        ref={box}
        text={text}
        reading={reading}
        readText={readText}
        onText={(next) => {
          onText(next);
          setAnswers(NO_ANSWERS);
        }}
      />
      <div className="sheet-found" aria-live="polite" aria-busy={readText !== text}>
        {guess && guess !== kind && (
          <p className="sheet-guess">
            This reads like the sheet of {aKind(guess)}; the form is for {aKind(kind)}.{' '}
            {onKind && (
              <button type="button" className="button small" onClick={() => onKind(guess)}>
                Make it {aKind(guess)}
              </button>
            )}
          </p>
        )}
        {reading ? (
          <ReadingList
            reading={reading}
            text={readText}
            answers={answers}
            onAnswer={(question, answer) => setAnswers(withAnswer(answers, question, answer))}
            onShow={(span) => box.current?.show(span)}
          />
        ) : (
          <p className="quiet">
            What is read shows here, each figure beside the phrase it came from. The text stays on this page.
          </p>
        )}
        {reading && chosen.length === 0 && <p>Nothing on it is certain enough to fill a field with.</p>}
      </div>
      <div className="buttons sheet-actions">
        <button
          type="button"
          className="button strong"
          disabled={chosen.length === 0 || readText !== text}
          onClick={fill}
        >
          Fill the form
        </button>
        <button type="button" className="button" disabled={text === ''} onClick={() => onText('')}>
          Clear
        </button>
      </div>
    </div>
  );
}

function aKind(kind: PartKind): string {
  const name = kindName(kind).toLowerCase();
  return `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}`;
}

function withAnswer(answers: Answers, question: string, answer: number | undefined): Answers {
  const next = new Map(answers);
  if (answer === undefined) next.delete(question);
  else next.set(question, answer);
  return next;
}

function toldOf(filled: number, homeless: readonly ReadValue[]): string {
  const done = `${countOf(filled, 'field')} filled from the sheet.`;
  if (homeless.length === 0) return done;
  const rest = homeless
    .map(({ path, value, unit }) => `${fieldTitle(path)} ${valueText(value, unit)}`)
    .join('; ');
  return `${done} Without a field here: ${rest}.`;
}
