/** One step: a box to tick, what to do and how, why now, what to look at before going on. */
import { useEffect } from 'react';
import type { SheetStep } from '../../../geometry';
import { hoverPart, selectPart } from '../../store/view-store';
import { playStep } from '../../store/way-in-store';
import { screwWords, upperFirst } from './sheet-words';

interface SheetStepItemProps {
  readonly step: SheetStep;
  /** Id of the part in the plan. */
  readonly part: string;
  /** Its key, by which its way is played. */
  readonly subject: string;
  /** Address of its picture, once there is one. */
  readonly picture?: string | undefined;
  readonly done: boolean;
  readonly onTick: (done: boolean) => void;
  readonly onShow: () => void;
}

export function SheetStepItem({ step, part, subject, picture, done, onTick, onShow }: SheetStepItemProps) {
  useEffect(() => () => hoverPart(undefined), []);
  const { number, title, how, place, screws, tools, reasons, checks, cautions } = step;
  return (
    <li
      className="assembly-step"
      data-done={done}
      onPointerEnter={() => hoverPart(part)}
      onPointerLeave={() => hoverPart(undefined)}
    >
      <div className="assembly-step-title">
        <label>
          <input type="checkbox" checked={done} onChange={(event) => onTick(event.target.checked)} />
          <span>
            {number}. {title}
          </span>
        </label>
        <button
          type="button"
          className="button plain small"
          aria-label={`Play ${title}`}
          onClick={() => {
            playStep(subject);
            onShow();
          }}
        >
          Play
        </button>
        <button
          type="button"
          className="button plain small"
          aria-label={`Show ${title} in the drawing`}
          onClick={() => {
            selectPart(part);
            onShow();
          }}
        >
          Show
        </button>
      </div>
      <div className="assembly-step-body">
        <div className="assembly-step-words">
          {how !== '' && <p>{upperFirst(place === '' ? how : `${how}; ${place}`)}.</p>}
          {cautions.length > 0 && <Lines label="Caution" lines={cautions} />}
          {screws.length > 0 && <Lines label="Screws" lines={screws.map(screwWords)} />}
          {tools.length > 0 && <Lines label="Tools" lines={tools} />}
          {reasons.length > 0 && <Lines label="Why now" lines={reasons} />}
          {checks.length > 0 && <Lines label="Check" lines={checks} />}
        </div>
        {picture && (
          <img className="assembly-picture" src={picture} width={400} height={300} alt={`${title}: ${how}`} />
        )}
      </div>
    </li>
  );
}

interface LinesProps {
  readonly label: string;
  readonly lines: readonly string[];
}

function Lines({ label, lines }: LinesProps) {
  return (
    <dl className="assembly-lines" data-lines={label}>
      <dt>{label}</dt>
      {lines.map((line) => (
        <dd key={line}>{line}</dd>
      ))}
    </dl>
  );
}
