/** One line for each topic, each unfolding to its drawings, tables and figures. */
import type { ReactNode } from 'react';
import type { Estimate, Plan } from '../../../geometry';
import { FitMark, type Tone } from '../../ui/fit-mark';
import { keepUnits } from '../../ui/numbers';
import type { EstimatesAnswer } from '../../workers/estimates-request';
import { missingPlugs, outsideWords, topicLine, wishesLine } from './estimate-words';
import { FigureDetails } from './figure-details';
import { RankingTable, StrongestTable } from './topics/ranking-table';
import { type TopicId, TopicPictures } from './topics/topic-pictures';
import { WishList } from './topics/wish-list';

interface EstimatesSheetProps {
  readonly answer: EstimatesAnswer;
  readonly plan: Plan;
}

const TOPICS: readonly (readonly [topic: TopicId, name: string])[] = [
  ['power', 'Power'],
  ['air', 'Air'],
  ['heat', 'Heat'],
  ['sound', 'Sound'],
  ['mass', 'Mass'],
  ['money', 'Money'],
];

export function EstimatesSheet({ answer, plan }: EstimatesSheetProps) {
  const { topics, wishes, refused, currency, ranking, strongest, power } = answer;
  const missing = missingPlugs(power.plugs);
  return (
    <>
      {refused.length > 0 && (
        <ul aria-label="Ratings left out">
          {refused.map(({ part, message }) => (
            <li key={`${part} ${message}`} className="fault">
              Left out: {message}.
            </li>
          ))}
        </ul>
      )}
      <div>
        {TOPICS.map(([topic, name]) => (
          <TopicRow
            key={topic}
            name={name}
            line={`${topicLine(topics[topic], topics)}${outsideWords(topics[topic].estimates)}${topic === 'power' ? missing : ''}`}
            mark={
              topic === 'power' && missing !== ''
                ? { tone: 'interference', word: 'A plug is missing' }
                : worstOf(topics[topic].estimates.map(({ standing }) => standing))
            }
          >
            <TopicPictures topic={topic} answer={answer} plan={plan} />
            <div>
              {topics[topic].estimates.map((estimate) => (
                <FigureDetails key={estimate.id} estimate={estimate} currency={currency} />
              ))}
            </div>
          </TopicRow>
        ))}
        <TopicRow
          name="Wishes"
          line={wishesLine(wishes)}
          mark={worstOf(wishes.map(({ standing }) => standing))}
        >
          {wishes.length > 0 && <WishList wishes={wishes} />}
        </TopicRow>
        <TopicRow
          name="Doubt"
          line="What is assumed, and which assumption matters most: the first to measure."
          mark={undefined}
        >
          <StrongestTable strongest={strongest} />
          <RankingTable ranking={ranking} />
        </TopicRow>
      </div>
    </>
  );
}

interface Mark {
  readonly tone: Tone;
  readonly word: string;
}

/** How a topic stands as a whole; nothing where nothing has a limit. */
function worstOf(standings: readonly Estimate['standing'][]): Mark | undefined {
  if (standings.includes('not met')) return { tone: 'interference', word: 'A limit is not met' };
  if (standings.includes('perhaps')) return { tone: 'transition', word: 'A limit is perhaps not met' };
  if (standings.includes('unknown')) return { tone: 'note', word: 'A limit could not be checked' };
  return standings.includes('met') ? { tone: 'clearance', word: 'Every limit is met' } : undefined;
}

interface TopicRowProps {
  readonly name: string;
  readonly line: string;
  readonly mark: Mark | undefined;
  readonly children: ReactNode;
}

function TopicRow({ name, line, mark, children }: TopicRowProps) {
  return (
    <details className="estimates-topic">
      <summary>
        <span className="estimates-topic-name">{name}</span>
        <span>{keepUnits(line)}</span>
        <span className="estimates-topic-mark">{mark && <FitMark {...mark} />}</span>
      </summary>
      <div className="estimates-topic-body">{children}</div>
    </details>
  );
}
