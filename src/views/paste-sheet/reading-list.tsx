/** What was read, field by field; what has to be answered; what was left. */
import type { SheetQuestion, SheetReading, TextSpan } from '../../../geometry';
import { countOf } from '../../ui/numbers';
import { fieldTitle, valueText } from './field-words';
import { phraseOf } from './filled-values';

/** Answers by the id of their question: the place of the answer, or nothing while it is open. */
export type Answers = ReadonlyMap<string, number>;

interface ReadingListProps {
  readonly reading: SheetReading;
  readonly text: string;
  readonly answers: Answers;
  readonly onAnswer: (question: string, answer: number | undefined) => void;
  readonly onShow: (span: TextSpan) => void;
}

export function ReadingList({ reading, text, answers, onAnswer, onShow }: ReadingListProps) {
  const { values, questions, leftovers, moreLeftovers } = reading;
  const phrase = (span: TextSpan) => (
    <button type="button" className="sheet-phrase" title="Show in the text" onClick={() => onShow(span)}>
      {phraseOf(text, span)}
    </button>
  );
  return (
    <div className="sheet-reading">
      {questions.length > 0 && (
        <section aria-label="To answer">
          <h3>{countOf(questions.length, 'question')} only you can answer</h3>
          {questions.map((question) => (
            <Question
              key={question.id}
              question={question}
              answer={answers.get(question.id)}
              onAnswer={(answer) => onAnswer(question.id, answer)}
            >
              {phrase(question.span)}
            </Question>
          ))}
        </section>
      )}
      {values.length > 0 && (
        <section aria-label="Read">
          <h3>{countOf(values.length, 'figure')} read</h3>
          <ul className="sheet-values">
            {values.map(({ path, value, unit, plusMinus, span, rule }) => (
              <li key={path}>
                <span className="sheet-field">{fieldTitle(path)}</span>
                <strong>{valueText(value, unit, plusMinus)}</strong>
                <span className="sheet-from">
                  {phrase(span)} <span className="quiet">{rule}</span>
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {leftovers.length > 0 && (
        <details>
          <summary>
            {countOf(leftovers.length + moreLeftovers, 'phrase')} left: not understood, or nothing the form
            asks for
          </summary>
          <ul className="sheet-left">
            {leftovers.map(({ span, why }) => (
              <li key={`${span.start}-${span.end}-${why}`}>
                {phrase(span)} <span className="quiet">{why}</span>
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}

interface QuestionProps {
  readonly question: SheetQuestion;
  readonly answer: number | undefined;
  readonly onAnswer: (answer: number | undefined) => void;
  readonly children: React.ReactNode;
}

function Question({ question, answer, onAnswer, children }: QuestionProps) {
  const name = `sheet-question-${question.id}`;
  // All answers are to one field: it is named above them, not on each.
  const isOneField =
    new Set(question.answers.flatMap(({ fills }) => fills.map(({ path }) => path))).size === 1;
  return (
    <fieldset className="sheet-question">
      <legend>{question.ask}</legend>
      <p>
        {isOneField && (
          <span className="quiet">{fieldTitle(question.answers[0]?.fills[0]?.path ?? '')}: </span>
        )}
        {children}
      </p>
      <div className="sheet-answers">
        {question.answers.map(({ label, fills }, index) => (
          <label key={label} className="check">
            <input type="radio" name={name} checked={answer === index} onChange={() => onAnswer(index)} />
            {fills
              .map(
                (fill) => (isOneField ? '' : `${fieldTitle(fill.path)} `) + valueText(fill.value, fill.unit),
              )
              .join(', ')}
          </label>
        ))}
        <label className="check">
          <input
            type="radio"
            name={name}
            checked={answer === undefined}
            onChange={() => onAnswer(undefined)}
          />
          Leave it open
        </label>
      </div>
    </fieldset>
  );
}
