/** One line for each topic, each unfolding to its figures. */
import type { ReactNode } from 'react';
import type { EstimatesAnswer } from '../../workers/estimates-request';
import { topicLine, wishesLine } from './estimate-words';
import { FigureDetails } from './figure-details';
import { PlugTable } from './plug-table';
import { PowerBars } from './power-bars';
import { FanTable, SoundTable } from './running-tables';
import { WishList } from './wish-list';

interface EstimatesSheetProps {
  readonly answer: EstimatesAnswer;
  /** Of the brief; empty when it names none. */
  readonly currency: string;
}

type TopicId = keyof EstimatesAnswer['topics'];

const TOPICS: readonly (readonly [topic: TopicId, name: string])[] = [
  ['power', 'Power'],
  ['air', 'Air'],
  ['heat', 'Heat'],
  ['sound', 'Sound'],
  ['mass', 'Mass'],
  ['money', 'Money'],
];

export function EstimatesSheet({ answer, currency }: EstimatesSheetProps) {
  const { topics, wishes, refused } = answer;
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
          <TopicRow key={topic} name={name} line={topicLine(topics[topic], topics)}>
            <TopicPictures topic={topic} answer={answer} />
            {topics[topic].estimates.map((estimate) => (
              <FigureDetails key={estimate.id} estimate={estimate} currency={currency} />
            ))}
          </TopicRow>
        ))}
        <TopicRow name="Wishes" line={wishesLine(wishes)}>
          {wishes.length > 0 && <WishList wishes={wishes} />}
        </TopicRow>
      </div>
    </>
  );
}

interface TopicRowProps {
  readonly name: string;
  readonly line: string;
  readonly children: ReactNode;
}

function TopicRow({ name, line, children }: TopicRowProps) {
  return (
    <details className="estimates-topic">
      <summary>
        <span className="estimates-topic-name">{name}</span>
        <span>{line}</span>
      </summary>
      <div className="estimates-topic-body">{children}</div>
    </details>
  );
}

function TopicPictures({ topic, answer }: { readonly topic: TopicId; readonly answer: EstimatesAnswer }) {
  const { power, running } = answer;
  switch (topic) {
    case 'power':
      return (
        <>
          <PowerBars power={power} />
          <PlugTable plugs={power.plugs} sharedLeads={power.sharedLeads} />
        </>
      );
    case 'air':
      return running && running.fans.length > 0 && <FanTable fans={running.fans} />;
    case 'sound':
      return running && running.sounds.length > 0 && <SoundTable sounds={running.sounds} />;
    default:
      return null;
  }
}
