/** What stands beside a form may do with it. */
import type { PartKind, PartSpec } from '../../../geometry';
import type { Field } from './describe-schema';
import { asObject, type Draft, toDraft } from './draft';
import { type FilledValue, fillDraft } from './fill-draft';
import { goToField } from './go-to-field';
import { readForm } from './spec-field';
import type { LastGood } from './use-last-good-spec';

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

interface FormState extends LastGood {
  readonly kind: PartKind;
  readonly field: Field;
  readonly draft: Draft;
  readonly change: (next: Draft, name?: string) => void;
}

export function formHandle({ kind, field, draft, spec, isStale, change }: FormState): FormHandle {
  return {
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
}
