/** A verdict as a shape in a colour; the word stands beside it or, where space is short, is read out only. */
import './fit-mark.css';

export type Tone = 'clearance' | 'transition' | 'interference' | 'note';

const SHAPES: Readonly<Record<Tone, string>> = {
  clearance: 'M8 2.5a5.5 5.5 0 1 0 0 11a5.5 5.5 0 1 0 0 -11z',
  transition: 'M8 2L14.5 13.5H1.5z',
  interference: 'M8 1L15 8L8 15L1 8z',
  note: 'M3 7H13V9H3z',
};

interface FitMarkProps {
  readonly tone: Tone;
  readonly word: string;
  /** Show the word, not only the shape. */
  readonly worded?: boolean;
}

export function FitMark({ tone, word, worded = false }: FitMarkProps) {
  return (
    <span className={`fit-mark ${tone}`} title={worded ? undefined : word}>
      <svg width="12" height="12" viewBox="0 0 16 16" aria-hidden="true">
        <path d={SHAPES[tone]} />
      </svg>
      <span className={worded ? undefined : 'unseen'}>{word}</span>
    </span>
  );
}
