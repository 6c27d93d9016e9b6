/** The text as pasted, with what was read marked in place: the marks lie behind the letters of a plain text area. */
import { type Ref, useImperativeHandle, useMemo, useRef } from 'react';
import type { SheetReading, TextSpan } from '../../../geometry';

export interface TextBoxHandle {
  /** Selects the phrase and brings it into view. */
  readonly show: (span: TextSpan) => void;
}

interface SheetTextBoxProps {
  readonly ref: Ref<TextBoxHandle>;
  readonly text: string;
  /** Of the text as it was when it was last read; marks of an older text are not drawn. */
  readonly reading: SheetReading | undefined;
  readonly readText: string;
  readonly onText: (text: string) => void;
}

const MOST_MARKS = 300;

export function SheetTextBox({ ref, text, reading, readText, onText }: SheetTextBoxProps) {
  const area = useRef<HTMLTextAreaElement>(null);
  const backdrop = useRef<HTMLDivElement>(null);
  useImperativeHandle(ref, () => ({
    show: ({ start, end }) => {
      const element = area.current;
      if (!element) return;
      element.focus();
      element.setSelectionRange(start, end);
      const lines = element.value.slice(0, start).split('\n').length;
      const height = Number.parseFloat(getComputedStyle(element).lineHeight) || 20;
      element.scrollTop = Math.max(0, (lines - 3) * height);
    },
  }));
  const marks = useMemo(
    () => (reading && readText === text ? marksOf(reading) : []),
    [reading, readText, text],
  );
  return (
    <div className="sheet-box">
      <div ref={backdrop} className="sheet-backdrop" aria-hidden="true">
        <MarkedText text={text} marks={marks} />
      </div>
      <textarea
        ref={area}
        className="field sheet-area"
        aria-label="Text of the spec sheet"
        placeholder="Paste the text of a spec sheet here: a list, a table, a sentence."
        spellCheck={false}
        value={text}
        onChange={(event) => onText(event.target.value)}
        onScroll={(event) => {
          if (backdrop.current) backdrop.current.scrollTop = event.currentTarget.scrollTop;
        }}
      />
    </div>
  );
}

interface Mark extends TextSpan {
  readonly kind: 'read' | 'asked';
}

/** Side by side, never over one another; what is asked about is drawn before what is certain. */
function marksOf({ values, questions }: SheetReading): readonly Mark[] {
  const all: Mark[] = [
    ...questions.flatMap(({ span, answers }) =>
      [span, ...answers.flatMap(({ fills }) => fills.map((fill) => fill.span))].map((one) => ({
        ...one,
        kind: 'asked' as const,
      })),
    ),
    ...values.map(({ span }) => ({ ...span, kind: 'read' as const })),
  ];
  const sorted = all
    .toSorted((a, b) => a.start - b.start || (a.kind === 'asked' ? -1 : 1))
    .slice(0, MOST_MARKS);
  const kept: Mark[] = [];
  for (const mark of sorted) {
    const last = kept.at(-1);
    if (!last || mark.start >= last.end) kept.push(mark);
  }
  return kept;
}

function MarkedText({ text, marks }: { readonly text: string; readonly marks: readonly Mark[] }) {
  const pieces = marks.map((mark, index) => {
    const from = index === 0 ? 0 : (marks[index - 1]?.end ?? 0);
    return (
      <span key={mark.start}>
        {text.slice(from, mark.start)}
        <mark className={mark.kind}>{text.slice(mark.start, mark.end)}</mark>
      </span>
    );
  });
  const rest = text.slice(marks.at(-1)?.end ?? 0);
  // A closing line break has no height of its own without something behind it.
  return (
    <>
      {pieces}
      {rest}
      {'\u200b'}
    </>
  );
}
