import { useEffect, useMemo, useState } from 'react';
import type { Field } from './describe-schema';
import type { Draft } from './draft';
import { type FieldFault, readForm } from './spec-field';

const NONE: readonly FieldFault[] = [];

/** What is wrong with a draft, from the moment it was asked for until everything is mended. */
export function useFaults(
  field: Field,
  draft: Draft,
): { readonly faults: readonly FieldFault[]; readonly ask: () => void } {
  const [isAsked, setAsked] = useState(false);
  const faults = useMemo(() => {
    if (!isAsked) return NONE;
    const result = readForm(field, draft);
    return result.ok ? NONE : result.faults;
  }, [field, draft, isAsked]);
  useEffect(() => {
    if (isAsked && faults.length === 0) setAsked(false);
  }, [isAsked, faults]);
  return { faults, ask: () => setAsked(true) };
}
