/** A part by number beside its drawing. What is typed stays until it is saved or let go. */
import {
  type FocusEvent,
  type FormEvent,
  type KeyboardEvent,
  type ReactNode,
  useMemo,
  useRef,
  useState,
} from 'react';
import { type PartKind, type PartSpec, valuesStandingIn } from '../../../geometry';
import type { PlacedView } from '../part-drawing/sheet-layout';
import { AskedFields } from './asked-fields';
import { blankDraft, type Draft, toDraft } from './draft';
import { FaultList } from './fault-list';
import { FormProvider } from './form-context';
import { FormDrawing } from './form-drawing';
import { type FormHandle, formHandle } from './form-handle';
import { readForm, specField } from './spec-field';
import { type DraftSteps, useDraft } from './use-draft';
import { useFaults } from './use-faults';
import { useLastGoodSpec } from './use-last-good-spec';
import './part-form.css';

export type { FormHandle } from './form-handle';

interface PartFormProps {
  readonly kind: PartKind;
  /** Figures to begin with; an empty form when there are none. */
  readonly start: PartSpec | undefined;
  readonly onDirty: () => void;
  /** Called with a valid spec and the name of the button that was pressed. */
  readonly onSave: (spec: PartSpec, action: string) => void;
  /** Above the fields. */
  readonly tools?: (form: FormHandle) => ReactNode;
  /** Drawn over each of the three views. */
  readonly overlay?: (form: FormHandle, view: PlacedView) => ReactNode;
  /** Buttons of type submit; their values are the names of the actions. */
  readonly children: ReactNode;
}

export function PartForm({ kind, start, onDirty, onSave, tools, overlay, children }: PartFormProps) {
  const field = specField(kind);
  const steps = useDraft(() => (start ? toDraft(field, start) : blankDraft(field)));
  const { draft } = steps;
  const { faults, ask } = useFaults(field, draft);
  const [activePath, setActivePath] = useState<string>();
  const summary = useRef<HTMLDivElement>(null);
  const lastGood = useLastGoodSpec(field, draft, start);
  const { spec, isStale } = lastGood;
  const byPath = useMemo(() => new Map(faults.map(({ path, message }) => [path, message])), [faults]);
  const surroundings = useMemo(() => ({ standingIn: spec ? valuesStandingIn(spec) : {} }), [spec]);
  const change = (next: Draft, name?: string) => {
    steps.change(next, name);
    onDirty();
  };
  const save = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const { submitter } = event.nativeEvent as SubmitEvent;
    const result = readForm(field, draft);
    if (result.ok) return onSave(result.spec, submitter instanceof HTMLButtonElement ? submitter.value : '');
    ask();
    requestAnimationFrame(() => summary.current?.focus());
  };
  const handle = formHandle({ kind, field, draft, ...lastGood, change });
  if (field.type !== 'object' && field.type !== 'variants') return null;
  return (
    <form className="part-form" onSubmit={save} onKeyDown={(event) => stepByKey(event, steps)} noValidate>
      <div className="form-sheet">
        <FormDrawing
          spec={spec}
          isStale={isStale}
          activePath={activePath}
          steps={steps}
          overlay={overlay && ((view) => overlay(handle, view))}
        />
        {/* biome-ignore lint/a11y/noStaticElementInteractions: it only listens which field has the focus. */}
        <div className="dialog-body" onFocus={(event) => setActivePath((before) => pathOf(event) ?? before)}>
          {faults.length > 0 && <FaultList ref={summary} faults={faults} />}
          {tools?.(handle)}
          <FormProvider value={surroundings}>
            <div className="form-fields">
              <AskedFields
                kind={kind}
                field={field}
                draft={draft}
                path=""
                faults={byPath}
                onChange={(next) => change(next, activePath)}
              />
            </div>
          </FormProvider>
        </div>
      </div>
      <div className="dialog-actions">{children}</div>
    </form>
  );
}

/** Path of the row that the focus has come to. */
function pathOf({ target }: FocusEvent<HTMLElement>): string | undefined {
  const row = target.closest('[data-path]');
  return row instanceof HTMLElement ? row.dataset.path : undefined;
}

/** Texts undo themselves; everywhere else in the form the form's own steps are meant. */
function stepByKey(event: KeyboardEvent, { undo, redo }: DraftSteps): void {
  const key = event.key.toLowerCase();
  if (!(event.ctrlKey || event.metaKey) || (key !== 'z' && key !== 'y')) return;
  const isText = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
  event.stopPropagation();
  if (isText) return;
  event.preventDefault();
  if (event.shiftKey || key === 'y') redo();
  else undo();
}
