/** What the form of an enclosure offers beside its fields. */
import { useEffect, useState } from 'react';
import type { FilledValue } from '../part-form/fill-draft';
import type { FormHandle } from '../part-form/part-form';
import { AddFitting } from './add-fitting';
import { LimitsPanel } from './limits-panel';

interface EnclosureToolsProps {
  readonly form: FormHandle;
  /** Limits read from a pasted sheet. */
  readonly pasted?: readonly FilledValue[] | undefined;
}

export function EnclosureTools({ form, pasted }: EnclosureToolsProps) {
  const [isOpen, setOpen] = useState(form.spec === undefined);
  useEffect(() => {
    if (pasted) setOpen(true);
  }, [pasted]);
  if (form.kind !== 'enclosure') return null;
  return (
    <>
      <details
        className="form-more limits-fold"
        open={isOpen}
        onToggle={(event) => setOpen(event.currentTarget.open)}
      >
        <summary>
          From a layout and published limits <span>cooler height, card length, room behind the tray …</span>
        </summary>
        {isOpen && <LimitsPanel form={form} pasted={pasted} />}
      </details>
      {form.spec?.kind === 'enclosure' && <AddFitting form={form} spec={form.spec} />}
    </>
  );
}
