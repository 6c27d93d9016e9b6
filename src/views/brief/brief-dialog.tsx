/** The brief: what the client needs. */
import { type FormEvent, useState } from 'react';
import { briefSchema, describeIssues, type Plan, type Problem } from '../../../geometry';
import { editPlan } from '../../store/plan-store';
import { usePlanStore } from '../../store/use-store';
import { Dialog } from '../../ui/dialog';
import { readNumber } from '../../ui/numbers';
import './brief-dialog.css';

interface BriefText {
  readonly revision: string;
  readonly client: string;
  readonly purpose: string;
  readonly budget: string;
  readonly currency: string;
  readonly roomTemperature: string;
  readonly decibels: string;
  readonly metres: string;
  readonly stands: string;
  readonly upgrades: string;
  readonly notes: string;
}

function textOf({ brief = {}, notes = '', revision = '' }: Plan): BriefText {
  const text = (value: string | number | undefined) => (value === undefined ? '' : String(value));
  return {
    revision,
    client: text(brief.client),
    purpose: text(brief.purpose),
    budget: text(brief.budget),
    currency: text(brief.currency),
    roomTemperature: text(brief.roomTemperature),
    decibels: text(brief.noiseWish?.decibels),
    metres: text(brief.noiseWish?.metres),
    stands: text(brief.stands),
    upgrades: (brief.upgrades ?? []).join('\n'),
    notes,
  };
}

const words = (text: string) => text.trim() || undefined;
const figure = (text: string) => (text.trim() === '' ? undefined : (readNumber(text) ?? text));

/** What was typed as a brief, without what was left empty; judged by the schema. */
function briefValue(text: BriefText): unknown {
  const upgrades = text.upgrades
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean);
  const noiseWish =
    words(text.decibels) === undefined
      ? undefined
      : { decibels: figure(text.decibels), metres: figure(text.metres) ?? 1 };
  const fields = {
    client: words(text.client),
    purpose: words(text.purpose),
    budget: figure(text.budget),
    currency: words(text.currency)?.toUpperCase(),
    roomTemperature: figure(text.roomTemperature),
    noiseWish,
    stands: words(text.stands),
    upgrades: upgrades.length === 0 ? undefined : upgrades,
  };
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}

const FIELDS: readonly (readonly [key: keyof BriefText, title: string, rows?: number])[] = [
  ['client', 'Client'],
  ['revision', 'Revision of the plan'],
  ['purpose', 'What it is for', 3],
  ['budget', 'Budget'],
  ['currency', 'Currency, three letters'],
  ['roomTemperature', 'Room temperature, °C'],
  ['decibels', 'Noise wish, dB'],
  ['metres', 'heard from, m'],
  ['stands', 'Where it stands'],
  ['upgrades', 'Upgrades to keep open, one a line', 3],
  ['notes', 'Notes', 3],
];

export function BriefDialog({ onClose }: { readonly onClose: () => void }) {
  const plan = usePlanStore((state) => state.plan);
  const [text, setText] = useState(() => textOf(plan));
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const save = (event: FormEvent) => {
    event.preventDefault();
    const value = briefValue(text);
    const parsed = briefSchema.safeParse(value, { reportInput: true });
    if (!parsed.success) return setProblems(describeIssues(parsed.error.issues, value));
    editPlan(({ brief: _, notes: __, revision: ___, ...rest }) => ({
      ...rest,
      ...(Object.keys(parsed.data).length === 0 ? {} : { brief: parsed.data }),
      ...(text.notes.trim() === '' ? {} : { notes: text.notes }),
      ...(text.revision.trim() === '' ? {} : { revision: text.revision.trim() }),
    }));
    onClose();
  };
  return (
    <Dialog title="Brief" onClose={onClose}>
      <form className="brief-form" onSubmit={save} noValidate>
        <div className="dialog-body brief-fields">
          {problems.length > 0 && (
            <ul className="fault" role="alert">
              {problems.map(({ path, message }) => (
                <li key={path}>
                  <strong>{path}</strong> {message}
                </li>
              ))}
            </ul>
          )}
          {FIELDS.map(([key, title, rows]) => (
            <div className="labelled" key={key} data-wide={rows !== undefined || key === 'client'}>
              <label htmlFor={`brief-${key}`}>{title}</label>
              {rows === undefined ? (
                <input
                  id={`brief-${key}`}
                  className="field"
                  maxLength={key === 'revision' ? 20 : 200}
                  value={text[key]}
                  onChange={(event) => setText({ ...text, [key]: event.target.value })}
                />
              ) : (
                <textarea
                  id={`brief-${key}`}
                  className="field"
                  rows={rows}
                  maxLength={key === 'notes' ? 10_000 : 4000}
                  value={text[key]}
                  onChange={(event) => setText({ ...text, [key]: event.target.value })}
                />
              )}
            </div>
          ))}
        </div>
        <div className="dialog-actions">
          <button type="submit" className="button strong">
            Save
          </button>
        </div>
      </form>
    </Dialog>
  );
}
