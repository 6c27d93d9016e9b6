/** The brief: what the client needs. */
import { type FormEvent, useState } from 'react';
import { briefSchema, describeIssues, type Problem } from '../../../geometry';
import { editPlan } from '../../store/plan-store';
import { usePlanStore } from '../../store/use-store';
import { Dialog } from '../../ui/dialog';
import { BriefField, FIELDS } from './brief-field';
import { briefValue, textOf } from './brief-text';
import './brief-dialog.css';

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
          {FIELDS.map((field) => (
            <BriefField
              key={field[0]}
              field={field}
              value={text[field[0]]}
              onChange={(value) => setText({ ...text, [field[0]]: value })}
            />
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
