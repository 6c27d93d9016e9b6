/** A part by number beside its drawing. What is typed stays until it is saved or let go. */
import {
  type FocusEvent,
  type FormEvent,
  type KeyboardEvent,
  type ReactNode,
  useCallback,
  useMemo,
  useRef,
  useState,
} from 'react';
import { type PartKind, type PartSpec, valuesStandingIn } from '../../../geometry';
import { countOf } from '../../ui/numbers';
import type { PlacedView } from '../part-drawing/sheet-layout';
import { AskedFields } from './asked-fields';
import { asObject, blankDraft, type Draft, toDraft } from './draft';
import { type FilledValue, fillDraft } from './fill-draft';
import { FormProvider } from './form-context';
import { FormDrawing } from './form-drawing';
import { goToField } from './go-to-field';
import { type FieldFault, readForm, specField } from './spec-field';
import { useDraft } from './use-draft';
import { useLastGoodSpec } from './use-last-good-spec';
import './part-form.css';

/** What a tool beside the form may do with it: read a pasted sheet into it, work out figures, place things. */
export interface FormHandle {
  readonly kind: PartKind;
  readonly draft: Draft;
  /** The last state that the schema accepts; undefined before there was one. */
  readonly spec: PartSpec | undefined;
  /** One step of undo; calls with the same name that follow one another are one. Returns what has no field. */
  readonly fill: (values: readonly FilledValue[], name?: string) => readonly string[];
  /** The same, but only if it leaves no new contradiction; says whether it did. */
  readonly tryFill: (values: readonly FilledValue[], name?: string) => boolean;
  /** Puts other figures in the form, as one step of undo; maker and model stay as typed. */
  readonly replace: (spec: PartSpec) => void;
  readonly goTo: (path: string) => void;
}

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
  const [faults, setFaults] = useState<readonly FieldFault[]>([]);
  const [activePath, setActivePath] = useState<string>();
  const summary = useRef<HTMLDivElement>(null);
  const { spec, isStale } = useLastGoodSpec(field, draft, start);
  const byPath = useMemo(() => new Map(faults.map(({ path, message }) => [path, message])), [faults]);
  const surroundings = useMemo(() => ({ standingIn: spec ? valuesStandingIn(spec) : {} }), [spec]);
  const change = (next: Draft, name?: string) => {
    steps.change(next, name);
    onDirty();
    if (faults.length > 0) {
      const result = readForm(field, next);
      setFaults(result.ok ? [] : result.faults);
    }
  };
  const save = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const { submitter } = event.nativeEvent as SubmitEvent;
    const action = submitter instanceof HTMLButtonElement ? submitter.value : '';
    const result = readForm(field, draft);
    if (result.ok) return onSave(result.spec, action);
    setFaults(result.faults);
    requestAnimationFrame(() => summary.current?.focus());
  };
  const handle: FormHandle = {
    kind,
    draft,
    spec,
    fill: (values, name) => {
      const filled = fillDraft(field, draft, values);
      change(filled.draft, name);
      return filled.unplaced;
    },
    tryFill: (values, name) => {
      const filled = fillDraft(field, draft, values);
      const isSound = filled.unplaced.length === 0 && (isStale || readForm(field, filled.draft).ok);
      if (isSound) change(filled.draft, name);
      return isSound;
    },
    replace: (next) => {
      const { maker, model } = asObject(draft);
      change({ ...asObject(toDraft(field, next)), maker, model });
    },
    goTo: goToField,
  };
  const onFocus = useCallback((event: FocusEvent<HTMLElement>) => {
    const row = event.target.closest('[data-path]');
    if (row instanceof HTMLElement) setActivePath(row.dataset.path);
  }, []);
  if (field.type !== 'object' && field.type !== 'variants') return null;
  return (
    <form
      className="part-form"
      onSubmit={save}
      onKeyDown={(event) => stepByKey(event, steps.undo, steps.redo)}
      noValidate
    >
      <div className="form-sheet">
        <FormDrawing
          spec={spec}
          isStale={isStale}
          activePath={activePath}
          steps={steps}
          overlay={overlay && ((view) => overlay(handle, view))}
        />
        {/* biome-ignore lint/a11y/noStaticElementInteractions: it only listens which field has the focus. */}
        <div className="dialog-body" onFocus={onFocus}>
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

/** Texts undo themselves; everywhere else in the form the form's own steps are meant. */
function stepByKey(event: KeyboardEvent, undo: () => void, redo: () => void): void {
  const key = event.key.toLowerCase();
  if (!(event.ctrlKey || event.metaKey) || (key !== 'z' && key !== 'y')) return;
  const isText = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
  event.stopPropagation();
  if (isText) return;
  event.preventDefault();
  if (event.shiftKey || key === 'y') redo();
  else undo();
}

interface FaultListProps {
  readonly ref: React.Ref<HTMLDivElement>;
  readonly faults: readonly FieldFault[];
}

function FaultList({ ref, faults }: FaultListProps) {
  return (
    <div ref={ref} className="form-faults" tabIndex={-1} role="alert">
      <p>{countOf(faults.length, 'field needs', 'fields need')} another look. Nothing is saved yet.</p>
      <ul>
        {faults.map(({ path, title, message }) => (
          <li key={path}>
            <button type="button" onClick={() => goToField(path)}>
              {title || path}
            </button>{' '}
            {message}
          </li>
        ))}
      </ul>
    </div>
  );
}
