/** Drawings and tables of a topic, above its figures. */
import { caseFanShares, choiceOfConstants, type Plan, type Profile } from '../../../../geometry';
import type { EstimatesAnswer } from '../../../workers/estimates-request';
import { MoneyTable } from '../money/money-table';
import { AirSwitch } from './air-switch';
import { ArrowTable, BreathTable, SpaceTable } from './air-tables';
import { ChangeTable } from './change-table';
import { DroopTable } from './droop-table';
import { Efficiency } from './efficiency';
import { FanCurves } from './fan-curves';
import { PlugTable } from './plug-table';
import { PowerBars } from './power-bars';
import { SoundTable } from './sound-table';
import { SpeedAnswer } from './speed-answer';

export type TopicId = keyof EstimatesAnswer['topics'];

interface TopicPicturesProps {
  readonly topic: TopicId;
  readonly answer: EstimatesAnswer;
  readonly plan: Plan;
}

export function TopicPictures(props: TopicPicturesProps) {
  return (
    <>
      <Pictures {...props} />
      <details className="estimates-more">
        <summary>How the constants were chosen</summary>
        <p>{choiceOfConstants[props.topic]}</p>
      </details>
    </>
  );
}

function Pictures({ topic, answer, plan }: TopicPicturesProps) {
  const { power, running, profile, droops, topics } = answer;
  switch (topic) {
    case 'power':
      return (
        <>
          <PowerBars power={power} />
          <PlugTable plugs={power.plugs} sharedLeads={power.sharedLeads} />
          {power.efficiency && power.rated !== undefined && (
            <Efficiency curve={power.efficiency} rated={power.rated} />
          )}
        </>
      );
    case 'air':
      return (
        running && (
          <>
            <p>{pressureWords(topics.air.estimates.find(({ id }) => id === 'air pressure inside')?.value)}</p>
            <AirSwitch profile={profile} />
            <FanCurves fans={running.fans} />
            <SpaceTable spaces={running.spaces} />
            <BreathTable breaths={running.breaths} />
            <ChangeTable changes={running.changes} watched={running.watched} />
            <ArrowTable picture={running.picture} />
          </>
        )
      );
    case 'heat':
      return (
        running && (
          <SpeedAnswer
            running={running}
            wish={plan.brief?.noiseWish?.decibels}
            now={speedNow(plan, profile)}
          />
        )
      );
    case 'sound':
      return running && <SoundTable sounds={running.sounds} beating={running.beating} />;
    case 'mass':
      return <DroopTable droops={droops} />;
    case 'money':
      return <MoneyTable plan={plan} currency={answer.currency} />;
  }
}

function speedNow(plan: Plan, { fanCap, load }: Profile): { at: number; label: string } | undefined {
  if (fanCap !== undefined) return { at: fanCap, label: 'now' };
  const caseFans = Object.values(plan.parts).some(({ spec }) => spec.kind === 'fan');
  return caseFans ? { at: caseFanShares[load], label: 'case fans now' } : undefined;
}

/** Less than this is neither over nor under, Pa. */
const BALANCED = 0.05;

function pressureWords(pascal: number | undefined): string {
  if (pascal === undefined) return '';
  if (Math.abs(pascal) < BALANCED)
    return 'Pressure is balanced: what the fans draw in and blow out is nearly the same. An estimate.';
  return pascal > 0
    ? 'More is blown in than drawn out: air leaves by the seams, and dust comes in only where a fan draws it. An estimate.'
    : 'More is drawn out than blown in: air, and dust, comes in by every seam and vent without a filter. An estimate.';
}
