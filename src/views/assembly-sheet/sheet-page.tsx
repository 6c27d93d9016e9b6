/** The whole sheet, in the order in which it is read: cautions, what holds it up, steps, lists, service. */
import { playPart } from '../../store/way-in-store';
import type { AssemblyAnswer } from '../../workers/assembly-request';
import { LeadTable } from './lead-table';
import { ScrewList, ServiceTable, ToolList } from './sheet-lists';
import { KnotSection, Section } from './sheet-section';
import { SheetStepItem } from './sheet-step';

interface SheetPageProps {
  readonly answer: AssemblyAnswer;
  /** Keys of the steps that are done. */
  readonly ticks: ReadonlySet<string>;
  /** Addresses of the pictures there are, by key of the step. */
  readonly pictures?: ReadonlyMap<string, string>;
  readonly onTick: (step: string, done: boolean) => void;
  /** Called once a part has been selected or is played, to make room for the drawing. */
  readonly onShow: () => void;
}

/** Said on every sheet besides what the kernel says of this plan; common practice, no source. */
const WHATEVER_THE_PLAN =
  'Glass is laid flat on a soft cloth, what is heavy is lifted by two, and coolant is handled by its safety sheet and kept off boards.';

export function SheetPage({ answer, ticks, pictures, onTick, onShow }: SheetPageProps) {
  const { sheet, subjects, service, knot, unitNames } = answer;
  const done = subjects.filter(({ key }) => ticks.has(key)).length;
  return (
    <>
      <p className="assembly-name">
        <strong>{sheet.name}</strong>
      </p>
      <Section title="Before anything else">
        <ul>
          {[...sheet.general, WHATEVER_THE_PLAN].map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </Section>
      {!sheet.buildable && (
        <KnotSection
          problem={sheet.problem}
          knot={knot}
          unitNames={unitNames}
          onPlay={(unit) => {
            playPart(unit);
            onShow();
          }}
        />
      )}
      <Section title="Steps">
        {sheet.steps.length === 0 ? (
          <p>There is nothing to put in.</p>
        ) : (
          <p className="quiet" role="status">
            {done} of {sheet.steps.length} done
          </p>
        )}
        <ol className="assembly-steps">
          {sheet.steps.map((step, index) => {
            const subject = subjects[index];
            return (
              subject && (
                <SheetStepItem
                  key={subject.key}
                  step={step}
                  part={subject.part}
                  subject={subject.key}
                  picture={pictures?.get(subject.key)}
                  done={ticks.has(subject.key)}
                  onTick={(ticked) => onTick(subject.key, ticked)}
                  onShow={onShow}
                />
              )
            );
          })}
        </ol>
      </Section>
      {sheet.unproved.length > 0 && (
        <Section title="Unproved: look at these before ordering">
          <ul>
            {sheet.unproved.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Section>
      )}
      <ScrewList screws={sheet.screwList} />
      <ToolList tools={sheet.toolList} />
      <LeadTable plan={sheet.leadList} waypoints={answer.waypoints} />
      <ServiceTable service={service} unitNames={unitNames} />
    </>
  );
}
