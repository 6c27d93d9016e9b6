/** The part as the form describes it, as far as it can be drawn. */
import { useDeferredValue, useMemo, useRef } from 'react';
import type { PartSpec } from '../../../geometry';
import type { Field } from './describe-schema';
import { asObject, type Draft } from './draft';
import { readForm } from './spec-field';

export interface LastGood {
  readonly spec: PartSpec | undefined;
  /** The draft as it stands says something else that cannot be drawn. */
  readonly isStale: boolean;
}

/** A part needs no name to be drawn. */
const NAMELESS = { maker: '-', model: '-' } as const;

export function useLastGoodSpec(field: Field, draft: Draft, start: PartSpec | undefined): LastGood {
  const settled = useDeferredValue(draft);
  const last = useRef(start);
  return useMemo(() => {
    const result = readForm(field, named(settled));
    if (result.ok) last.current = result.spec;
    return { spec: last.current, isStale: !result.ok && last.current !== undefined };
  }, [field, settled]);
}

function named(draft: Draft): Draft {
  const values = asObject(draft);
  const blank = (key: 'maker' | 'model') =>
    typeof values[key] === 'string' && values[key].trim() === '' ? { [key]: NAMELESS[key] } : {};
  return { ...values, ...blank('maker'), ...blank('model') };
}
